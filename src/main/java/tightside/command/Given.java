package tightside.command;

import tightside.words.Numbers;

/** A word of the form NAME=VALUE, and the numbers in it. */
record Given(String word, String name, String value) {

  static Given of(String option, String word, String form) {
    int equals = word.indexOf('=');
    if (equals < 1 || equals == word.length() - 1) {
      throw new Refusal("%s %s says nothing; write %s".formatted(option, word, form));
    }
    return new Given(word, word.substring(0, equals), word.substring(equals + 1));
  }

  /**
   * @throws Refusal if it is no number from the least to the most
   */
  static double number(String option, String word, double least, double most) {
    if (word.matches("[+-]?\\d{1,6}(\\.\\d{1,15})?")) {
      double number = Double.parseDouble(word);
      if (number >= least && number <= most) {
        return number;
      }
    }
    throw new Refusal(
        "%s: \"%s\" can't be meant; write a number with a decimal point, from %s to %s"
            .formatted(option, word, Numbers.plain(least), Numbers.plain(most)));
  }
}
