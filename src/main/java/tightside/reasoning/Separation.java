package tightside.reasoning;

import java.util.List;
import java.util.function.DoubleUnaryOperator;

/**
 * How far apart two hypotheses are for the readings at hand, whatever those said: the distance, in
 * spreads, of what one predicts at usual amounts from the nearest that the other can predict.
 */
final class Separation {

  /** Usual amounts, as quantiles of their prior. */
  private static final double[] USUAL = {0.2, 0.8};

  /** How finely one amount is searched, and each of two. */
  private static final Search ALONE = new Search(48, 24);

  private static final Search OF_TWO = new Search(20, 12);

  private final Likelihood likelihood;
  private final double[] base;

  Separation(Likelihood likelihood, double[] base) {
    this.likelihood = likelihood;
    this.base = base.clone();
  }

  /** The larger of the two ways, in spreads: small only where each can stand for the other. */
  double between(Hypothesis one, Hypothesis other) {
    double there = from(one, other);
    return there > 3 ? there : Math.max(there, from(other, one));
  }

  private double from(Hypothesis one, Hypothesis other) {
    if (one.amounts().isEmpty()) {
      return nearest(one.fixedPart(base), one, other);
    }
    Effect effect = one.amounts().get(0);
    double most = 0;
    for (double share : USUAL) {
      double[] at = one.fixedPart(base);
      double amount = effect.amount().orElseThrow().inverseCumulativeProbability(share);
      effect.curve().addTo(at, amount);
      most = Math.max(most, nearest(at, one, other));
    }
    return most;
  }

  /** The distance of one state from the nearest of a hypothesis, in spreads. */
  double nearest(double[] at, Hypothesis of, Hypothesis other) {
    List<Effect> amounts = other.amounts();
    double[] fixed = other.fixedPart(base);
    DoubleUnaryOperator squared =
        switch (amounts.size()) {
          case 0 -> amount -> likelihood.squaredApart(at, of, fixed, other);
          case 1 -> amount -> along(at, of, other, fixed, amounts.get(0).curve(), amount);
          default -> amount -> nearestOfTwo(at, of, other, fixed, amount);
        };
    if (amounts.isEmpty()) {
      return Math.sqrt(squared.applyAsDouble(0));
    }
    Search search = amounts.size() == 1 ? ALONE : OF_TWO;
    return Math.sqrt(search.least(amounts.get(0).curve(), squared));
  }

  private double nearestOfTwo(
      double[] at, Hypothesis of, Hypothesis other, double[] fixed, double first) {
    double[] begun = fixed.clone();
    other.amounts().get(0).curve().addTo(begun, first);
    Curve second = other.amounts().get(1).curve();
    return OF_TWO.least(second, amount -> along(at, of, other, begun, second, amount));
  }

  private double along(
      double[] at, Hypothesis of, Hypothesis other, double[] begun, Curve curve, double amount) {
    double[] there = begun.clone();
    curve.addTo(there, amount);
    return likelihood.squaredApart(at, of, there, other);
  }

  /**
   * About the least that the distance can be, in spreads: by normal readings alone, each amount
   * going straight on, however far. Quick, where many are far off.
   */
  double atLeast(double[] at, Hypothesis other) {
    double[] there = other.fixedPart(base);
    double[][] slopes = {new double[0], new double[0]};
    for (int i = 0; i < other.amounts().size(); i++) {
      Curve curve = other.amounts().get(i).curve();
      curve.addTo(there, (curve.least() + curve.most()) / 2);
      slopes[i] = likelihood.slope(curve, curve.least(), curve.most());
    }
    double[] apart = likelihood.expected(at);
    double[] predicted = likelihood.expected(there);
    for (int i = 0; i < apart.length; i++) {
      apart[i] -= predicted[i];
    }
    double[] none = new double[apart.length];
    double[] one = slopes[0].length > 0 ? slopes[0] : none;
    double[] two = slopes[1].length > 0 ? slopes[1] : none;
    return Math.sqrt(likelihood.gauss(other).leastSquared(apart, one, two));
  }

  /**
   * The least value along a curve: a row of steps, then the golden section beside the best.
   *
   * @param refinements of the golden section
   */
  private record Search(int steps, int refinements) {

    private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;

    double least(Curve curve, DoubleUnaryOperator value) {
      double best = Double.POSITIVE_INFINITY;
      double bestAmount = curve.least();
      double step = (curve.most() - curve.least()) / steps;
      for (int i = 0; i <= steps; i++) {
        double amount = curve.least() + i * step;
        double there = value.applyAsDouble(amount);
        if (there < best) {
          best = there;
          bestAmount = amount;
        }
      }
      double low = Math.max(curve.least(), bestAmount - step);
      double high = Math.min(curve.most(), bestAmount + step);
      for (int i = 0; i < refinements; i++) {
        double left = high - GOLDEN * (high - low);
        double right = low + GOLDEN * (high - low);
        if (value.applyAsDouble(left) < value.applyAsDouble(right)) {
          high = right;
        } else {
          low = left;
        }
      }
      return Math.min(best, value.applyAsDouble((low + high) / 2));
    }
  }
}
