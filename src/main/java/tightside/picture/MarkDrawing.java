package tightside.picture;

import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import tightside.drive.Sprocket;
import tightside.geometry.Bearing;
import tightside.geometry.Curve;
import tightside.geometry.Pose;
import tightside.timing.Lag;

/**
 * The mark of a sprocket, the fixed mark beside it, and, where the shaft stands off its place, the
 * angle between where its mark is and where it should be.
 */
final class MarkDrawing {

  private final Draft draft;
  private final ChainView view;
  private final int place;
  private final Vector2D centre;
  private final double rim;
  private final double size;

  private MarkDrawing(Draft draft, ChainView view, int place) {
    this.draft = draft;
    this.view = view;
    this.place = place;
    centre = view.centre(place);
    rim = SprocketDrawing.rimMm(view, place);
    size = Math.min(1.1 * view.pitchMm(), 0.35 * rim);
  }

  static void draw(Draft draft, ChainView view, int place) {
    Sprocket sprocket = view.chain().sprocketAt(place);
    if (sprocket.mark().isEmpty()) {
      return;
    }
    MarkDrawing drawing = new MarkDrawing(draft, view, place);
    double error = view.errorDegrees(place);
    if (Lag.of(error) != Lag.RIGHT) {
      drawing.error(error);
    }
    drawing.triangle(Ink.MARK, view.markAt(place).orElseThrow());
    drawing.pointer(sprocket.mark().get());
  }

  /** The mark alone: nothing tells where it should be. */
  static void markAlone(Draft draft, ChainView view, int place) {
    view.markAt(place).ifPresent(at -> new MarkDrawing(draft, view, place).triangle(Ink.MARK, at));
  }

  private Tag tag(Ink ink) {
    return view.tag(ink, place);
  }

  private void triangle(Ink ink, Bearing bearing) {
    draft.arrowhead(tag(ink), onCircle(bearing, rim), bearing, size, 0.85 * size);
  }

  private Vector2D onCircle(Bearing bearing, double radius) {
    return centre.add(bearing.direction().multiply(radius));
  }

  /** The fixed mark, outside the chain, pointing at the sprocket's centre. */
  private void pointer(Bearing bearing) {
    double tip = view.clearRadiusMm(place) + 0.25 * view.pitchMm();
    double length = 1.1 * view.pitchMm();
    Vector2D at = onCircle(bearing, tip);
    draft.arrowhead(tag(Ink.POINTER), at, bearing.plus(180), length, 0.8 * length);
    draft.keepClear(onCircle(bearing, tip + length / 2), 0.7 * length);
  }

  private void error(double error) {
    Bearing right = view.rightPlace(place).orElseThrow();
    double sweep = error * view.sense(place).sign();
    sector(right, sweep);
    triangle(Ink.GHOST, right);
    measure(right, sweep);
  }

  private void sector(Bearing from, double sweep) {
    double outer = rim;
    double inner = SprocketDrawing.hubMm(view, place);
    double shown = Math.max(-359, Math.min(359, sweep));
    Curve.Arc out = new Curve.Arc(centre, outer, from, shown);
    Curve.Arc back = new Curve.Arc(centre, inner, from.plus(shown), -shown);
    draft.closed(
        tag(Ink.ERROR),
        List.of(
            out,
            new Curve.Line(out.to(), back.from()),
            back,
            new Curve.Line(back.to(), out.from())));
  }

  /** An arc under the marks with a tick for each whole tooth, counted from the right place. */
  private void measure(Bearing from, double sweep) {
    double radius = rim - 1.35 * size;
    double shown = Math.max(-359, Math.min(359, sweep));
    draft.open(tag(Ink.DIMENSION), List.of(new Curve.Arc(centre, radius, from, shown)));
    double tooth = view.pitchCircle(place).toothDegrees();
    int whole = (int) Math.floor(Math.abs(shown) / tooth + 1e-9);
    for (int k = 0; k <= whole; k++) {
      tick(from.plus(Math.signum(shown) * k * tooth), radius, 0.2 * size);
    }
    tick(from.plus(shown), radius, 0.3 * size);
  }

  private void tick(Bearing bearing, double radius, double half) {
    Pose pose = new Pose(centre, bearing);
    draft.line(
        tag(Ink.DIMENSION),
        pose.apply(Vector2D.of(0, radius - half)),
        pose.apply(Vector2D.of(0, radius + half)));
  }
}
