package tightside.session;

import java.math.BigDecimal;
import java.util.Locale;

/** Numbers as they are shown: with a point, and with no more digits than they deserve. */
final class Figures {

  private Figures() {}

  static String tenths(double value) {
    return rounded("%.1f", value);
  }

  static String hundredths(double value) {
    return rounded("%.2f", value);
  }

  static String signedHundredths(double value) {
    String shown = hundredths(value);
    return shown.startsWith("-") || shown.equals("0.00") ? shown : "+" + shown;
  }

  /** As short as it can be without losing anything. */
  static String shortest(double value) {
    return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
  }

  /** A rounded nothing has no sign. */
  private static String rounded(String form, double value) {
    String shown = String.format(Locale.ROOT, form, value);
    return shown.matches("-0\\.0*") ? shown.substring(1) : shown;
  }
}
