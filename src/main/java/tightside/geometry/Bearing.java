package tightside.geometry;

import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * A direction as drawn: an angle clockwise from straight up, seen from the front.
 *
 * @param degrees in [0, 360); any finite angle is accepted and brought into that range
 */
public record Bearing(double degrees) {

  public Bearing {
    if (!Double.isFinite(degrees)) {
      throw new IllegalArgumentException("a bearing must be a finite angle, not " + degrees);
    }
    degrees = within360(degrees);
  }

  /** The bearing in which a vector points. */
  public static Bearing of(Vector2D direction) {
    return new Bearing(Math.toDegrees(Math.atan2(direction.getX(), direction.getY())));
  }

  /** The unit vector that points this way. */
  public Vector2D direction() {
    double radians = Math.toRadians(degrees);
    return Vector2D.of(Math.sin(radians), Math.cos(radians));
  }

  /** This bearing turned clockwise by so many degrees; negative turns it counterclockwise. */
  public Bearing plus(double clockwiseDegrees) {
    return new Bearing(degrees + clockwiseDegrees);
  }

  /** This bearing turned by so many degrees in the given sense. */
  public Bearing plus(double turnDegrees, Rotation sense) {
    return plus(sense.sign() * turnDegrees);
  }

  /** The turn from this bearing to another in the given sense, degrees in [0, 360). */
  public double turnTo(Bearing other, Rotation sense) {
    return within360(sense.sign() * (other.degrees - degrees));
  }

  /**
   * The shorter turn from this bearing to another, degrees in (-180, 180], positive in the given
   * sense.
   */
  public double signedTurnTo(Bearing other, Rotation sense) {
    double turn = turnTo(other, sense);
    return turn > 180 ? turn - 360 : turn;
  }

  private static double within360(double degrees) {
    double rest = degrees % 360;
    double positive = rest < 0 ? rest + 360 : rest;
    return positive >= 360 ? 0.0 : positive + 0.0;
  }
}
