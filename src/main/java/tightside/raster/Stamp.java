package tightside.raster;

/**
 * The cover of a small shape, worked out once.
 *
 * @param left pixels from that in which the shape has its origin to the first column, to the right
 * @param top pixels from there to the first row, downward
 * @param weights row by row: of the rim in the upper byte, of what lies within in the lower; of 128
 */
record Stamp(int left, int top, int width, int height, char[] weights) {

  /**
   * @param rim of 256
   * @param within of 256
   */
  static char packed(int rim, int within) {
    return (char) (rim >> 1 << 8 | within + 1 >> 1);
  }

  /** The weight of the rim, of 256. */
  static int rim(int weight) {
    return weight >>> 8 << 1;
  }

  /** The weight of what lies within, of 256. */
  static int within(int weight) {
    return (weight & 0xFF) << 1;
  }

  int pixels() {
    return weights.length;
  }
}
