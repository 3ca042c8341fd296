package tightside.reasoning;

import java.util.List;
import org.hipparchus.analysis.integration.gauss.GaussIntegrator;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;

/**
 * The evidence of a hypothesis: its likelihood integrated over the priors of its amounts, by
 * Gauss-Legendre panels that are aimed at where readings leave the amounts.
 */
final class Integration {

  private static final GaussIntegrator FINE = new GaussIntegratorFactory().legendre(20);
  private static final GaussIntegrator COARSE = new GaussIntegratorFactory().legendre(7);

  private final Likelihood likelihood;
  private final double[] base;

  Integration(Likelihood likelihood, double[] base) {
    this.likelihood = likelihood;
    this.base = base.clone();
  }

  Marginal of(Hypothesis hypothesis) {
    Gauss gauss = likelihood.gauss(hypothesis);
    double[] fixed = hypothesis.fixedPart(base);
    List<Effect> amounts = hypothesis.amounts();
    Factor.Open open = hypothesis.open();
    if (amounts.isEmpty()) {
      double log = likelihood.log(gauss, fixed, open);
      return new Marginal(log, new double[0], new double[0], new double[0]);
    }
    return amounts.size() == 1
        ? single(gauss, fixed, amounts.get(0), open)
        : pair(gauss, fixed, amounts.get(0), amounts.get(1), open);
  }

  /**
   * About the most that the log of the evidence of a pair can be: the density where both amounts
   * are chosen best, wherever that may be, and no more of their priors than lies near there.
   */
  double bound(Hypothesis hypothesis) {
    Gauss gauss = likelihood.gauss(hypothesis);
    double[] there = hypothesis.fixedPart(base);
    List<Effect> amounts = hypothesis.amounts();
    for (Effect effect : amounts) {
      effect.curve().addTo(there, (effect.curve().least() + effect.curve().most()) / 2);
    }
    double[] rest = likelihood.deviation(there);
    double[] one = amounts.isEmpty() ? new double[rest.length] : slope(gauss, amounts.get(0));
    double[] other = amounts.size() < 2 ? new double[rest.length] : slope(gauss, amounts.get(1));
    return gauss.logBest(rest, one, other) + Math.min(0, room(gauss, amounts, one, other));
  }

  /** Log of how much of the priors the readings leave, at the most. */
  private static double room(Gauss gauss, List<Effect> amounts, double[] one, double[] other) {
    if (amounts.isEmpty()) {
      return 0;
    }
    double aa = gauss.product(one, one);
    double first = amounts.get(0).outline().peak();
    if (amounts.size() == 1) {
      return Math.log(Math.sqrt(2 * Math.PI / aa) * first);
    }
    double ab = gauss.product(one, other);
    double determinant = aa * gauss.product(other, other) - ab * ab;
    double both = first * amounts.get(1).outline().peak();
    return Math.log(2 * Math.PI / Math.sqrt(Math.max(0, determinant)) * both);
  }

  private double[] slope(Gauss gauss, Effect effect) {
    return new Aim(likelihood, gauss, effect, 6, 2.2).slope();
  }

  private Marginal single(Gauss gauss, double[] fixed, Effect effect, Factor.Open open) {
    Aim aim = new Aim(likelihood, gauss, effect, 9, 3);
    Nodes nodes = aim.at(fixed, 0, new double[0], FINE);
    double[] logs = new double[nodes.size()];
    for (int i = 0; i < logs.length; i++) {
      double[] quantities = fixed.clone();
      effect.curve().addTo(quantities, nodes.amount(i));
      logs[i] = nodes.logWeight(i) + likelihood.log(gauss, quantities, open);
    }
    return summed(logs, nodes.amounts(), new double[logs.length]);
  }

  private Marginal pair(Gauss gauss, double[] fixed, Effect one, Effect other, Factor.Open open) {
    Aim outer = new Aim(likelihood, gauss, one, 6, 2.2);
    Aim inner = new Aim(likelihood, gauss, other, 6, 2.2);
    double variance = other.outline().variance();
    Nodes first = outer.at(fixed, variance, inner.slope(), COARSE);
    if (other.outline().bell().isPresent() && likelihood.normalAlong(other.curve())) {
      NormalIntegral integral =
          new NormalIntegral(gauss, inner.slope(), other.outline().bell().orElseThrow());
      if (integral.sound()) {
        return closed(integral, fixed, one, other.curve(), first, open);
      }
    }
    Sum sum = new Sum();
    for (int i = 0; i < first.size(); i++) {
      double[] begun = fixed.clone();
      one.curve().addTo(begun, first.amount(i));
      Nodes second = inner.at(begun, 0, new double[0], COARSE);
      for (int j = 0; j < second.size(); j++) {
        double[] quantities = begun.clone();
        other.curve().addTo(quantities, second.amount(j));
        double log = likelihood.log(gauss, quantities, open);
        sum.add(first.logWeight(i) + second.logWeight(j) + log, first.amount(i), second.amount(j));
      }
    }
    return summed(sum.logs(), sum.first(), sum.second());
  }

  /** The inner integral in closed form, where readings and prior are normal in its amount. */
  private Marginal closed(
      NormalIntegral integral,
      double[] fixed,
      Effect one,
      Curve curve,
      Nodes nodes,
      Factor.Open open) {
    Sum sum = new Sum();
    for (int i = 0; i < nodes.size(); i++) {
      double[] quantities = fixed.clone();
      one.curve().addTo(quantities, nodes.amount(i));
      double log = nodes.logWeight(i) + likelihood.logFactors(quantities, open);
      curve.addTo(quantities, 0);
      integral.over(likelihood.deviation(quantities)).addTo(sum, nodes.amount(i), log);
    }
    return summed(sum.logs(), sum.first(), sum.second());
  }

  private static Marginal summed(double[] logs, double[] first, double[] second) {
    double most = Double.NEGATIVE_INFINITY;
    for (double log : logs) {
      most = Math.max(most, log);
    }
    double sum = 0;
    double[] weights = new double[logs.length];
    for (int i = 0; i < logs.length; i++) {
      weights[i] = Math.exp(logs[i] - most);
      sum += weights[i];
    }
    for (int i = 0; i < weights.length; i++) {
      weights[i] /= sum;
    }
    return new Marginal(most + Math.log(sum), first, second, weights);
  }
}
