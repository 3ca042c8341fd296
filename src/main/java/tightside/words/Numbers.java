package tightside.words;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Numbers with the digits that they deserve, always with a decimal point. */
public final class Numbers {

  private Numbers() {}

  /** A length read on an engine: a tenth of a millimetre. */
  public static String mm(double mm) {
    return fixed(mm, 1) + " mm";
  }

  /**
   * A size given by a person, as given: 8 mm, 9.525 mm; one worked out, to a hundred-thousandth.
   */
  public static String sizeMm(double mm) {
    return plain(Math.rint(mm * 1e5) / 1e5) + " mm";
  }

  /** An angle of a shaft, without its sign: two decimals. */
  public static String degrees(double degrees) {
    return fixed(Math.abs(degrees), 2);
  }

  public static String percent(double percent) {
    return fixed(percent, 2) + " %";
  }

  /** A whole number with its noun: 1 link, 50 links. */
  public static String count(long number, String noun) {
    return number + " " + noun + (Math.abs(number) == 1 ? "" : "s");
  }

  /** So many decimals, rounded half up, never minus zero. */
  public static String fixed(double value, int decimals) {
    BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
    return rounded.signum() == 0 ? rounded.abs().toPlainString() : rounded.toPlainString();
  }

  /** Two decimals, with a plus before what is more than nothing. */
  public static String signedHundredths(double value) {
    String shown = fixed(value, 2);
    return shown.startsWith("-") || shown.equals("0.00") ? shown : "+" + shown;
  }

  /** All digits that the number has, without an exponent or a trailing zero. */
  public static String plain(double value) {
    BigDecimal exact = BigDecimal.valueOf(value);
    return exact.signum() == 0 ? "0" : exact.stripTrailingZeros().toPlainString();
  }
}
