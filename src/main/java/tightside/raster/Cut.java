package tightside.raster;

/**
 * A stencil at its size on the screen, in its colours: the edges of its rim about its own origin,
 * pixels, y down. Where the stencil is small its stamps are kept, one for each way that it may be
 * turned and each place that its origin may have in a pixel; what is stamped lies at most an eighth
 * of a pixel from where it belongs across and down, and at its far end an eighth more.
 */
final class Cut {

  /** Larger ones are not stamped, pixels from the origin to the farthest point. */
  static final double LARGEST = 28;

  /** Places of an origin across a pixel. */
  static final int PLACES = 4;

  /** How far the far end may lie from where it belongs, pixels. */
  private static final double AWAY = 0.125;

  private static final double SAME = 1e-6;

  private final Points outer;
  private final Points inner;
  private final Surface.Rimmed colours;
  private final int since;
  private final double reach;

  /** Into how many parts a turn, or half a turn, is divided. */
  private final int ways;

  /** Degrees after which it looks the same. */
  private final double turn;

  private final Stamp[] stamps;

  private Cut(Points outer, Points inner, Surface.Rimmed colours, int since) {
    this.since = since;
    this.colours = colours;
    this.outer = outer;
    this.inner = inner;
    reach = farthest(outer);
    turn = evenTurned(outer) && evenTurned(inner) ? 180 : 360;
    ways = (int) Math.ceil(Math.toRadians(turn) * reach / (2 * AWAY));
    stamps = new Stamp[reach > LARGEST ? 0 : ways * PLACES * PLACES];
  }

  /**
   * @param points of the stencil, pixels about its origin
   * @param since the number of the first frame in which it is drawn
   */
  static Cut of(Points points, boolean closed, double breadth, Surface.Rimmed colours, int since) {
    Points outer = new Points();
    Points inner = new Points();
    new Sides().rim(points, closed, breadth, outer, inner);
    return new Cut(outer, inner, colours, since);
  }

  private static double farthest(Points points) {
    double most = 0;
    for (int i = 0; i < points.count; i++) {
      most = Math.max(most, Math.hypot(points.x[i], points.y[i]));
    }
    return most;
  }

  /** Whether an outline looks the same after half a turn. */
  private static boolean evenTurned(Points points) {
    int half = points.count / 2;
    boolean even = points.count % 2 == 0;
    for (int i = 0; even && i < half; i++) {
      even =
          Math.abs(points.x[i] + points.x[i + half]) < SAME
              && Math.abs(points.y[i] + points.y[i + half]) < SAME;
    }
    return even;
  }

  Surface.Rimmed colours() {
    return colours;
  }

  int since() {
    return since;
  }

  /** From the origin to the farthest point, pixels. */
  double reach() {
    return reach;
  }

  boolean stamped() {
    return stamps.length > 0;
  }

  /**
   * The number of the stamp for a place of the origin and a bearing of the stencil's upright.
   *
   * @param degrees from 0 to 360
   */
  int index(double x, double y, double degrees) {
    int way = (int) Math.round(degrees % turn / turn * ways) % ways;
    int across = (int) (PLACES * (x - Math.floor(x)));
    int down = (int) (PLACES * (y - Math.floor(y)));
    return (way * PLACES + down) * PLACES + across;
  }

  /** A stamp, or nothing while there is none of that number. */
  Stamp stamp(int index) {
    return stamps[index];
  }

  void keep(int index, Stamp stamp) {
    stamps[index] = stamp;
  }

  /** Covers what the stamp of a number is to show, about an origin in the pixel at x, y. */
  void cover(int index, int x, int y, Points scratch, Coverage coverage) {
    double across = (index % PLACES + 0.5) / PLACES;
    double down = (index / PLACES % PLACES + 0.5) / PLACES;
    double degrees = index / (PLACES * PLACES) * turn / ways;
    cover(x + across, y + down, degrees, scratch, coverage);
  }

  /** Covers what is drawn about an origin. */
  void cover(double x, double y, double degrees, Points scratch, Coverage coverage) {
    double sin = Math.sin(Math.toRadians(degrees));
    double cos = Math.cos(Math.toRadians(degrees));
    outer.turned(sin, cos, x, y, scratch);
    coverage.add(scratch);
    inner.turned(sin, cos, x, y, scratch);
    coverage.addWithin(scratch);
  }
}
