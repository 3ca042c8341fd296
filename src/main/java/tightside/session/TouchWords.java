package tightside.session;

import tightside.session.Valves.Touch;
import tightside.words.Numbers;
import tightside.words.ValveWords;

/** What is said where a valve meets its piston. What to do there is common practice, no source. */
final class TouchWords {

  private TouchWords() {}

  static String of(Snapshot now, Touch touch) {
    String crank = Numbers.fixed(now.crank().degrees(), 1);
    String at =
        "%s (%s%s)"
            .formatted(
                crank,
                near(touch.degrees()),
                referenceKnown(now) ? "" : "; assumed, for the model has no at-reference");
    String valve = valve(now, touch);
    if (now.look().valves().past()) {
      return "A drawing only, which no engine follows: at %s the %s %s."
          .formatted(at, valve, ValveWords.meets(touch.roomMm()));
    }
    return "STOP at %s: the %s %s. %s"
        .formatted(at, valve, ValveWords.meets(touch.roomMm()), hand());
  }

  private static boolean referenceKnown(Snapshot now) {
    return now.engine().filter(e -> e.atReferenceDegrees().isPresent()).isPresent();
  }

  private static String near(double degrees) {
    String words = ValveWords.fromTop(degrees);
    return words.startsWith("at ") ? words : words + " at gas exchange";
  }

  private static String valve(Snapshot now, Touch touch) {
    boolean one = now.engine().filter(e -> e.phasesDegrees().size() > 1).isEmpty();
    return ValveWords.name(touch.clearance().valve())
        + (one ? "" : " of cylinder " + (touch.cylinder() + 1));
  }

  private static String hand() {
    return "Do not force the wrench, and never run the starter. Turn back only until it moves"
        + " freely, then set the camshafts right as the maker says.";
  }
}
