package tightside.reasoning;

import java.util.Optional;
import org.apache.commons.statistics.distribution.ContinuousDistribution;

/**
 * A prior whose log density is a parabola between its ends, {@code a + b x + c x x}: truncated
 * normal, or even where b and c are 0.
 */
record Bell(double a, double b, double c, double least, double most) {

  private static final double EXACT = 1e-9;

  /** Nothing where the log density is no parabola. */
  static Optional<Bell> of(ContinuousDistribution amount) {
    double least = amount.getSupportLowerBound();
    double most = amount.getSupportUpperBound();
    double half = (most - least) / 4;
    double middle = (most + least) / 2;
    double below = amount.logDensity(middle - half);
    double at = amount.logDensity(middle);
    double above = amount.logDensity(middle + half);
    double c = (below - 2 * at + above) / (2 * half * half);
    double b = (above - below) / (2 * half) - 2 * c * middle;
    Bell bell = new Bell(at - b * middle - c * middle * middle, b, c, least, most);
    double end = amount.logDensity(most);
    double off = Math.abs(bell.logDensity(most) - end);
    return off < EXACT * (1 + Math.abs(end)) && c <= EXACT ? Optional.of(bell) : Optional.empty();
  }

  double logDensity(double x) {
    return a + b * x + c * x * x;
  }
}
