package tightside.raster;

/**
 * Gives a run of points the breadth of a line, as outlines to be filled. Ends are cut off straight.
 */
final class Pen {

  private final Points side = new Points();
  private final Points piece = new Points();
  private final Sides sides = new Sides();
  private final Coverage coverage;

  Pen(Coverage coverage) {
    this.coverage = coverage;
  }

  /** Adds a line along a closed run of points. */
  void round(Points points, double breadth) {
    if (points.count < 3) {
      along(points, breadth);
      return;
    }
    int last = points.count - 1;
    sides.legs(points, points.count);
    side.clear();
    for (int i = 0; i <= last; i++) {
      sides.corner(points, i, i == 0 ? last : i - 1, i, breadth / 2, side);
    }
    coverage.add(side);
    side.clear();
    for (int i = last; i >= 0; i--) {
      sides.corner(points, i, i, i == 0 ? last : i - 1, -breadth / 2, side);
    }
    coverage.add(side);
  }

  /** Adds the two edges of a line round what a run of points encloses, as the edges of a rim. */
  void rim(Points points, boolean closed, double breadth) {
    sides.rim(points, closed, breadth, side, piece);
    coverage.add(side);
    coverage.addWithin(piece);
  }

  /** Adds a line along an open run of points. */
  void along(Points points, double breadth) {
    int last = points.count - 1;
    if (last < 1) {
      return;
    }
    sides.legs(points, last);
    side.clear();
    sides.beside(points, 0, 0, breadth / 2, side);
    for (int i = 1; i < last; i++) {
      sides.corner(points, i, i - 1, i, breadth / 2, side);
    }
    sides.beside(points, last, last - 1, breadth / 2, side);
    sides.beside(points, last, last - 1, -breadth / 2, side);
    for (int i = last - 1; i > 0; i--) {
      sides.corner(points, i, i, i - 1, -breadth / 2, side);
    }
    sides.beside(points, 0, 0, -breadth / 2, side);
    coverage.add(side);
  }

  /**
   * Adds a broken line.
   *
   * @param dash lengths of stroke and gap in turn, pixels
   */
  void dashed(Points points, boolean closed, double breadth, double[] dash) {
    int legs = closed ? points.count : points.count - 1;
    int which = 0;
    double left = dash[0];
    piece.clear();
    for (int i = 0; i < legs; i++) {
      int next = i + 1 == points.count ? 0 : i + 1;
      double dx = points.x[next] - points.x[i];
      double dy = points.y[next] - points.y[i];
      double length = Math.hypot(dx, dy);
      double gone = 0;
      while (length - gone > left) {
        gone += left;
        if (which % 2 == 0) {
          from(points, i);
          piece.add(points.x[i] + dx * gone / length, points.y[i] + dy * gone / length);
          along(piece, breadth);
        }
        piece.clear();
        which = (which + 1) % dash.length;
        left = dash[which];
        piece.add(points.x[i] + dx * gone / length, points.y[i] + dy * gone / length);
      }
      left -= length - gone;
      if (which % 2 == 0) {
        from(points, i);
        piece.add(points.x[next], points.y[next]);
      }
    }
    if (which % 2 == 0) {
      along(piece, breadth);
    }
  }

  private void from(Points points, int i) {
    if (piece.count == 0) {
      piece.add(points.x[i], points.y[i]);
    }
  }
}
