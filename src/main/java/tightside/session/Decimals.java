package tightside.session;

import java.util.regex.Pattern;
import tightside.drive.Limits;
import tightside.words.Numbers;

/**
 * The one reader of numbers that people type. Comma and point are both read as the decimal sign,
 * whatever the language of the computer. A thousands sign is not read: where a number could be
 * meant with one, it is refused.
 */
public final class Decimals {

  /** Longer than this is not typed by hand; fifteen digits are what a double holds. */
  private static final int MOST_CHARACTERS = 17;

  /** A sign may be the minus sign proper, as copied from a text. */
  private static final Pattern FORM =
      Pattern.compile("[+\\-\u2212]?([0-9]+[.,]?[0-9]*|[.,][0-9]+)");

  private static final Pattern PERHAPS_THOUSANDS =
      Pattern.compile("[+\\-\u2212]?[1-9][0-9]{0,2}[.,][0-9]{3}");
  private static final Pattern SEVERAL_SIGNS = Pattern.compile(".*[.,].*[.,].*");
  private static final Pattern SPACED = Pattern.compile(".*[\\s\\p{Z}].*");

  private Decimals() {}

  /**
   * A number within limits. Blanks at either end are not looked at. Three decimals, as in 9.525,
   * are refused only where the limits allow the thousands that they could be meant for.
   *
   * @param what it is, as a sentence begins: "The crank angle"
   */
  public static Typed within(String text, String what, Limits limits) {
    String bare = text.strip();
    if (bare.length() > MOST_CHARACTERS || !FORM.matcher(bare).matches()) {
      return new Typed.Refused(noNumber(bare));
    }
    double value = value(bare.replace(',', '.'));
    if (!limits.allow(value)) {
      return new Typed.Refused(
          "%s lies from %s to %s %s, not %s."
              .formatted(
                  what,
                  Numbers.plain(limits.least()),
                  Numbers.plain(limits.most()),
                  limits.unit(),
                  bare));
    }
    return PERHAPS_THOUSANDS.matcher(bare).matches() && limits.allow(value * 1000)
        ? new Typed.Refused(ambiguous(bare))
        : new Typed.Number(value);
  }

  /** A whole number within limits. */
  public static Typed whole(String text, String what, Limits limits) {
    Typed typed = within(text, what, limits);
    return typed instanceof Typed.Number number && number.value() != Math.rint(number.value())
        ? new Typed.Refused("%s is a whole number, not %s.".formatted(what, text.strip()))
        : typed;
  }

  private static double value(String withPoint) {
    return Double.parseDouble(withPoint.replace('\u2212', '-')) + 0.0;
  }

  private static String ambiguous(String bare) {
    return "\"%s\" could mean %s or %s: type %s or %s0."
        .formatted(bare, joined(bare), bare.replace(',', '.'), joined(bare), bare);
  }

  private static String joined(String bare) {
    return bare.replaceAll("[.,]", "");
  }

  private static String noNumber(String bare) {
    if (bare.isEmpty()) {
      return "Type a number, such as 12.5 or 12,5.";
    }
    if (bare.length() > MOST_CHARACTERS) {
      return "That is too long for a number: type one such as 12.5 or 12,5.";
    }
    if (SEVERAL_SIGNS.matcher(bare).matches()) {
      return "\"%s\" has more than one point or comma: type one, and no thousands sign."
          .formatted(bare);
    }
    return SPACED.matcher(bare).matches()
        ? "\"%s\" has a space in it: type the number in one piece, such as 1234.5.".formatted(bare)
        : "\"%s\" is no number: type one such as 12.5 or 12,5, without a unit.".formatted(bare);
  }
}
