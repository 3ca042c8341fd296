package tightside.picture;

/**
 * How much room text takes, without asking a toolkit: on the wide side for the usual sans-serif
 * faces, so that what is laid out by it does not collide when drawn.
 */
public final class TextSize {

  /** Height of the tallest letters above the base line, in ems. */
  static final double ASCENT = 0.78;

  /** Depth of the lowest below it, in ems. */
  static final double DESCENT = 0.24;

  private TextSize() {}

  /** Width of a line of text, mm. */
  public static double widthMm(String words, double sizeMm) {
    return words.codePoints().mapToDouble(TextSize::ems).sum() * sizeMm;
  }

  private static double ems(int letter) {
    if (letter > 0x2E80) {
      return 1.05;
    }
    if (" .,:;'|!iljI()[]".indexOf(letter) >= 0) {
      return 0.42;
    }
    if ("mwMW@%".indexOf(letter) >= 0) {
      return 1.02;
    }
    return Character.isUpperCase(letter) ? 0.78 : 0.66;
  }
}
