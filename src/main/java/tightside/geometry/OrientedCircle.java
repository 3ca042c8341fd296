package tightside.geometry;

import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * A circle that a string passes in a known sense: every contact of a chain is one.
 *
 * <p>A string that turns clockwise has the centre on its right. With the signed radius rho = sign x
 * radius, the point at which a string of heading h touches is centre + rho x left(h), where left(h)
 * is the unit vector 90 degrees to the left of the heading.
 *
 * @param centre mm
 * @param radiusMm zero or more
 * @param sense the way the string turns as it passes
 */
public record OrientedCircle(Vector2D centre, double radiusMm, Rotation sense) {

  public OrientedCircle {
    if (!centre.isFinite()) {
      throw new IllegalArgumentException("a circle needs a finite centre, not " + centre);
    }
    if (!(radiusMm >= 0) || Double.isInfinite(radiusMm)) {
      throw new IllegalArgumentException(
          "a circle needs a radius of 0 mm or more, not " + radiusMm);
    }
  }

  /**
   * The radius, positive where the string turns clockwise, negative where counterclockwise (mm).
   */
  public double signedRadiusMm() {
    return sense.sign() * radiusMm;
  }

  /** The point at which a string of this heading touches the circle. */
  public Vector2D touchAt(Bearing heading) {
    return Vector2D.Sum.of(centre).addScaled(signedRadiusMm(), left(heading.direction())).get();
  }

  /** The heading of a string that touches the circle on this bearing from the centre. */
  public Bearing headingAt(Bearing fromCentre) {
    return fromCentre.plus(90, sense);
  }

  /** The bearing from the centre to the point where a string of this heading touches. */
  public Bearing bearingAt(Bearing heading) {
    return heading.plus(-90, sense);
  }

  static Vector2D left(Vector2D direction) {
    return Vector2D.of(-direction.getY(), direction.getX());
  }
}
