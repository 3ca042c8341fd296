package tightside.reasoning;

import org.apache.commons.statistics.distribution.NormalDistribution;

/** The standard normal distribution. */
final class Normal {

  private static final NormalDistribution STANDARD = NormalDistribution.of(0, 1);

  /** Where a tail is told by its series, spreads. */
  private static final double FAR = 10;

  private Normal() {}

  /** Probability between two values, from the tail that loses no digits. */
  static double between(double low, double high) {
    return low > 0 ? below(-low) - below(-high) : below(high) - below(low);
  }

  /** Its logarithm, however far out in a tail both values lie. */
  static double logBetween(double low, double high) {
    if (high < 0) {
      return logBetween(-high, -low);
    }
    return low < FAR ? Math.log(between(low, high)) : logTail(low) + logRest(low, high);
  }

  /** Abramowitz and Stegun, 26.2.12: four terms, right to 1e-6 beyond FAR. */
  private static double logTail(double z) {
    double t = 1 / (z * z);
    return -z * z / 2
        - Math.log(z * Math.sqrt(2 * Math.PI))
        + Math.log1p(-t * (1 - t * (3 - 15 * t)));
  }

  private static double logRest(double low, double high) {
    return Math.log(-Math.expm1(logTail(high) - logTail(low)));
  }

  static double below(double value) {
    return STANDARD.cumulativeProbability(value);
  }
}
