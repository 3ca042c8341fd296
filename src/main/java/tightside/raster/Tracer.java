package tightside.raster;

import java.util.List;
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
  private static final double FLATNESS = 0.15;

  double x(Vector2D point) {
    return left + scale * point.getX();
  }

  double y(Vector2D point) {
    return top - scale * point.getY();
  }

  /**
   * The outline of a circle.
   *
   * @param wider by so many pixels
   */
  void trace(Shape.Circle circle, double wider, Points out) {
    trace(circle.centre(), circle.radiusMm() * scale + wider, out);
  }

  /**
   * A circle round the origin.
   *
   * @param radius pixels
   */
  void trace(double radius, Points out) {
    trace(Vector2D.ZERO, radius, out);
  }

  /** A polygon as large as the circle, which lies half outside; nothing for no radius. */
  private void trace(Vector2D centre, double radius, Points out) {
    if (radius > 0) {
      double step = 2 * Math.PI / steps(radius, 2 * Math.PI);
      arc(centre, radius * Math.sqrt(step / Math.sin(step)), 0, 360, out);
      out.close();
    }
  }

  void trace(Shape.Run run, Points out) {
    trace(run.curves(), run.closed(), out);
  }

  void trace(List<Curve> curves, boolean closed, Points out) {
    if (curves.get(0) instanceof Curve.Line first) {
      add(first.from(), out);
    }
    for (Curve curve : curves) {
      if (curve instanceof Curve.Arc arc) {
        double radius = arc.radiusMm() * scale;
        arc(arc.centre(), radius, arc.start().degrees(), arc.sweepDegrees(), out);
      } else {
        add(curve.to(), out);
      }
    }
    if (closed) {
      out.close();
    }
  }

  private void add(Vector2D point, Points out) {
    out.add(x(point), y(point));
  }

  /** The points of an arc, its first left out where it is the last one already. */
  private void arc(Vector2D centre, double radius, double start, double sweep, Points out) {
    double x = x(centre);
    double y = y(centre);
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
