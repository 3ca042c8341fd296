package tightside.raster;

import java.util.Arrays;

/**
 * How much of each pixel one shape covers. Outlines are added edge by edge: each cell holds by how
 * much the cover changes from the pixel on its left, so that the sum along a row is the cover.
 * Contours run the same way add up to no more than the whole; one run the other way inside another
 * is a hole.
 *
 * <p>The cells are those of a window round the shape: few, so that they stay near the processor.
 */
final class Coverage {

  private final Surface surface;
  private int left;
  private int top;
  private int width;
  private int height;
  private int stride;
  private float[] cells = new float[4096];
  private int[] first = new int[64];
  private int[] last = new int[64];

  Coverage(Surface surface) {
    this.surface = surface;
  }

  /**
   * Opens the window on a shape.
   *
   * @param margin how far its line stands out, pixels
   * @return whether there is anything to be seen of it
   */
  boolean open(Points outline, double margin) {
    left = Math.max(0, (int) Math.floor(outline.least(outline.x) - margin));
    top = Math.max(surface.from(), (int) Math.floor(outline.least(outline.y) - margin));
    width = Math.min(surface.width(), (int) Math.ceil(outline.most(outline.x) + margin)) - left;
    height = Math.min(surface.end(), (int) Math.ceil(outline.most(outline.y) + margin)) - top;
    if (width <= 0 || height <= 0) {
      return false;
    }
    stride = width + 2;
    if (cells.length < stride * height) {
      cells = new float[stride * height];
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
      across(row, x0, x1, y1 - y0);
    } else if (y0 < y1) {
      down(x0, y0, x1, y1, 1);
    } else {
      down(x1, y1, x0, y0, -1);
    }
  }

  private void down(float fromX, float fromY, float toX, float toY, float way) {
    if (toY <= 0 || fromY >= height) {
      return;
    }
    float slope = (toX - fromX) / (toY - fromY);
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
      across(row, x, nextX, way * (below - y));
      x = nextX;
      y = below;
      row++;
    }
  }

  /** Spreads the cover of one edge in one row over the cells that it crosses. */
  private void across(int row, float oneX, float otherX, float cover) {
    float a = oneX < otherX ? oneX : otherX;
    float b = oneX < otherX ? otherX : oneX;
    if (a < 0 || b > width) {
      a = clamped(a);
      b = clamped(b);
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
    if (from == to) {
      float beyond = 0.5f * (a + b) - from;
      cells[at] += cover * (1 - beyond);
      cells[at + 1] += cover * beyond;
    } else {
      slanted(at, a - from, b - from, cover);
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
   */
  private void slanted(int at, float a, float b, float cover) {
    float share = cover / (b - a);
    int whole = (int) b;
    float sum = 0.5f * share * (1 - a) * (1 - a);
    cells[at] += sum;
    for (int k = 1; k < whole; k++) {
      float area = share * (k + 0.5f - a);
      cells[at + k] += area - sum;
      sum = area;
    }
    float over = b - whole;
    float area = cover - 0.5f * share * over * over;
    cells[at + whole] += area - sum;
    cells[at + whole + 1] += cover - area;
  }

  /**
   * Lays a colour over the pixels wherever something is covered. After that nothing is covered.
   *
   * @param opacity 0 to 1
   */
  void paint(int rgb, double opacity) {
    float full = (float) (256 * opacity);
    for (int row = 0; row < height; row++) {
      if (last[row] >= 0) {
        int start = row * stride + first[row];
        int end = row * stride + last[row];
        int count = Math.min(last[row], width - 1) - first[row] + 1;
        surface.lay(left + first[row], top + row, cells, start, count, rgb, full);
        Arrays.fill(cells, start, end + 1, 0);
        first[row] = stride;
        last[row] = -1;
      }
    }
  }
}
