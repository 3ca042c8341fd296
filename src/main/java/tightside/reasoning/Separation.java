package tightside.reasoning;

/**
 * How far apart two hypotheses are for the readings at hand, whatever those said: the distance, in
 * spreads, of what one predicts at usual amounts from the nearest that the other can predict.
 */
final class Separation {

  /** Usual amounts, as quantiles of their prior. */
  private static final double[] USUAL = {0.2, 0.8};

  private static final int STEPS = 48;
  private static final int REFINEMENTS = 24;
  private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;

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
    if (other.amounts().isEmpty()) {
      return Math.sqrt(likelihood.squaredApart(at, of, other.fixedPart(base), other));
    }
    Curve curve = other.amounts().get(0).curve();
    double[] fixed = other.fixedPart(base);
    double best = Double.POSITIVE_INFINITY;
    double bestAmount = curve.least();
    double step = (curve.most() - curve.least()) / STEPS;
    for (int i = 0; i <= STEPS; i++) {
      double amount = curve.least() + i * step;
      double apart = apart(at, of, other, fixed, curve, amount);
      if (apart < best) {
        best = apart;
        bestAmount = amount;
      }
    }
    double low = Math.max(curve.least(), bestAmount - step);
    double high = Math.min(curve.most(), bestAmount + step);
    for (int i = 0; i < REFINEMENTS; i++) {
      double left = high - GOLDEN * (high - low);
      double right = low + GOLDEN * (high - low);
      if (apart(at, of, other, fixed, curve, left) < apart(at, of, other, fixed, curve, right)) {
        high = right;
      } else {
        low = left;
      }
    }
    return Math.sqrt(Math.min(best, apart(at, of, other, fixed, curve, (low + high) / 2)));
  }

  private double apart(
      double[] at, Hypothesis of, Hypothesis other, double[] fixed, Curve curve, double amount) {
    double[] there = fixed.clone();
    curve.addTo(there, amount);
    return likelihood.squaredApart(at, of, there, other);
  }
}
