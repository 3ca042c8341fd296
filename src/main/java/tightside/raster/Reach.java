package tightside.raster;

import tightside.geometry.Curve;
import tightside.picture.Shape;

/** The upright rectangle beyond which a shape is not drawn, pixels, y down. */
record Reach(float left, float above, float right, float below) {

  /** Reaches nothing. */
  static final Reach NONE = new Reach(0, Float.POSITIVE_INFINITY, 0, Float.NEGATIVE_INFINITY);

  /**
   * @param margin how far the line of the shape stands out, pixels
   */
  static Reach of(Shape shape, double margin, Tracer tracer) {
    if (shape instanceof Shape.Text) {
      return NONE;
    }
    Extent extent = new Extent();
    if (shape instanceof Shape.Circle circle) {
      extent.reach(circle.centre().getX(), circle.centre().getY(), circle.radiusMm());
    } else {
      for (Curve curve : ((Shape.Run) shape).curves()) {
        if (curve instanceof Curve.Arc arc) {
          extent.reach(arc.centre().getX(), arc.centre().getY(), arc.radiusMm());
        } else {
          extent.reach(curve.from().getX(), curve.from().getY(), 0);
          extent.reach(curve.to().getX(), curve.to().getY(), 0);
        }
      }
    }
    return new Reach(
        (float) (tracer.left() + tracer.scale() * extent.left - margin),
        (float) (tracer.top() - tracer.scale() * extent.high - margin),
        (float) (tracer.left() + tracer.scale() * extent.right + margin),
        (float) (tracer.top() - tracer.scale() * extent.low + margin));
  }

  /** Round a point, pixels. */
  static Reach about(double x, double y, double radius) {
    return new Reach(
        (float) (x - radius), (float) (y - radius), (float) (x + radius), (float) (y + radius));
  }

  boolean meets(int from, int end) {
    return above < end && below > from;
  }

  /** Millimetres, y up. */
  private static final class Extent {

    private double left = Double.POSITIVE_INFINITY;
    private double right = Double.NEGATIVE_INFINITY;
    private double low = Double.POSITIVE_INFINITY;
    private double high = Double.NEGATIVE_INFINITY;

    void reach(double x, double y, double radius) {
      left = Math.min(left, x - radius);
      right = Math.max(right, x + radius);
      low = Math.min(low, y - radius);
      high = Math.max(high, y + radius);
    }
  }
}
