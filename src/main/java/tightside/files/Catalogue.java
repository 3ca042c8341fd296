package tightside.files;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import tightside.drive.Finding;
import tightside.drive.Texts;

/**
 * The words for all that can be wrong: one sentence for each finding and each fault.
 *
 * <p>The sentences stand in {@code words.properties}. A fact is put in by its name, {@code
 * {shaft}}, with a format where it is a number to be rounded, {@code {apart:mm}}.
 */
public final class Catalogue {

  /** A fact's name, and how it is to be shown. */
  static final Pattern PLACEHOLDER = Pattern.compile("\\{([a-z]+)(?::([a-z]+))?}");

  private static final int SHOWN = 60;

  private Catalogue() {}

  /** The words are loaded when the first of them is needed: most files need none. */
  private static final class Loaded {
    static final Properties WORDS = load();
  }

  /** What is wrong and what would be right, in one sentence without a full stop. */
  public static String sentence(Finding finding) {
    return sentence(finding.id(), finding.facts());
  }

  /**
   * @throws IllegalStateException if words or a fact are missing, which a test rules out
   */
  static String sentence(Enum<?> id, Map<String, Object> facts) {
    Matcher place = PLACEHOLDER.matcher(template(id));
    StringBuilder sentence = new StringBuilder();
    while (place.find()) {
      Object fact = facts.get(place.group(1));
      if (fact == null) {
        throw new IllegalStateException(id + " needs a fact " + place.group(1));
      }
      place.appendReplacement(sentence, Matcher.quoteReplacement(shown(fact, place.group(2))));
    }
    return place.appendTail(sentence).toString();
  }

  static String template(Enum<?> id) {
    String words = Loaded.WORDS.getProperty(Terms.of(id));
    if (words == null) {
      throw new IllegalStateException("no words for " + id);
    }
    return words;
  }

  private static String shown(Object fact, String format) {
    if (format != null) {
      return number(((Number) fact).doubleValue(), format);
    }
    if (fact instanceof Number number) {
      return Digits.exact(number.doubleValue());
    }
    if (fact instanceof Value.Quoted quoted) {
      return '"' + line(quoted.text()) + '"';
    }
    return fact instanceof Collection<?> many ? either(List.copyOf(many)) : line(fact.toString());
  }

  private static String number(double value, String format) {
    return switch (format) {
      case "mm", "pitches" -> Digits.rounded(value, 2, RoundingMode.HALF_UP);
      case "degrees" -> Digits.exact(Math.round(value * 100) / 100.0);
      case "teeth" -> Digits.rounded(value, 1, RoundingMode.HALF_UP);
      case "up" -> Digits.rounded(value, 2, RoundingMode.CEILING);
      case "down" -> Digits.rounded(value, 2, RoundingMode.FLOOR);
      case "evenup" -> Digits.rounded(2 * Math.ceil(value / 2), 0, RoundingMode.CEILING);
      case "wholeup" -> Digits.rounded(value, 0, RoundingMode.CEILING);
      default -> throw new IllegalStateException("no number format " + format);
    };
  }

  private static String either(List<?> many) {
    StringBuilder words = new StringBuilder(many.isEmpty() ? "none" : "");
    for (int i = 0; i < many.size(); i++) {
      words.append(i == 0 ? "" : i == many.size() - 1 ? " or " : ", ");
      words.append('"').append(line(many.get(i).toString())).append('"');
    }
    return words.toString();
  }

  /** A text on one line, not too long a one, that can stand in quotes. */
  private static String line(String text) {
    int end =
        text.codePointCount(0, text.length()) <= SHOWN
            ? text.length()
            : text.offsetByCodePoints(0, SHOWN);
    StringBuilder line = new StringBuilder();
    text.substring(0, end)
        .codePoints()
        .forEach(
            sign -> line.appendCodePoint(sign == '"' ? '\'' : Texts.printable(sign) ? sign : ' '));
    return end < text.length() ? line + "…" : line.toString();
  }

  private static Properties load() {
    Properties words = new Properties();
    try (Reader reader =
        new InputStreamReader(
            Catalogue.class.getResourceAsStream("words.properties"), StandardCharsets.UTF_8)) {
      words.load(reader);
      return words;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
