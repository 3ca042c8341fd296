package tightside.session;

import java.util.OptionalDouble;
import tightside.drive.Heat;
import tightside.drive.Limits;
import tightside.timing.LockingPlay;

/**
 * What a person says of the job while the chain is slack.
 *
 * @param engagementMm how far a sprocket sits on its nose
 * @param playDegrees of the locking tools, camshaft degrees; nothing where nobody knows
 * @param heat block and chain, cold and hot
 */
public record SlackSetup(double engagementMm, OptionalDouble playDegrees, Heat heat) {

  /** How far a sprocket can sit on its nose. */
  public static final Limits ENGAGEMENT_MM = new Limits(0, 200, "mm");

  /** The temperatures that are taken. */
  public static final Limits CELSIUS = new Limits(-60, 300, "degrees Celsius");

  /** Growth as it is typed: millionths per kelvin. */
  public static final Limits GROWTH = new Limits(0, 100, "millionths per kelvin");

  /** A pilot's length where nobody has measured, mm; from memory. */
  private static final double USUAL_ENGAGEMENT_MM = 8;

  public SlackSetup {
    ENGAGEMENT_MM.refuseOutside("the engagement", engagementMm);
    playDegrees.ifPresent(p -> Limits.LOCKING_PLAY_DEGREES.refuseOutside("the play", p));
  }

  /** All from memory: an aluminium block, play unknown. */
  public static SlackSetup usual() {
    return new SlackSetup(USUAL_ENGAGEMENT_MM, OptionalDouble.empty(), Heat.aluminiumBlock());
  }

  LockingPlay play() {
    return new LockingPlay(playDegrees);
  }
}
