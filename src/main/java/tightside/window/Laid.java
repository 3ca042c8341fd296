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

  /** Densities are multiples of a quarter. */
  private static final int QUARTERS = 4;

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
    int left = whole(Math.max(EDGE, fit.left() + fit.scale() * all.left()), density);
    int top = whole(Math.max(EDGE, fit.top() - fit.scale() * all.top()), density);
    double right = Math.min(width - EDGE, Math.ceil(fit.left() + fit.scale() * all.right()));
    double bottom = Math.min(height - EDGE, Math.ceil(fit.top() - fit.scale() * all.bottom()));
    return new Sheet.Place(left, top, (int) right - left, (int) bottom - top, density);
  }

  /** The next pixel of the layout, downward, that begins with one of the screen. */
  private static int whole(double at, double density) {
    int floor = (int) Math.floor(at);
    for (int i = floor; i > floor - QUARTERS && i >= 0; i--) {
      if (i * density == Math.rint(i * density)) {
        return i;
      }
    }
    return floor;
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
