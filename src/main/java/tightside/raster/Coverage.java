package tightside.raster;

import java.util.Arrays;

/**
 * How much of each pixel one shape covers. Outlines are added edge by edge: each cell holds by how
 * much the cover changes from the pixel on its left, so that the sum along a row is the cover.
 * Contours run the same way add up to no more than the whole; one run the other way inside another
 * is a hole.
 *
 * <p>There are two layers of cells: what a shape covers with its rim, and what lies within the rim.
 * So both are laid over the pixels at once. The cells are those of a window round the shape: few,
 * so that they stay near the processor; and whole numbers, whose sums wait for nothing.
 */
final class Coverage {

  /** The cover of a whole pixel. */
  static final int PIXEL = 1 << 16;

  private final Surface surface;
  private int left;
  private int top;
  private int width;
  private int height;
  private int stride;
  private int[] whole = new int[4096];
  private int[] within = new int[4096];
  private int[] cells = whole;
  private int[] first = new int[64];
  private int[] last = new int[64];

  Coverage(Surface surface) {
    this.surface = surface;
  }

  /**
   * Opens the window on a shape.
   *
   * @param reach of the shape with its line, pixels
   * @return whether there is anything to be seen of it
   */
  boolean open(Reach reach) {
    left = Math.max(0, (int) Math.floor(reach.left()));
    top = Math.max(surface.from(), (int) Math.floor(reach.above()));
    width = Math.min(surface.width(), (int) Math.ceil(reach.right())) - left;
    height = Math.min(surface.end(), (int) Math.ceil(reach.below())) - top;
    if (width <= 0 || height <= 0) {
      return false;
    }
    stride = width + 2;
    if (whole.length < stride * height) {
      whole = new int[stride * height];
      within = new int[stride * height];
    }
    if (first.length < height) {
      first = new int[height];
      last = new int[height];
    }
    Arrays.fill(first, 0, height, stride);
    Arrays.fill(last, 0, height, -1);
    return true;
  }

  /** Adds a closed outline; one of no points, as the hole of a full ring, adds nothing. */
  void add(Points outline) {
    cells = whole;
    trace(outline);
  }

  /** Adds the inner edge of a rim, run the same way as the outer one. */
  void addWithin(Points outline) {
    cells = within;
    trace(outline);
  }

  private void trace(Points outline) {
    if (outline.count == 0) {
      return;
    }
    float x = (float) (outline.x[outline.count - 1] - left);
    float y = (float) (outline.y[outline.count - 1] - top);
    for (int i = 0; i < outline.count; i++) {
      float nextX = (float) (outline.x[i] - left);
      float nextY = (float) (outline.y[i] - top);
      edge(x, y, nextX, nextY);
      x = nextX;
      y = nextY;
    }
  }

  private void edge(float x0, float y0, float x1, float y1) {
    int row = (int) y0;
    if (y0 >= 0 && y1 >= 0 && row == (int) y1 && row < height) {
      float cover = PIXEL * (y1 - y0);
      across(row, x0, x1, cover, cover / Math.abs(x1 - x0));
    } else if (y0 < y1) {
      down(x0, y0, x1, y1, PIXEL);
    } else {
      down(x1, y1, x0, y0, -PIXEL);
    }
  }

  private void down(float fromX, float fromY, float toX, float toY, float way) {
    if (toY <= 0 || fromY >= height) {
      return;
    }
    float slope = (toX - fromX) / (toY - fromY);
    float share = way / Math.abs(slope);
    float x = fromX;
    float y = fromY;
    if (y < 0) {
      x -= y * slope;
      y = 0;
    }
    float end = toY < height ? toY : height;
    int row = (int) y;
    while (y < end) {
      float below = row + 1 < end ? row + 1 : end;
      float nextX = x + slope * (below - y);
      across(row, x, nextX, way * (below - y), share);
      x = nextX;
      y = below;
      row++;
    }
  }

