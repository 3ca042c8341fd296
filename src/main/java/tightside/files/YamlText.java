package tightside.files;

import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;

/** Texts and numbers as they stand in a model file. */
final class YamlText {

  /** What every reader of YAML takes for a text outside brackets. */
  private static final Pattern LINE =
      Pattern.compile("\\p{L}(?:[\\p{L}\\p{N} _,.()-]*[\\p{L}\\p{N}.)])?");

  /** The same in brackets. */
  private static final Pattern PLAIN =
      Pattern.compile("\\p{L}(?:[\\p{L}\\p{N} _-]*[\\p{L}\\p{N}])?");

  /** What YAML 1.1 or 1.2 take for something else. */
  private static final Set<String> TAKEN =
      Set.of("null", "true", "false", "yes", "no", "on", "off", "y", "n", "nan", "inf");

  private YamlText() {}

  /** A text that may stand anywhere. */
  static String text(String text) {
    return text(text, PLAIN);
  }

  /** A text that stands alone behind its key. */
  static String line(String text) {
    return text(text, LINE);
  }

  private static String text(String text, Pattern plain) {
    return plain.matcher(text).matches() && !TAKEN.contains(text.toLowerCase(Locale.ROOT))
        ? text
        : quoted(text);
  }

  /** A number that reads back as the same double. */
  static String number(double value) {
    return Digits.exact(value);
  }

  private static String quoted(String text) {
    StringBuilder quoted = new StringBuilder("\"");
    text.codePoints().forEach(sign -> append(quoted, sign));
    return quoted.append('"').toString();
  }

  private static void append(StringBuilder quoted, int sign) {
    if (sign == '"' || sign == '\\') {
      quoted.append('\\').appendCodePoint(sign);
    } else if (sign == '\n') {
      quoted.append("\\n");
    } else if (sign >= ' ' && sign <= '~' || Character.isLetterOrDigit(sign)) {
      quoted.appendCodePoint(sign);
    } else if (sign <= 0xFFFF) {
      quoted.append(String.format(Locale.ROOT, "\\u%04X", sign));
    } else {
      quoted.append(String.format(Locale.ROOT, "\\U%08X", sign));
    }
  }
}
