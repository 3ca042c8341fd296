package tightside.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.regex.Pattern;

/** What every sentence for people has to be. */
final class Sentences {

  /** Words of the language that the program is written in, and its signs. */
  private static final Pattern FOREIGN =
      Pattern.compile(
          "Exception|java|Optional|\\bnull\\b(?!\")|\\w+\\.\\w+\\(|[A-Z]{2,}_[A-Z]+|NaN|\\$\\{");

  private Sentences() {}

  static void assertReadable(String message) {
    assertThat(message).doesNotContain("\n", "\r");
    String sentence = message.replaceAll("\"[^\"]*\"", "it");
    assertThat(sentence).isNotBlank().doesNotContain("\n", "\r", ". ").doesNotEndWith(".");
    assertThat(sentence.length()).as(sentence).isBetween(20, 400);
    assertThat(FOREIGN.matcher(sentence).find()).as(sentence).isFalse();
  }
}
