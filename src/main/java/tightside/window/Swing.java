package tightside.window;

import org.apache.commons.geometry.euclidean.twod.Vector2D;
import tightside.geometry.Bearing;

/** How far a hand has gone round a centre since it took hold; several turns add up. */
final class Swing {

  /** Nearer to the centre than this a hand has no direction, mm. */
  private static final double NEAREST_MM = 0.5;

  private final Wheel wheel;
  private Bearing last;
  private double degrees;

  Swing(Wheel wheel, Vector2D from) {
    this.wheel = wheel;
    last = bearing(from);
  }

  private Bearing bearing(Vector2D point) {
    return Bearing.of(wheel.centre().vectorTo(point));
  }

  /**
   * Goes on to a point.
   *
   * @return degrees since the last one, positive the way the shaft turns
   */
  double to(Vector2D point) {
    if (point.distance(wheel.centre()) < NEAREST_MM) {
      return 0;
    }
    Bearing next = bearing(point);
    double step = last.signedTurnTo(next, wheel.sense());
    last = next;
    degrees += step;
    return step;
  }

  /** Whole teeth since it took hold, positive the way the shaft turns. */
  int teeth() {
    return (int) Math.round(degrees * wheel.teeth() / 360);
  }

  Wheel wheel() {
    return wheel;
  }
}
