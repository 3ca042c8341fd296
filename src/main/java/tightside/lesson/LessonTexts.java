package tightside.lesson;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The words of the lessons. They hold no figure: every {@code {name}} in them is worked out. */
final class LessonTexts {

  private static final Pattern NAME = Pattern.compile("\\{([a-z-]+)}");
  private static final Properties TEXTS = read();

  private LessonTexts() {}

  private static Properties read() {
    Properties texts = new Properties();
    try (Reader in =
        new InputStreamReader(
            LessonTexts.class.getResourceAsStream("lessons.properties"), StandardCharsets.UTF_8)) {
      texts.load(in);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return texts;
  }

  static Optional<String> find(String key) {
    return Optional.ofNullable(TEXTS.getProperty(key));
  }

  /**
   * A text with its facts in place.
   *
   * @throws IllegalArgumentException if there is no such text, or a fact that it needs is missing
   */
  static String fill(String key, Map<String, String> facts) {
    String text =
        find(key).orElseThrow(() -> new IllegalArgumentException("no text is called " + key));
    return NAME.matcher(text)
        .replaceAll(
            found -> {
              String fact = facts.get(found.group(1));
              if (fact == null) {
                throw new IllegalArgumentException(key + " needs " + found.group(1));
              }
              return Matcher.quoteReplacement(fact);
            });
  }
}
