package tightside.raster;

/**
 * A small shape in its colours, worked out once.
 *
 * @param left pixels from that in which the shape has its origin to the first column, to the right
 * @param top pixels from there to the first row, downward
 * @param colours row by row: how much is covered in the highest byte, of 255, and the colours of
 *     the shape by as much
 */
record Stamp(int left, int top, int width, int height, int[] colours) {

  int pixels() {
    return colours.length;
  }
}
