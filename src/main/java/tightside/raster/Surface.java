package tightside.raster;

import java.util.Arrays;

/**
 * Opaque pixels, a row after the other, alpha in the highest byte; of them the rows that one thread
 * paints.
 *
 * @param pixels all rows
 * @param from the first row that is painted
 * @param end the first row that is not painted any more
 */
record Surface(int[] pixels, int width, int from, int end) {

  /** Runs that are no longer are painted pixel by pixel. */
  private static final int NARROW = 48;

  void clear(int rgb) {
    Arrays.fill(pixels, from * width, end * width, 0xFF000000 | rgb);
  }

  /**
   * Lays a colour over pixels of a row.
   *
   * @param changes how the cover changes from pixel to pixel, beginning from none
   * @param start of the changes
   * @param count of pixels
   * @param full the weight of the colour where all is covered, of 256
   */
  void lay(int x, int y, float[] changes, int start, int count, int rgb, float full) {
    if (count <= NARROW) {
      each(y * width + x, changes, start, count, rgb, full);
    } else {
      runs(y * width + x, changes, start, count, rgb, full);
    }
  }

  /** With nothing to decide, which is faster as long as they are few. */
  private void each(int target, float[] changes, int start, int count, int rgb, float full) {
    int redBlue = rgb & 0xFF00FF;
    int green = rgb & 0x00FF00;
    float sum = 0;
    for (int i = 0; i < count; i++) {
      sum += changes[start + i];
      int under = pixels[target + i];
      int weight = weight(sum, full);
      int rest = 256 - weight;
      pixels[target + i] =
          0xFF000000
              | (redBlue * weight + (under & 0xFF00FF) * rest) >>> 8 & 0xFF00FF
              | (green * weight + (under & 0x00FF00) * rest) >>> 8 & 0x00FF00;
    }
  }

  private static int weight(float sum, float full) {
    float cover = Math.abs(sum);
    return (int) ((cover < 1 ? cover : 1) * full + 0.5f);
  }

  /** Those that are covered alike at once. */
  private void runs(int target, float[] changes, int start, int count, int rgb, float full) {
    float sum = 0;
    int i = 0;
    while (i < count) {
      sum += changes[start + i];
      int next = i + 1;
      while (next < count && changes[start + next] == 0) {
        next++;
      }
      int weight = weight(sum, full);
      if (weight > 0) {
        run(target + i, target + next, rgb, weight);
      }
      i = next;
    }
  }

  private void run(int begin, int stop, int rgb, int weight) {
    if (weight == 256) {
      Arrays.fill(pixels, begin, stop, 0xFF000000 | rgb);
      return;
    }
    int rest = 256 - weight;
    int redBlue = (rgb & 0xFF00FF) * weight;
    int green = (rgb & 0x00FF00) * weight;
    for (int i = begin; i < stop; i++) {
      int under = pixels[i];
      pixels[i] =
          0xFF000000
              | (redBlue + (under & 0xFF00FF) * rest) >>> 8 & 0xFF00FF
              | (green + (under & 0x00FF00) * rest) >>> 8 & 0x00FF00;
    }
  }
}
