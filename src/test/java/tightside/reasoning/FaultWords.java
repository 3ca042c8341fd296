package tightside.reasoning;

import java.util.Locale;

/** Faults and readings in as few words as a list of many can bear. */
final class FaultWords {

  private FaultWords() {}

  static String of(Explanation what) {
    if (what.cause() == Cause.SEVERAL) {
      return of(what.parts().get(0)) + " and " + of(what.parts().get(1));
    }
    return what.cause().word()
        + what.manner().map(m -> " " + m.name().toLowerCase(Locale.ROOT)).orElse("")
        + what.chain().map(c -> " " + c).orElse("")
        + what.shaft().map(s -> " " + s).orElse("")
        + (what.teeth() == 0 ? "" : " %+d".formatted(what.teeth()));
  }

  /** A star stands for a phaser that is unplugged. */
  static String of(Reading reading) {
    if (reading instanceof Reading.CamAngle angle) {
      return "%s%s %.1f"
          .formatted(
              angle.shaft(), angle.condition().phaserFree() ? "" : "*", angle.crankDegrees());
    }
    if (reading instanceof Reading.PlungerStands plunger) {
      return "%s %.1f to %.1f mm".formatted(plunger.chain(), plunger.lowMm(), plunger.highMm());
    }
    Reading.Counted count = (Reading.Counted) reading;
    return "%s..%s %d".formatted(count.from(), count.to(), count.links());
  }
}
