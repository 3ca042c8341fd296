package tightside.picture;

import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import tightside.geometry.Curve;

/** An upright rectangle, mm, y up. */
public record Bounds(double left, double bottom, double right, double top) {

  public Bounds {
    if (!(left <= right && bottom <= top)) {
      throw new IllegalArgumentException("a rectangle runs from left to right and bottom to top");
    }
  }

  public static Bounds at(Vector2D point) {
    return new Bounds(point.getX(), point.getY(), point.getX(), point.getY());
  }

  /** Round all pieces of an outline. */
  static Bounds round(List<Curve> curves) {
    double left = Double.POSITIVE_INFINITY;
    double bottom = Double.POSITIVE_INFINITY;
    double right = Double.NEGATIVE_INFINITY;
    double top = Double.NEGATIVE_INFINITY;
    for (Curve curve : curves) {
      for (Vector2D point : curve.extremes()) {
        left = Math.min(left, point.getX());
        right = Math.max(right, point.getX());
        bottom = Math.min(bottom, point.getY());
        top = Math.max(top, point.getY());
      }
    }
    return new Bounds(left, bottom, right, top);
  }

  public static Bounds around(Vector2D centre, double width, double height) {
    return new Bounds(
        centre.getX() - width / 2,
        centre.getY() - height / 2,
        centre.getX() + width / 2,
        centre.getY() + height / 2);
  }

  public Bounds with(Bounds other) {
    return new Bounds(
        Math.min(left, other.left),
        Math.min(bottom, other.bottom),
        Math.max(right, other.right),
        Math.max(top, other.top));
  }

  public Bounds grown(double by) {
    return new Bounds(left - by, bottom - by, right + by, top + by);
  }

  public double width() {
    return right - left;
  }

  public double height() {
    return top - bottom;
  }

  public Vector2D centre() {
    return Vector2D.of((left + right) / 2, (bottom + top) / 2);
  }

  public boolean holds(Bounds other) {
    return left <= other.left && right >= other.right && bottom <= other.bottom && top >= other.top;
  }

  public boolean overlaps(Bounds other) {
    return left < other.right && other.left < right && bottom < other.top && other.bottom < top;
  }

  /** Whether a circle reaches into this rectangle. */
  public boolean touchedBy(Vector2D centre, double radius) {
    double aside = Math.max(0, Math.max(left - centre.getX(), centre.getX() - right));
    double above = Math.max(0, Math.max(bottom - centre.getY(), centre.getY() - top));
    return aside * aside + above * above < radius * radius;
  }
}
