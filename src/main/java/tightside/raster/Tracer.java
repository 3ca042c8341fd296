package tightside.raster;

import org.apache.commons.geometry.euclidean.twod.Vector2D;
import tightside.geometry.Curve;
import tightside.picture.Shape;

/**
 * Turns outlines in millimetres, y up, into points in pixels, y down. Arcs become chords.
 *
 * @param left pixels of x = 0
 * @param top pixels of y = 0
 * @param scale pixels per millimetre
 */
record Tracer(double left, double top, double scale) {

  /** No chord lies farther inside its arc, pixels. */
  private static final double FLATNESS = 0.1;

  /**
   * Whether a shape may reach between two heights.
   *
   * @param margin how far its line stands out, pixels
   */
  boolean reaches(Shape shape, double above, double below, double margin) {
    double low = (top - below - margin) / scale;
    double high = (top - above + margin) / scale;
    if (shape instanceof Shape.Circle circle) {
      return within(circle.centre(), circle.radiusMm(), low, high);
    }
    boolean under = true;
    boolean over = true;
    for (Curve curve : ((Shape.Path) shape).curves()) {
      if (curve instanceof Curve.Arc arc) {
        under &= arc.centre().getY() + arc.radiusMm() < low;
        over &= arc.centre().getY() - arc.radiusMm() > high;
      } else {
        under &= Math.max(curve.from().getY(), curve.to().getY()) < low;
        over &= Math.min(curve.from().getY(), curve.to().getY()) > high;
      }
    }
    return !under && !over;
  }

  private static boolean within(Vector2D centre, double radius, double low, double high) {
    return centre.getY() + radius >= low && centre.getY() - radius <= high;
  }

  /**
   * The outline of a circle: a polygon as large as it, which lies half outside.
   *
   * @param wider by so many pixels
   * @param way 1 clockwise, -1 counterclockwise
   */
  void trace(Shape.Circle circle, double wider, int way, Points out) {
    double radius = circle.radiusMm() * scale + wider;
    if (radius > 0) {
      double step = 2 * Math.PI / steps(radius, 2 * Math.PI);
      arc(circle.centre(), radius * Math.sqrt(step / Math.sin(step)), 0, way * 360, out);
      out.close();
    }
  }

  void trace(Shape.Path path, Points out) {
    if (path.curves().get(0) instanceof Curve.Line first) {
      add(first.from(), out);
    }
    for (Curve curve : path.curves()) {
      if (curve instanceof Curve.Arc arc) {
        double radius = arc.radiusMm() * scale;
        arc(arc.centre(), radius, arc.start().degrees(), arc.sweepDegrees(), out);
      } else {
        add(curve.to(), out);
      }
    }
    if (path.closed()) {
      out.close();
    }
  }

  private void add(Vector2D point, Points out) {
    out.add(left + scale * point.getX(), top - scale * point.getY());
  }

  /** The points of an arc, its first left out where it is the last one already. */
  private void arc(Vector2D centre, double radius, double start, double sweep, Points out) {
    double x = left + scale * centre.getX();
    double y = top - scale * centre.getY();
    int steps = steps(radius, Math.toRadians(Math.abs(sweep)));
    double angle = Math.toRadians(start);
    double step = Math.toRadians(sweep) / steps;
    double sinStep = Math.sin(step);
    double cosStep = Math.cos(step);
    double across = radius * Math.sin(angle);
    double up = radius * Math.cos(angle);
    out.add(x + across, y - up);
    for (int k = 0; k < steps; k++) {
      double turned = across * cosStep + up * sinStep;
      up = up * cosStep - across * sinStep;
      across = turned;
      out.add(x + across, y - up);
    }
  }

  /** A chord over an angle of 2h lies r(1 - cos h) inside its arc, near enough r h^2 / 2. */
  private static int steps(double radius, double sweepRadians) {
    double half = Math.sqrt(2 * FLATNESS / Math.max(radius, FLATNESS));
    return Math.max(sweepRadians > Math.PI ? 5 : 1, (int) Math.ceil(sweepRadians / (2 * half)));
  }
}
