package tightside.window;

import java.util.List;
import tightside.picture.Bounds;
import tightside.picture.Shape;
import tightside.timing.State;

/**
 * Where the sheet lies in its room, and what that hangs on: while the crank turns nothing reaches
 * farther than the margin that bounds have.
 *
 * @param width of the room, pixels
 * @param height of the room, pixels
 */
record Laid(
    Captions captions,
    State.Arrived arrived,
    Fit fit,
    double width,
    double height,
    Sheet.Place place) {

  /** Room for the focus's own line round the picture, pixels. */
  private static final int EDGE = 2;

  /** Under all of some shapes. */
  static Laid under(
      List<Shape> shapes,
      Captions captions,
      State.Arrived arrived,
      Fit fit,
      double width,
      double height,
      double density) {
    Sheet.Place place = place(Framing.bounds(shapes), fit, width, height, density);
    return new Laid(captions, arrived, fit, width, height, place);
  }

  static Sheet.Place place(Bounds all, Fit fit, double width, double height, double density) {
    int left = Math.max(EDGE, (int) Math.floor(fit.left() + fit.scale() * all.left()));
    int top = Math.max(EDGE, (int) Math.floor(fit.top() - fit.scale() * all.top()));
    double right = Math.min(width - EDGE, Math.ceil(fit.left() + fit.scale() * all.right()));
    double bottom = Math.min(height - EDGE, Math.ceil(fit.top() - fit.scale() * all.bottom()));
    return new Sheet.Place(left, top, (int) right - left, (int) bottom - top, density);
  }

  boolean holds(
      Captions now, State.Arrived arriving, Fit at, double wide, double high, double dense) {
    return captions == now
        && arrived == arriving
        && fit.equals(at)
        && width == wide
        && height == high
        && place.density() == dense;
  }
}
