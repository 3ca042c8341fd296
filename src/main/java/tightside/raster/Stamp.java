package tightside.raster;

/**
 * The cover of a small shape, worked out once.
 *
 * @param middle pixels from the left, and from the top, to that in which the shape has its middle
 * @param weights row by row: of the rim in the upper half, of what lies within in the lower; of 256
 */
record Stamp(int middle, int size, int[] weights) {

  static int packed(int rim, int within) {
    return rim << 16 | within;
  }

  static int rim(int weight) {
    return weight >>> 16;
  }

  static int within(int weight) {
    return weight & 0xFFFF;
  }
}
