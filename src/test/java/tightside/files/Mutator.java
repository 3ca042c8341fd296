package tightside.files;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/** Spoils texts: sign by sign, line by line, value by value. */
final class Mutator {

  private static final Pattern NUMBER = Pattern.compile("-?\\d+(?:\\.\\d+)?");
  private static final Pattern DIGIT = Pattern.compile("\\d");
  private static final Pattern WORD = Pattern.compile("[a-z][a-z-]+");

  private static final String[] SIGNS = {
    " ",
    "\t",
    "\n",
    ":",
    ": ",
    "-",
    "- ",
    ",",
    "[",
    "]",
    "{",
    "}",
    "\"",
    "'",
    "#",
    " #",
    "&",
    "*",
    "!",
    "|",
    ">",
    "%",
    "@",
    "`",
    "?",
    "~",
    ".",
    "0",
    "9",
    "e",
    "x",
    "\\",
    "\u0000",
    "\u0007",
    "\uFEFF",
    "\uD834\uDD1E",
    "ß",
    "İ",
    "\u0085",
    "\u2028",
    "---\n",
    "...\n",
    "<<: ",
    "&a ",
    "*a",
    "\r"
  };
  private static final String[] NUMBERS = {
    "0",
    "-1",
    "1e9",
    "99999999999999999999",
    ".nan",
    ".inf",
    "8,0",
    "null",
    "yes",
    "true",
    "[]",
    "{}",
    "\"8\"",
    "0x10",
    "010",
    "1_0",
    "",
    "1.5",
    "-0",
    "3",
    "360",
    "200",
    "[1, 2]",
    "0.00001"
  };
  private static final String[] DIGITS = "0123456789".split("");
  private static final String[] WORDS = {
    "crank", "camshaft", "crankshaft", "links", "teeth", "mark", "face", "inside", "shoe", "arm",
    "guide", "seen", "never", "null", "x", "phaser", "counts", "at", "plunger", "job"
  };

  private final Random random;

  Mutator(long seed) {
    random = new Random(seed);
  }

  /** The text spoilt in one way, or now and then in three. */
  String spoilt(String text) {
    String spoilt = text;
    for (int left = random.nextInt(4) == 0 ? 3 : 1; left > 0; left--) {
      spoilt = once(spoilt);
    }
    return spoilt;
  }

  private String once(String text) {
    return switch (random.nextInt(12)) {
      case 0 -> splice(text, at(text), 0, SIGNS[random.nextInt(SIGNS.length)]);
      case 1 -> splice(text, at(text), 1, "");
      case 2 -> splice(text, at(text), 1, SIGNS[random.nextInt(SIGNS.length)]);
      case 3 -> splice(text, at(text), random.nextInt(40), "");
      case 4 -> text.substring(0, at(text));
      case 5 -> lines(text);
      case 6 -> splice(text, at(text), 0, piece(text));
      case 7 -> replaced(text, WORD, WORDS);
      case 8, 9 -> replaced(text, DIGIT, DIGITS);
      default -> replaced(text, NUMBER, NUMBERS);
    };
  }

  private int at(String text) {
    return random.nextInt(text.length() + 1);
  }

  private static String splice(String text, int at, int out, String in) {
    return text.substring(0, at) + in + text.substring(Math.min(text.length(), at + out));
  }

  private String piece(String text) {
    int from = at(text);
    return text.substring(from, Math.min(text.length(), from + random.nextInt(60)));
  }

  private String lines(String text) {
    List<String> lines = new ArrayList<>(text.lines().toList());
    if (lines.isEmpty()) {
      return "x";
    }
    int line = random.nextInt(lines.size());
    switch (random.nextInt(5)) {
      case 0 -> lines.remove(line);
      case 1 -> lines.add(random.nextInt(lines.size()), lines.get(line));
      case 2 -> lines.set(line, " ".repeat(random.nextInt(5)) + lines.get(line));
      case 3 -> lines.set(line, lines.get(line).strip());
      default -> Collections.swap(lines, line, random.nextInt(lines.size()));
    }
    return String.join("\n", lines) + "\n";
  }

  private String replaced(String text, Pattern pattern, String[] by) {
    List<MatchResult> found = pattern.matcher(text).results().toList();
    if (found.isEmpty()) {
      return text;
    }
    MatchResult one = found.get(random.nextInt(found.size()));
    String in = by[random.nextInt(by.length)];
    return splice(text, one.start(), one.end() - one.start(), in);
  }
}
