package tightside.raster;

import java.util.Arrays;

/** A run of points in pixels, x to the right, y down. Used again and again: it grows, and stays. */
final class Points {

  /** Nearer than this, two points are one, pixels. */
  private static final double SAME = 1e-4;

  double[] x = new double[256];
  double[] y = new double[256];
  int count;

  void clear() {
    count = 0;
  }

  /** Adds a point, unless it is the last one again. */
  void add(double nextX, double nextY) {
    if (count > 0
        && Math.abs(x[count - 1] - nextX) < SAME
        && Math.abs(y[count - 1] - nextY) < SAME) {
      return;
    }
    if (count == x.length) {
      x = Arrays.copyOf(x, 2 * count);
      y = Arrays.copyOf(y, 2 * count);
    }
    x[count] = nextX;
    y[count] = nextY;
    count++;
  }

  /** These points turned clockwise about 0, 0, and from there moved. */
  void turned(double sin, double cos, double toX, double toY, Points out) {
    if (out.x.length < count) {
      out.x = new double[count];
      out.y = new double[count];
    }
    for (int i = 0; i < count; i++) {
      out.x[i] = toX + x[i] * cos - y[i] * sin;
      out.y[i] = toY + x[i] * sin + y[i] * cos;
    }
    out.count = count;
  }

  /** Drops a last point that is the first one again. */
  void close() {
    if (count > 1 && Math.abs(x[count - 1] - x[0]) < SAME && Math.abs(y[count - 1] - y[0]) < SAME) {
      count--;
    }
  }

  /** Whether a closed run goes clockwise as it is seen: then its left is outside. */
  boolean turnsRight() {
    double twice = 0;
    for (int i = 0, before = count - 1; i < count; before = i++) {
      twice += x[before] * y[i] - x[i] * y[before];
    }
    return twice > 0;
  }
}
