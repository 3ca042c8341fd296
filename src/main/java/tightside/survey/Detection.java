package tightside.survey;

import org.apache.commons.statistics.distribution.ChiSquaredDistribution;
import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * The tests of an adjustment: the global one, and that of the largest normalised residual (data
 * snooping, Baarda 1968; levels as he chose them, from memory).
 */
public final class Detection {

  private static final NormalDistribution NORMAL = NormalDistribution.of(0, 1);

  /** Level of the test of one normalised residual, both sides together. */
  public static final double LEVEL = 0.001;

  /** How often a blunder of the smallest size that counts as detectable is found. */
  public static final double POWER = 0.95;

  /** Past this a normalised residual is suspicious: 3.29. */
  public static final double CRITICAL = NORMAL.inverseSurvivalProbability(LEVEL / 2);

  /** Level of the global test. */
  public static final double GLOBAL_LEVEL = 0.01;

  /** Below this share of itself that shows in its residual, a measurement is checked by nothing. */
  public static final double LEAST_REDUNDANCY = 0.02;

  private Detection() {}

  /** Minimal detectable bias: sigma (critical value + quantile of the power) / sqrt(r). */
  static double smallestFound(double sigma, double redundancy) {
    return redundancy < LeastSquaresFit.UNCHECKED
        ? Double.POSITIVE_INFINITY
        : sigma * (CRITICAL + NORMAL.inverseCumulativeProbability(POWER)) / Math.sqrt(redundancy);
  }

  /**
   * How often a blunder in one observation has the largest normalised residual of two, where theirs
   * are correlated: with d its expected normalised residual, P(w1 - w2 > 0) = Phi(d sqrt((1 - c) /
   * 2)) (W. Forstner, Reliability and discernability, 1983; from memory).
   */
  public static double toldApart(double expected, double correlation) {
    double c = Math.min(1, Math.abs(correlation));
    return NORMAL.cumulativeProbability(expected * Math.sqrt((1 - c) / 2));
  }

  /**
   * The global test.
   *
   * @param chiSquare weighted sum of squared residuals
   * @param freedom redundancy of all that was weighed
   * @param probability of a sum as large or larger if every uncertainty is as stated; 1 without
   *     redundancy
   */
  public record Global(double chiSquare, double freedom, double probability) {

    static Global of(double chiSquare, double freedom) {
      double p =
          freedom < LEAST_REDUNDANCY
              ? 1
              : ChiSquaredDistribution.of(freedom).survivalProbability(chiSquare);
      return new Global(chiSquare, freedom, p);
    }

    public boolean passed() {
      return probability >= GLOBAL_LEVEL;
    }
  }
}
