package tightside.drive;

import java.util.OptionalDouble;
import java.util.OptionalLong;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import tightside.geometry.Bearing;

/**
 * A tensioner's plunger.
 *
 * @param bearing the way it pushes
 * @param travelMm from fully pushed back to fully out
 * @param stepMm the ratchet's step, if it has one
 */
public record Plunger(Bearing bearing, double travelMm, OptionalDouble stepMm) {

  public Plunger {
    Limits.TRAVEL_MM.refuseOutside("travel", travelMm);
    stepMm.ifPresent(step -> Limits.STEP_MM.refuseOutside("step", step));
  }

  /** The unit vector in which it pushes. */
  public Vector2D push() {
    return bearing.direction();
  }

  /** Whole ratchet steps at an extension: floor(extension / step); nothing without a step. */
  public OptionalLong stepsAt(double extensionMm) {
    return stepMm.isEmpty()
        ? OptionalLong.empty()
        : OptionalLong.of((long) Math.floor(extensionMm / stepMm.getAsDouble()));
  }
}
