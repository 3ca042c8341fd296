package tightside.raster;

/**
 * What lies to the left and to the right of a run of points, so far away as a line along it is
 * broad. Gentle bends are followed, sharp corners are flattened.
 */
final class Sides {

  /** Cosine of the bend up to which the sides of a line are carried round to a point. */
  private static final double GENTLE = 0.5;

  /** Unit vectors to the left of each leg. */
  private double[] leftX = new double[256];

  private double[] leftY = new double[256];

  /** Takes up the legs from each point to the next. */
  void legs(Points points, int legs) {
    if (leftX.length < legs) {
      leftX = new double[2 * legs];
      leftY = new double[2 * legs];
    }
    for (int i = 0; i < legs; i++) {
      int next = i + 1 == points.count ? 0 : i + 1;
      double dx = points.x[next] - points.x[i];
      double dy = points.y[next] - points.y[i];
      double unit = 1 / Math.sqrt(dx * dx + dy * dy);
      leftX[i] = dy * unit;
      leftY[i] = -dx * unit;
    }
  }

  /** Adds the point beside an end, or a corner, square to a leg. */
  void beside(Points points, int at, int leg, double aside, Points out) {
    out.add(points.x[at] + aside * leftX[leg], points.y[at] + aside * leftY[leg]);
  }

  /**
   * Adds the side of the line at a corner, from one leg to another.
   *
   * @param aside how far to the left
   */
  void corner(Points points, int at, int from, int to, double aside, Points out) {
    double cosine = leftX[from] * leftX[to] + leftY[from] * leftY[to];
    if (cosine > GENTLE) {
      double k = aside / (1 + cosine);
      out.add(
          points.x[at] + k * (leftX[from] + leftX[to]),
          points.y[at] + k * (leftY[from] + leftY[to]));
    } else {
      beside(points, at, from, aside, out);
      beside(points, at, to, aside, out);
    }
  }

  /**
   * Works out the edges of a line round what is filled: along a closed run, or along an open one
   * that is filled across its chord. There, what a fill would show under the ends of the line is
   * left out.
   *
   * @param outer gets the outer edge of the line
   * @param inner gets its inner edge, run the same way
   */
  void rim(Points points, boolean closed, double breadth, Points outer, Points inner) {
    legs(points, closed ? points.count : points.count - 1);
    double out = points.turnsRight() ? breadth / 2 : -breadth / 2;
    outer.clear();
    inner.clear();
    if (closed) {
      round(points, out, outer);
      round(points, -out, inner);
      return;
    }
    along(points, out, outer);
    along(points, -out, inner);
    beside(points, points.count - 1, points.count - 2, -out, outer);
    beside(points, 0, 0, -out, outer);
  }

  private void round(Points points, double aside, Points out) {
    corner(points, 0, points.count - 1, 0, aside, out);
    for (int i = 1; i < points.count; i++) {
      corner(points, i, i - 1, i, aside, out);
    }
  }

  private void along(Points points, double aside, Points out) {
    int last = points.count - 1;
    beside(points, 0, 0, aside, out);
    for (int i = 1; i < last; i++) {
      corner(points, i, i - 1, i, aside, out);
    }
    beside(points, last, last - 1, aside, out);
  }
}
