package tightside.raster;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Where anything was drawn, as a grid of cells: what is bare paper need not be brought to the
 * screen. Few large areas are worth more than many that fit closely, for each is brought by itself.
 */
final class Inked {

  /** Height of a row of cells, pixels. */
  private static final int TALL = 128;

  /** Cells in a row, a bit each. */
  private static final int ACROSS = Long.SIZE;

  /** Bare paper of so few cells between drawn ones is brought along. */
  private static final int GAP = 6;

  private final int width;
  private final int height;
  private final int broad;
  private final long[] rows;

  /** For so many pixels. */
  Inked(int width, int height) {
    this.width = width;
    this.height = height;
    broad = Math.max(16, (width + ACROSS - 1) / ACROSS);
    rows = new long[(height + TALL - 1) / TALL];
  }

  void clear() {
    Arrays.fill(rows, 0);
  }

  /** Some pixels of a row are drawn on: one at least. */
  void mark(int x, int y, int count) {
    rows[y / TALL] |= bits(x / broad, (x + count - 1) / broad);
  }

  private static long bits(int from, int to) {
    return -1L << from & -1L >>> ACROSS - 1 - to;
  }

  void add(Inked other) {
    for (int row = 0; row < rows.length; row++) {
      rows[row] |= other.rows[row];
    }
  }

  /** All that was drawn on, from the top. */
  List<Area> areas() {
    List<Area> areas = new ArrayList<>();
    for (int row = 0; row < rows.length; row++) {
      int y = row * TALL;
      int tall = Math.min(TALL, height - y);
      long left = rows[row];
      while (left != 0) {
        int from = Long.numberOfTrailingZeros(left);
        int to = end(left, from);
        int x = from * broad;
        areas.add(new Area(x, y, Math.min(to * broad, width) - x, tall));
        left = to == ACROSS ? 0 : left & -1L << to;
      }
    }
    return areas;
  }

  /** The cell after the last of a run, in which there may be gaps. */
  private static int end(long cells, int from) {
    int end = from;
    for (int i = from; i < ACROSS && i <= end + GAP; i++) {
      if ((cells >>> i & 1) != 0) {
        end = i + 1;
      }
    }
    return end;
  }
}
