package tightside.print;

/** A size of paper, upright, and what of it can be printed on. */
public enum Paper {
  A4(210, 297),
  LETTER(215.9, 279.4);

  /** Left and right margins together, mm, as in the style sheet. */
  private static final double SIDES_MM = 16 + 14;

  /** Top and bottom margins together, mm, as in the style sheet. */
  private static final double ENDS_MM = 15 + 17;

  private final double widthMm;
  private final double heightMm;

  Paper(double widthMm, double heightMm) {
    this.widthMm = widthMm;
    this.heightMm = heightMm;
  }

  public double widthMm() {
    return widthMm;
  }

  public double heightMm() {
    return heightMm;
  }

  /** Between the margins, mm. */
  double roomAcrossMm() {
    return widthMm - SIDES_MM;
  }

  /** Between the margins, mm. */
  double roomDownMm() {
    return heightMm - ENDS_MM;
  }

  /** As a style sheet names it. */
  String css() {
    return widthMm + "mm " + heightMm + "mm";
  }
}
