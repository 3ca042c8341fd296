package tightside.window;

import org.apache.commons.geometry.euclidean.twod.Vector2D;
import tightside.picture.Bounds;

/**
 * How a picture in millimetres, y up, lies on a surface in pixels, y down: whole, in the middle and
 * as large as it goes.
 *
 * @param left pixels of the picture's x = 0
 * @param top pixels of the picture's y = 0
 * @param scale pixels per millimetre
 */
record Fit(double left, double top, double scale) {

  static Fit of(Bounds bounds, double width, double height) {
    double scale = Math.min(width / bounds.width(), height / bounds.height());
    Vector2D middle = bounds.centre();
    return new Fit(width / 2 - middle.getX() * scale, height / 2 + middle.getY() * scale, scale);
  }

  /** Whether a part of the picture lies whole on a surface. */
  boolean sees(Bounds part, double width, double height) {
    return left + scale * part.left() >= 0
        && left + scale * part.right() <= width
        && top - scale * part.top() >= 0
        && top - scale * part.bottom() <= height;
  }

  double x(Vector2D point) {
    return left + scale * point.getX();
  }

  double y(Vector2D point) {
    return top - scale * point.getY();
  }

  /** The point of the picture under a pixel. */
  Vector2D under(double x, double y) {
    return Vector2D.of((x - left) / scale, (top - y) / scale);
  }
}
