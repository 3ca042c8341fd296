package tightside.validation;

import java.math.BigDecimal;

/**
 * A number as printed.
 *
 * @param halfDigit half a unit of its last digit: what rounding may have taken or given
 */
public record Printed(double value, double halfDigit) {

  public static Printed of(String text) {
    BigDecimal number = new BigDecimal(text);
    return new Printed(number.doubleValue(), number.ulp().doubleValue() / 2);
  }

  /** The same in another unit. */
  public Printed times(double factor) {
    return new Printed(value * factor, halfDigit * factor);
  }
}
