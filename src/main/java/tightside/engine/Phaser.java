package tightside.engine;

import tightside.drive.Limits;

/**
 * A cam phaser: it turns a camshaft against its sprocket.
 *
 * @param travelDegrees from one end stop to the other, camshaft degrees
 * @param rest where it stands without oil pressure
 */
public record Phaser(double travelDegrees, Rest rest) {

  /** Where a phaser is locked when it rests. */
  public enum Rest {
    RETARDED,
    ADVANCED,
    MIDDLE
  }

  public Phaser {
    Limits.PHASER_TRAVEL_DEGREES.refuseOutside("travel", travelDegrees);
  }

  /** Camshaft degrees from its rest to its most retarded end stop, zero or negative. */
  public double leastDegrees() {
    return switch (rest) {
      case RETARDED -> 0;
      case ADVANCED -> -travelDegrees;
      case MIDDLE -> -travelDegrees / 2;
    };
  }
}
