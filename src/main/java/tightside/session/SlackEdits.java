package tightside.session;

import java.util.OptionalDouble;
import tightside.drive.Heat;
import tightside.words.Numbers;

/** What a person says on the card of the slack chain. Each leads to a new snapshot. */
public final class SlackEdits {

  private SlackEdits() {}

  /** How far a sprocket has to slide to leave its nose, mm. */
  public static Edit engagement(Snapshot now, double mm) {
    return Edit.partOf(
        "engagement",
        "Set the engagement to %s mm".formatted(Numbers.plain(mm)),
        now.with(now.slack().engaged(mm)));
  }

  /** The play of the locking tools, camshaft degrees; nothing where it is not known. */
  public static Edit play(Snapshot now, OptionalDouble degrees) {
    return Edit.partOf(
        "locking play",
        degrees.isPresent()
            ? "Set the locking tools' play to %s degrees"
                .formatted(Numbers.plain(degrees.getAsDouble()))
            : "Forget the locking tools' play",
        now.with(now.slack().playing(degrees)));
  }

  /** What the block and the chain do as they warm up. */
  public static Edit heat(Snapshot now, Heat heat) {
    return Edit.partOf(
        "heat",
        "Set the heat to %s degrees, block %s"
            .formatted(
                Numbers.plain(heat.hotCelsius()), Numbers.fixed(1e6 * heat.blockPerKelvin(), 1)),
        now.with(now.slack().heated(heat)));
  }
}
