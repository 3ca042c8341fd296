package tightside.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tightside.drive.Sprocket;
import tightside.timing.DowelRule;
import tightside.words.Numbers;

/** How far a locked camshaft may be turned to meet its dowel. */
final class DowelField {

  private static final Judgement WRONG =
      Judgement.wrong(
          "More than half a tooth: the sprocket is on the wrong tooth. Take it off again and count; do not turn the camshaft further.");

  private static final double ROUND = 360;

  /** A small turn of a shaft is seen to about this, degrees; from memory. */
  private static final double READ_DEGREES = 1;

  private DowelField() {}

  /**
   * @param rule nothing where slack is not known
   */
  static Field of(Optional<DowelRule> rule, Sprocket sprocket) {
    double tooth = 360.0 / sprocket.teeth();
    double limit = rule.map(DowelRule::limitDegrees).orElse(tooth / 2);
    return new Field.Reading(
        Field.Unit.SHAFT_DEGREES,
        "wrong above " + Numbers.fixed(limit, 1),
        rule.map(DowelField::bands).orElseGet(() -> bandsWithoutSlack(limit)),
        "A turn is entered without its sign, from 0 to 360 degrees.");
  }

  private static List<Band> bandsWithoutSlack(double limit) {
    Judgement open =
        Judgement.open(
            "Less than half a tooth. That proves nothing while the slack is not known: count the links.");
    return List.of(new Band(0, limit, open), new Band(Math.nextUp(limit), ROUND, WRONG));
  }

  private static List<Band> bands(DowelRule rule) {
    double limit = rule.limitDegrees();
    double honest = Math.min(limit, rule.honestDegrees() + READ_DEGREES);
    if (!rule.provesTheRightTooth()) {
      Judgement open =
          Judgement.open(
              "Slack and play hide half a tooth here, so this proves nothing: count the links.");
      return List.of(new Band(0, limit, open), new Band(Math.nextUp(limit), ROUND, WRONG));
    }
    List<Band> bands = new ArrayList<>();
    bands.add(
        new Band(
            0,
            honest,
            Judgement.right("No more than the right tooth can ask for, with this slack.")));
    if (honest == limit) {
      bands.add(new Band(Math.nextUp(limit), ROUND, WRONG));
      return bands;
    }
    bands.add(
        new Band(
            Math.nextUp(honest),
            limit,
            Judgement.open(
                "More than the right tooth asks for (%s), less than a wrong one (%s): see that the plunger is fully back and the tools are in, and look again."
                    .formatted(
                        Numbers.fixed(rule.honestDegrees(), 1),
                        Numbers.fixed(rule.wrongFromDegrees(), 1)))));
    bands.add(new Band(Math.nextUp(limit), ROUND, WRONG));
    return bands;
  }
}
