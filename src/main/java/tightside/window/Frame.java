package tightside.window;

import tightside.picture.Bounds;
import tightside.session.Snapshot;

/**
 * What the scale of a picture hangs on. It stays while the engine turns.
 *
 * @param width of the room, pixels
 * @param height of the room, pixels
 * @param seen all that was to be seen since
 * @param textScale of the words in the picture
 */
record Frame(
    Object drive, double width, double height, int textPercent, Bounds seen, double textScale) {

  boolean holds(Snapshot now, double otherWidth, double otherHeight) {
    return drive == now.drive()
        && width == otherWidth
        && height == otherHeight
        && textPercent == now.look().textPercent();
  }

  /** Whether another frame is of the same room and size of text. */
  boolean like(Frame other) {
    return width == other.width && height == other.height && textPercent == other.textPercent;
  }

  Frame seeing(Bounds more) {
    Bounds all = seen.holds(more) ? seen : about(seen.centre().getX(), seen.with(more));
    return new Frame(drive, width, height, textPercent, all, textScale);
  }

  Fit fit() {
    return Fit.of(seen, width, height);
  }

  /** As far to the left as to the right, so that words do not push the drive aside. */
  static Bounds about(double x, Bounds all) {
    double half = Math.max(x - all.left(), all.right() - x);
    return new Bounds(x - half, all.bottom(), x + half, all.top());
  }
}
