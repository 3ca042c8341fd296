package tightside.validation;

/**
 * The error of the formula that handbooks print for belts and chains.
 *
 * <p>With c the centre distance, d the difference of the radii (their sum for a crossed belt) and s
 * = d/c = sin(alpha), the length that is not in the half turns is 2c (cos(alpha) + alpha s), and
 * the formula breaks its series off: 2c + d^2/c = 2c (1 + s^2/2). What is left out is 2c times the
 * integral of asin(t) - t from 0 to s. No coefficient of asin(t) - t = t^3/6 + 3t^5/40 + ... is
 * above the first, so it is at most t^3 / (6 (1 - s^2)), and what is left out lies between 0 and 2c
 * s^4 / (24 (1 - s^2)).
 */
public final class Series {

  private Series() {}

  /** The most by which the true length exceeds the formula's, in the unit of the arguments. */
  public static double mostLeftOut(double centre, double difference) {
    double square = Math.pow(difference / centre, 2);
    return 2 * centre * square * square / (24 * (1 - square));
  }
}
