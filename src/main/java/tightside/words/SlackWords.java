package tightside.words;

import java.util.OptionalDouble;
import tightside.drive.Heat;
import tightside.drive.HotFit;
import tightside.readings.JointMistake;
import tightside.timing.LooseStrand;

/** Sag, joints and heat of a slack chain, in sentences. */
public final class SlackWords {

  /** Less than this is not worth a word, mm. */
  private static final double NOTHING_MM = 0.05;

  private SlackWords() {}

  /** What a thumb finds on a tight strand, right and with a link too many. */
  public static String sag(LooseStrand loose, double pitchMm) {
    String wear =
        Math.abs(loose.wearMm()) < NOTHING_MM
            ? ""
            : " (%s of its slack is wear and no mistake)".formatted(Numbers.mm(loose.wearMm()));
    return "from %s to %s: right %s%s, with a link too many %s."
        .formatted(
            loose.strand().from(),
            loose.strand().to(),
            sag(loose.sagMm(Math.max(0, loose.slackMm()))),
            wear,
            sag(loose.sagMm(Math.max(0, loose.slackMm()) + pitchMm)));
  }

  private static String sag(OptionalDouble mm) {
    return mm.isEmpty() ? "a loop that hangs" : Numbers.mm(mm.getAsDouble());
  }

  /** A mistake at a joint, links right. */
  public static String joint(JointMistake mistake) {
    if (mistake instanceof JointMistake.TightenedSlack slip) {
      return "%s is held by its bolt's clamp alone: each mm of slack left in its tight run while tightening is %s of its degrees wrong, at most %s here. No count of links shows it."
          .formatted(
              slip.shaft(),
              Numbers.fixed(slip.degreesPerMm(), 2),
              Numbers.fixed(slip.mostDegrees(), 1));
    }
    JointMistake.PhaserNotAtRest phaser = (JointMistake.PhaserNotAtRest) mistake;
    return "If %s has a phaser that is not at rest when fitted, every link is right and the camshaft stands off by %s."
        .formatted(
            phaser.shaft(),
            phaser.mostDegrees().isPresent()
                ? "up to " + Numbers.fixed(phaser.mostDegrees().getAsDouble(), 1) + " cam degrees"
                : "as much as its phaser is off");
  }

  /** How a drive fits warm. */
  public static String hot(HotFit fit, Heat heat) {
    String from =
        "From %s to %s degrees Celsius the way round grows %s more than the chain"
            .formatted(
                Numbers.plain(heat.coldCelsius()),
                Numbers.plain(heat.hotCelsius()),
                Numbers.fixed(fit.growthMm(), 2) + " mm");
    if (fit.tooTightHot()) {
      return from
          + ": fitted cold it is TOO TIGHT HOT, %s of chain is missing then."
              .formatted(Numbers.fixed(-fit.hotSlackMm(), 2) + " mm");
    }
    String over = ", and hot %s of chain is still over".formatted(Numbers.mm(fit.hotSlackMm()));
    return from
        + (fit.travelLeftHotMm().isPresent()
            ? over
                + " with the plunger back; it has %s of travel left."
                    .formatted(Numbers.mm(fit.travelLeftHotMm().getAsDouble()))
            : over + ".");
  }

  /** What moves by itself, and who decides. */
  public static String caution() {
    return "Springs and shafts can move by themselves the moment a tool or the chain lets go. Keep fingers clear. The maker's procedure decides.";
  }
}
