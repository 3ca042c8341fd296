package tightside.geometry;

import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * Where a part lies: its own origin and its own upward direction, as drawn.
 *
 * @param at where its origin lies, mm
 * @param up the bearing in which its own y axis points
 */
public record Pose(Vector2D at, Bearing up) {

  /** Where a point of the part lies. */
  public Vector2D apply(Vector2D own) {
    Vector2D y = up.direction();
    return Vector2D.of(
        at.getX() + own.getX() * y.getY() + own.getY() * y.getX(),
        at.getY() - own.getX() * y.getX() + own.getY() * y.getY());
  }
}
