package tightside.files;

/**
 * A place in a text.
 *
 * @param line from 1
 * @param column from 1, counted in characters
 */
record Place(int line, int column) {

  static final Place START = new Place(1, 1);

  /** The place of a character. */
  static Place of(String text, int index) {
    int line = 1;
    int begins = 0;
    for (int i = 0; i < index; i++) {
      char sign = text.charAt(i);
      boolean pair = sign == '\r' && i + 1 < text.length() && text.charAt(i + 1) == '\n';
      if (sign == '\n' || sign == '\r' && !pair) {
        line++;
        begins = i + 1;
      }
    }
    return new Place(line, text.codePointCount(begins, index) + 1);
  }
}
