package tightside.drive;

/** What may stand in a model as words for people. */
public final class Texts {

  /** Letters at most in a title. */
  public static final int TITLE_MOST = 120;

  /** Letters at most in a longer text. */
  public static final int PROSE_MOST = 4_000;

  private Texts() {}

  /** Whether a text is one line that says something. */
  public static boolean title(String text) {
    return !text.isBlank()
        && text.length() <= TITLE_MOST
        && text.codePoints().allMatch(Texts::printable);
  }

  /** Whether a text, which may be empty, has lines of printable signs only. */
  public static boolean prose(String text) {
    return text.length() <= PROSE_MOST
        && text.codePoints().allMatch(sign -> sign == '\n' || printable(sign));
  }

  /** Whether a sign can stand on a line. */
  public static boolean printable(int sign) {
    return switch (Character.getType(sign)) {
      case Character.CONTROL,
          Character.SURROGATE,
          Character.LINE_SEPARATOR,
          Character.PARAGRAPH_SEPARATOR ->
          false;
      default -> sign != 0xFFFE && sign != 0xFFFF;
    };
  }
}
