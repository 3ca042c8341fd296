package tightside.session;

import java.util.OptionalDouble;
import tightside.drive.Limits;
import tightside.timing.State;

/**
 * How the crankshaft was turned.
 *
 * <p>Turned back, the pulled side of the chain goes slack, and no mark and no count holds until the
 * engine has been turned forward again by enough to pull it tight.
 *
 * @param degrees from the reference position, positive in the running direction; whole turns count
 * @param backedTo the angle to which it was last turned back, while that still matters
 */
public record Crank(double degrees, OptionalDouble backedTo) {

  /** Ten thousand turns either way: more than anybody turns by hand. */
  public static final Limits ANGLE = new Limits(-3_600_000, 3_600_000, "degrees");

  /**
   * Turned forward by so many degrees, the pulled side is tight again. Common practice, no source;
   * well above what the slack of a drive, all gone to the pulled side, lets the crank turn.
   */
  public static final double TAKE_UP_DEGREES = 45;

  /** At the reference position, arrived there in the running direction. */
  public static final Crank REFERENCE = new Crank(0, OptionalDouble.empty());

  public Crank {
    if (!ANGLE.allow(degrees)) {
      throw new IllegalArgumentException("the crank does not turn to " + degrees + " degrees");
    }
  }

  /** Turned on, or back if the angle is smaller, to another angle. */
  public Crank turnedTo(double otherDegrees) {
    if (otherDegrees < degrees) {
      return new Crank(otherDegrees, OptionalDouble.of(otherDegrees));
    }
    boolean tight = backedTo.isEmpty() || otherDegrees - backedTo.getAsDouble() >= TAKE_UP_DEGREES;
    return new Crank(otherDegrees, tight ? OptionalDouble.empty() : backedTo);
  }

  public State.Arrived arrived() {
    return backedTo.isEmpty() ? State.Arrived.FORWARD : State.Arrived.BACKWARD;
  }

  /** How much further forward it has to be turned until the chain is pulled tight, degrees. */
  public double toTakeUpDegrees() {
    return backedTo.isEmpty() ? 0 : backedTo.getAsDouble() + TAKE_UP_DEGREES - degrees;
  }
}
