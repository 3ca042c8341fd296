package tightside.files;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Numbers as people read them: a point for the decimals, no digit that is not deserved. */
final class Digits {

  private Digits() {}

  /** With so many decimals; what would vanish by that keeps its first digit. */
  static String rounded(double value, int decimals, RoundingMode mode) {
    BigDecimal exact = new BigDecimal(Double.toString(value));
    BigDecimal rounded = exact.setScale(decimals, mode);
    if (rounded.signum() != 0 || exact.signum() == 0) {
      return rounded.toPlainString();
    }
    BigDecimal first = exact.round(new MathContext(1, RoundingMode.HALF_UP));
    return first.scale() <= 6 ? first.toPlainString() : first.toString().replace('E', 'e');
  }

  /** In full, without a needless ".0": reads back as the same number. */
  static String exact(double value) {
    if (value == 0) {
      return 1 / value < 0 ? "-0" : "0";
    }
    BigDecimal exact = new BigDecimal(Double.toString(value)).stripTrailingZeros();
    return exact.toPlainString();
  }
}
