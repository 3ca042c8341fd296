package tightside.raster;

import java.util.Arrays;
import tightside.picture.Rgb;

/**
 * Opaque pixels, a row after the other, alpha in the highest byte; of them the rows that one thread
 * paints.
 *
 * @param pixels all rows
 * @param from the first row that is painted
 * @param end the first row that is not painted any more
 * @param inked is told what is painted
 */
record Surface(int[] pixels, int width, int from, int end, Inked inked) {

  /** Runs that are no longer are painted pixel by pixel. */
  private static final int NARROW = 48;

  private static final int RED_BLUE = 0xFF00FF;
  private static final int GREEN = 0x00FF00;

  /** From the cover of a pixel to a weight of 256. */
  private static final int FINE = Integer.numberOfTrailingZeros(Coverage.PIXEL) - 8;

  /**
   * The colours of a shape with a rim.
   *
   * @param full the weight of the fill where all is covered, of 256
   */
  record Rimmed(int rim, int fill, int full) {

    /**
     * The colours of a pixel by as much as they cover it, and how much that is in the highest byte.
     *
     * @param covered the weight of rim and fill together, of 256
     * @param inside the weight of the fill where it covers all that it can, of 256
     */
    int covering(int covered, int inside) {
      int filled = inside * full >> 8;
      int ofRim = covered - inside;
      int redBlue = (rim & RED_BLUE) * ofRim + (fill & RED_BLUE) * filled;
      int green = (rim & GREEN) * ofRim + (fill & GREEN) * filled;
      int all = ofRim + filled;
      return all - Math.min(1, all >> 7) << 24 | redBlue >>> 8 & RED_BLUE | green >>> 8 & GREEN;
    }
  }

  static int rgb(Rgb colour) {
    return colour.red() << 16 | colour.green() << 8 | colour.blue();
  }

  void clear(int rgb) {
    Arrays.fill(pixels, from * width, end * width, 0xFF000000 | rgb);
  }

  /**
   * Lays a colour over pixels of a row, and takes the changes of the cover away.
   *
   * @param changes how the cover changes from pixel to pixel, beginning from none
   * @param start of the changes
   * @param count of pixels
   * @param full the weight of the colour where all is covered, of 256
   */
  void lay(int x, int y, int[] changes, int start, int count, int rgb, int full) {
    inked.mark(x, y, count);
    int target = y * width + x;
    int redBlue = rgb & RED_BLUE;
    int green = rgb & GREEN;
    int sum = 0;
    if (count <= NARROW) {
      for (int i = 0; i < count; i++) {
        sum += changes[start + i];
        changes[start + i] = 0;
        int weight = weight(sum) * full >> 8;
        pixels[target + i] =
            mixed(pixels[target + i], redBlue * weight, green * weight, 256 - weight);
      }
      return;
    }
    int i = 0;
    while (i < count) {
      sum += changes[start + i];
      int next = i + 1;
      while (next < count && changes[start + next] == 0) {
        next++;
      }
      changes[start + i] = 0;
      int weight = weight(sum) * full >> 8;
      blend(target + i, target + next, redBlue * weight, green * weight, weight);
      i = next;
    }
  }

  /**
   * Lays the colours of a shape with a rim over pixels of a row, and takes the changes away.
   *
   * @param whole how the cover by the shape with its rim changes from pixel to pixel
   * @param within how the cover by what lies within the rim changes
   */
  void lay(int x, int y, int[] whole, int[] within, int start, int count, Rimmed colours) {
    inked.mark(x, y, count);
    int target = y * width + x;
    int full = colours.full();
    int fill = colours.fill();
    int rim = colours.rim();
    int all = 0;
    int inner = 0;
    int redBlue = 0;
    int green = 0;
    int rest = 256;
    for (int i = start; i < start + count; i++) {
      int more = whole[i];
      int moreInside = within[i];
      if ((more | moreInside) != 0) {
        whole[i] = 0;
        within[i] = 0;
        all += more;
        inner += moreInside;
        int covered = weight(all);
        int inside = Math.min(covered, weight(inner));
        int filled = inside * full >> 8;
        int ofRim = covered - inside;
        redBlue = (rim & RED_BLUE) * ofRim + (fill & RED_BLUE) * filled;
        green = (rim & GREEN) * ofRim + (fill & GREEN) * filled;
        rest = 256 - ofRim - filled;
      }
      pixels[target] = mixed(pixels[target], redBlue, green, rest);
      target++;
    }
  }

  /** Lays a stamp with its origin in a pixel, as far as it lies on these rows. */
  void lay(int x, int y, Stamp stamp) {
    int left = x + stamp.left();
    int top = y + stamp.top();
    int begin = Math.max(0, -left);
    int stop = Math.min(stamp.width(), width - left);
    int last = Math.min(stamp.height(), end - top);
    if (begin >= stop) {
      return;
    }
    for (int row = Math.max(0, from - top); row < last; row++) {
      inked.mark(left + begin, top + row, stop - begin);
      int target = (top + row) * width + left;
      stamp(stamp.colours(), row * stamp.width(), pixels, target, begin, stop);
    }
  }

  private static void stamp(
      int[] colours, int source, int[] pixels, int target, int begin, int stop) {
    for (int i = begin; i < stop; i++) {
      int over = colours[source + i];
      int under = pixels[target + i];
      int covered = over >>> 24;
      int rest = 256 - covered - (covered >> 7);
      pixels[target + i] =
          over
                  + ((under & RED_BLUE) * rest >>> 8 & RED_BLUE)
                  + ((under & GREEN) * rest >>> 8 & GREEN)
              | 0xFF000000;
    }
  }

  /** The weight of a cover, of 256. */
  static int weight(int sum) {
    return Math.min(Math.abs(sum) + (1 << FINE - 1) >> FINE, 256);
  }

  /** Mixes weighted colours into a run of pixels. */
  private void blend(int begin, int stop, int redBlue, int green, int weight) {
    if (weight == 256 && stop > begin + 1) {
      Arrays.fill(pixels, begin, stop, mixed(0, redBlue, green, 0));
    } else {
      for (int i = begin; i < stop; i++) {
        pixels[i] = mixed(pixels[i], redBlue, green, 256 - weight);
      }
    }
  }

  /**
   * Mixes weighted colours into a pixel.
   *
   * @param rest the weight that is left to what lies there, of 256
   */
  private static int mixed(int under, int redBlue, int green, int rest) {
    return 0xFF000000
        | redBlue + (under & RED_BLUE) * rest >>> 8 & RED_BLUE
        | green + (under & GREEN) * rest >>> 8 & GREEN;
  }
}
