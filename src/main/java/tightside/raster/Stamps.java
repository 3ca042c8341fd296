package tightside.raster;

import java.util.HashMap;
import java.util.Map;
import tightside.geometry.Pose;
import tightside.picture.Shape;

/**
 * The small parts of a chain, hundreds that look alike. Rollers and pins do but for where in a
 * pixel they have their middle: there they are set to within a sixteenth of it. Plates and teeth
 * are turned as well.
 */
final class Stamps {

  /** Larger ones are drawn like any other shape, pixels. */
  private static final double LARGEST = 20;

  /** Places of a middle across a pixel. */
  private static final int PLACES = 8;

  /** Beyond that the picture is on its way to another size: all are worked out anew. */
  private static final int MOST = 4096;

  private static final int ROOM = 2 * (int) Math.max(LARGEST, Cut.LARGEST) + 8;

  private final Map<Kind, Stamp> stamps = new HashMap<>();
  private final Coverage coverage =
      new Coverage(new Surface(new int[0], ROOM, 0, ROOM, new Inked(ROOM, ROOM)));
  private final Points points = new Points();
  private final Surface surface;

  /** Radii in pixels, and the place of the middle. */
  private record Kind(float within, float whole, int across, int down, Surface.Rimmed colours) {}

  Stamps(Surface surface) {
    this.surface = surface;
  }

  /**
   * Draws a circle with a rim, if it is a small one.
   *
   * @param breadth of the rim, pixels
   */
  boolean stamp(Shape.Circle circle, double breadth, Surface.Rimmed colours, Tracer tracer) {
    double whole = circle.radiusMm() * tracer.scale() + breadth / 2;
    if (whole > LARGEST) {
      return false;
    }
    double x = tracer.x(circle.centre());
    double y = tracer.y(circle.centre());
    int left = (int) Math.floor(x);
    int top = (int) Math.floor(y);
    Kind kind =
        new Kind(
            (float) Math.max(0, whole - breadth),
            (float) whole,
            (int) (PLACES * (x - left)),
            (int) (PLACES * (y - top)),
            colours);
    Stamp stamp = stamps.get(kind);
    if (stamp == null) {
      stamp = stamp(kind);
      if (stamps.size() >= MOST) {
        stamps.clear();
      }
      stamps.put(kind, stamp);
    }
    surface.lay(left, top, stamp);
    return true;
  }

  /** Draws a small stencil, if there is a stamp of it, or room for one. */
  boolean stamp(Shape.Placed placed, Cut cut, Tracer tracer, Cuts cuts) {
    Pose pose = placed.pose();
    double x = tracer.x(pose.at());
    double y = tracer.y(pose.at());
    int index = cut.index(x, y, pose.up().degrees());
    Stamp stamp = cut.stamp(index);
    if (stamp == null) {
      if (!cuts.room(cut)) {
        return false;
      }
      coverage.open(new Reach(0, 0, ROOM, ROOM));
      cut.cover(index, ROOM / 2, ROOM / 2, points, coverage);
      stamp = coverage.stamp(ROOM / 2, ROOM / 2, cut.colours());
      cut.keep(index, stamp);
      cuts.kept(stamp);
    }
    surface.lay((int) Math.floor(x), (int) Math.floor(y), stamp);
    return true;
  }

  private Stamp stamp(Kind kind) {
    int middle = (int) Math.ceil(kind.whole()) + 1;
    int size = 2 * middle + 1;
    double x = middle + (kind.across() + 0.5) / PLACES;
    double y = middle + (kind.down() + 0.5) / PLACES;
    coverage.open(new Reach(0, 0, size, size));
    Tracer tracer = new Tracer(x, y, 1);
    points.clear();
    tracer.trace(kind.whole(), points);
    coverage.add(points);
    points.clear();
    tracer.trace(kind.within(), points);
    coverage.addWithin(points);
    return coverage.stamp(middle, middle, kind.colours());
  }
}