  /**
   * Spreads the cover of one edge in one row over the cells that it crosses.
   *
   * @param share of the cover for one cell's breadth, where the edge is not upright
   */
  private void across(int row, float oneX, float otherX, float cover, float share) {
    float a = oneX < otherX ? oneX : otherX;
    float b = oneX < otherX ? otherX : oneX;
    if (a < 0 || b > width) {
      a = clamped(a);
      b = clamped(b);
      share = cover / (b - a);
    }
    int from = (int) a;
    int to = (int) b;
    if (from < first[row]) {
      first[row] = from;
    }
    if (to + 1 > last[row]) {
      last[row] = to + 1;
    }
    int at = row * stride + from;
    int all = (int) cover;
    if (from == to) {
      int beyond = (int) (cover * (0.5f * (a + b) - from));
      cells[at] += all - beyond;
      cells[at + 1] += beyond;
    } else {
      slanted(at, a - from, b - from, all, share);
    }
  }

  private float clamped(float x) {
    return x < 0 ? 0 : x > width ? width : x;
  }

  /**
   * Over several cells the cover grows as a parabola in the first and the last, evenly between.
   *
   * @param a where the edge enters, from the left of the first cell
   * @param b where it leaves
   * @param all of its cover
   */
  private void slanted(int at, float a, float b, int all, float share) {
    int lastCell = (int) b;
    int sum = (int) (0.5f * share * (1 - a) * (1 - a));
    cells[at] += sum;
    for (int k = 1; k < lastCell; k++) {
      int area = (int) (share * (k + 0.5f - a));
      cells[at + k] += area - sum;
      sum = area;
    }
    float over = b - lastCell;
    int rest = (int) (0.5f * share * over * over);
    cells[at + lastCell] += all - rest - sum;
    cells[at + lastCell + 1] += rest;
  }

  /**
   * Lays a colour over the pixels wherever something is covered. After that nothing is covered.
   *
   * @param opacity 0 to 1
   */
  void paint(int rgb, double opacity) {
    int full = (int) Math.round(256 * opacity);
    for (int row = 0; row < height; row++) {
      if (last[row] >= 0) {
        surface.lay(left + first[row], top + row, whole, start(row), count(row), rgb, full);
        bare(row, whole);
      }
    }
    Arrays.fill(first, 0, height, stride);
    Arrays.fill(last, 0, height, -1);
  }

  /** Lays two colours over the pixels, on the rim and within. After that nothing is covered. */
  void paint(Surface.Rimmed colours) {
    for (int row = 0; row < height; row++) {
      if (last[row] >= 0) {
        surface.lay(left + first[row], top + row, whole, within, start(row), count(row), colours);
        bare(row, within);
        bare(row, whole);
      }
    }
    Arrays.fill(first, 0, height, stride);
    Arrays.fill(last, 0, height, -1);
  }

  /**
   * Takes away all cover of the window, as a stamp.
   *
   * @param x the pixel in which the shape has its origin
   */
  Stamp stamp(int x, int y, Surface.Rimmed rimmed) {
    int above = 0;
    while (above < height - 1 && last[above] < 0) {
      above++;
    }
    int below = height;
    while (below > above + 1 && last[below - 1] < 0) {
      below--;
    }
    int from = width - 1;
    int to = 0;
    for (int row = above; row < below; row++) {
      from = Math.min(from, first[row]);
      to = Math.max(to, Math.min(last[row], width - 1));
    }
    int breadth = Math.max(1, to + 1 - from);
    int[] colours = new int[breadth * (below - above)];
    for (int row = above; row < below; row++) {
      int all = 0;
      int inner = 0;
      for (int i = 0; i < breadth; i++) {
        all += whole[row * stride + from + i];
        inner += within[row * stride + from + i];
        int covered = Surface.weight(all);
        int inside = Math.min(covered, Surface.weight(inner));
        colours[(row - above) * breadth + i] = rimmed.covering(covered, inside);
      }
    }
    Arrays.fill(whole, 0, stride * height, 0);
    Arrays.fill(within, 0, stride * height, 0);
    return new Stamp(left + from - x, top + above - y, breadth, below - above, colours);
  }

  private int start(int row) {
    return row * stride + first[row];
  }

  private int count(int row) {
    return Math.min(last[row], width - 1) - first[row] + 1;
  }

  /** Beyond the window's edge nothing is painted, and nothing may be left. */
  private void bare(int row, int[] layer) {
    for (int i = width; i <= last[row]; i++) {
      layer[row * stride + i] = 0;
    }
  }
}
