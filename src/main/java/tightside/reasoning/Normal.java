package tightside.reasoning;

import org.apache.commons.statistics.distribution.NormalDistribution;

/** The standard normal distribution. */
final class Normal {

  private static final NormalDistribution STANDARD = NormalDistribution.of(0, 1);

  private Normal() {}

  /** Probability between two values, from the tail that loses no digits. */
  static double between(double low, double high) {
    return low > 0 ? below(-low) - below(-high) : below(high) - below(low);
  }

  static double below(double value) {
    return STANDARD.cumulativeProbability(value);
  }
}
