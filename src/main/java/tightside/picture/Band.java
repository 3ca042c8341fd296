package tightside.picture;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import tightside.geometry.Bearing;
import tightside.geometry.Curve;
import tightside.geometry.FaceCurve;
import tightside.geometry.Rotation;

/**
 * The strip of material behind a rubbing face.
 *
 * @param sense the way the chain turns over the face: the strip lies on the inside of that turn
 * @param thicknessMm how deep it is
 */
record Band(FaceCurve face, Rotation sense, double thicknessMm) {

  /** The rubbing surface, in the direction of travel. */
  Curve front() {
    return atDepth(0);
  }

  /** The surface's parallel so deep in the strip. */
  Curve atDepth(double depthMm) {
    if (face.straight()) {
      Vector2D in = inward(0).multiply(depthMm);
      return new Curve.Line(face.start().add(in), face.end().add(in));
    }
    Vector2D centre = face.centre();
    Bearing start = Bearing.of(centre.vectorTo(face.start()));
    double turn = start.turnTo(Bearing.of(centre.vectorTo(face.end())), sense);
    double radius = Math.max(0.1 * radiusMm(), radiusMm() - depthMm);
    return new Curve.Arc(centre, radius, start, sense.sign() * turn);
  }

  private double radiusMm() {
    return face.centre().distance(face.middle());
  }

  /** The unit vector from the surface into the strip, a fraction of the way along it. */
  Vector2D inward(double along) {
    if (face.straight()) {
      return Bearing.of(face.start().vectorTo(face.end())).plus(90, sense).direction();
    }
    return at(along, 0).directionTo(face.centre());
  }

  /** A point so deep in the strip, a fraction of the way along it. */
  Vector2D at(double along, double depthMm) {
    Curve curve = atDepth(depthMm);
    if (curve instanceof Curve.Arc arc) {
      Bearing bearing = arc.start().plus(along * arc.sweepDegrees());
      return arc.centre().add(bearing.direction().multiply(arc.radiusMm()));
    }
    return curve.from().lerp(curve.to(), along);
  }

  /** The outline of the whole strip. */
  List<Curve> outline() {
    Curve front = front();
    Curve back = reversed(atDepth(thicknessMm));
    List<Curve> outline = new ArrayList<>(4);
    outline.add(front);
    outline.add(new Curve.Line(front.to(), back.from()));
    outline.add(back);
    outline.add(new Curve.Line(back.to(), front.from()));
    return outline;
  }

  private static Curve reversed(Curve curve) {
    if (curve instanceof Curve.Arc arc) {
      Bearing end = arc.start().plus(arc.sweepDegrees());
      return new Curve.Arc(arc.centre(), arc.radiusMm(), end, -arc.sweepDegrees());
    }
    return new Curve.Line(curve.to(), curve.from());
  }

  /** Length of the rubbing surface, mm. */
  double lengthMm() {
    return front() instanceof Curve.Arc arc
        ? arc.radiusMm() * Math.toRadians(Math.abs(arc.sweepDegrees()))
        : face.start().distance(face.end());
  }

  /** How far along the strip its point nearest to another point is, 0 to 1. */
  double nearestTo(Vector2D point) {
    double best = 0;
    for (int i = 1; i <= 20; i++) {
      double along = i / 20.0;
      if (at(along, 0).distance(point) < at(best, 0).distance(point)) {
        best = along;
      }
    }
    return best;
  }
}
