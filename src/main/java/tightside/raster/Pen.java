package tightside.raster;

/**
 * Gives a run of points the breadth of a line, as outlines to be filled. Ends are cut off straight;
 * gentle bends are followed, sharp corners are flattened.
 */
final class Pen {

  /** Cosine of the bend up to which the sides of a line are carried round to a point. */
  private static final double GENTLE = 0.5;

  private final Points side = new Points();
  private final Points piece = new Points();
  private final Coverage coverage;

  /** Unit vectors to the left of each leg. */
  private double[] leftX = new double[256];

  private double[] leftY = new double[256];

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
    legs(points, points.count);
    side.clear();
    for (int i = 0; i <= last; i++) {
      corner(points, i, i == 0 ? last : i - 1, i, breadth / 2);
    }
    coverage.add(side);
    side.clear();
    for (int i = last; i >= 0; i--) {
      corner(points, i, i, i == 0 ? last : i - 1, -breadth / 2);
    }
    coverage.add(side);
  }

  /** Adds the two edges of a line along a closed run of points, as the edges of a rim. */
  void rim(Points points, double breadth) {
    legs(points, points.count);
    double out = points.turnsRight() ? breadth / 2 : -breadth / 2;
    side(points, out);
    coverage.add(side);
    side(points, -out);
    coverage.addWithin(side);
  }

  /**
   * Adds the edges of a line along an open run of points, with what lies between its ends on its
   * inner side. What a fill would show under the ends of the line is left out.
   */
  void openRim(Points points, double breadth) {
    int last = points.count - 1;
    legs(points, last);
    double out = points.turnsRight() ? breadth / 2 : -breadth / 2;
    openSide(points, out);
    end(points, last, last - 1, -out);
    end(points, 0, 0, -out);
    coverage.add(side);
    openSide(points, -out);
    coverage.addWithin(side);
  }

  private void openSide(Points points, double aside) {
    int last = points.count - 1;
    side.clear();
    end(points, 0, 0, aside);
    for (int i = 1; i < last; i++) {
      corner(points, i, i - 1, i, aside);
    }
    end(points, last, last - 1, aside);
  }

  private void side(Points points, double aside) {
    side.clear();
    corner(points, 0, points.count - 1, 0, aside);
    for (int i = 1; i < points.count; i++) {
      corner(points, i, i - 1, i, aside);
    }
  }

  /** Adds a line along an open run of points. */
  void along(Points points, double breadth) {
    int last = points.count - 1;
    if (last < 1) {
      return;
    }
    legs(points, last);
    side.clear();
    end(points, 0, 0, breadth / 2);
    for (int i = 1; i < last; i++) {
      corner(points, i, i - 1, i, breadth / 2);
    }
    end(points, last, last - 1, breadth / 2);
    end(points, last, last - 1, -breadth / 2);
    for (int i = last - 1; i > 0; i--) {
      corner(points, i, i, i - 1, -breadth / 2);
    }
    end(points, 0, 0, -breadth / 2);
    coverage.add(side);
  }

  private void legs(Points points, int legs) {
    if (leftX.length < legs) {
      leftX = new double[2 * legs];
      leftY = new double[2 * legs];
    }
    for (int i = 0; i < legs; i++) {
      int next = after(points, i);
      double dx = points.x[next] - points.x[i];
      double dy = points.y[next] - points.y[i];
      double unit = 1 / Math.sqrt(dx * dx + dy * dy);
      leftX[i] = dy * unit;
      leftY[i] = -dx * unit;
    }
  }

  private static int after(Points points, int i) {
    return i + 1 == points.count ? 0 : i + 1;
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
      int next = after(points, i);
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

  private void end(Points points, int at, int leg, double aside) {
    side.add(points.x[at] + aside * leftX[leg], points.y[at] + aside * leftY[leg]);
  }

  /**
   * The side of the line at a corner, from one leg to another.
   *
   * @param aside how far to the left
   */
  private void corner(Points points, int at, int from, int to, double aside) {
    double cosine = leftX[from] * leftX[to] + leftY[from] * leftY[to];
    if (cosine > GENTLE) {
      double k = aside / (1 + cosine);
      side.add(
          points.x[at] + k * (leftX[from] + leftX[to]),
          points.y[at] + k * (leftY[from] + leftY[to]));
    } else {
      end(points, at, from, aside);
      end(points, at, to, aside);
    }
  }
}
