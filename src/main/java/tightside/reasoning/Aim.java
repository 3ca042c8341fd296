package tightside.reasoning;

import java.util.Arrays;
import java.util.List;
import java.util.TreeSet;
import org.apache.commons.statistics.distribution.ContinuousDistribution;
import org.hipparchus.analysis.integration.gauss.GaussIntegrator;

/**
 * Finds where an amount can lie. Normal readings leave it near a value m within a spread s, both
 * from the slope u of what is read by the amount: m = u'r / u'u and s = 1 / sqrt(u'u), products
 * taken in spreads; panels end there, at the edges of other readings, and at quantiles of the
 * prior.
 */
final class Aim {

  /** A rule with as many points is meant for a single amount, where more panels cost little. */
  private static final int MANY_POINTS = 10;

  private final Likelihood likelihood;
  private final Gauss gauss;
  private final Curve curve;
  private final ContinuousDistribution prior;
  private final double least;
  private final double most;
  private final List<Double> priorEdges;
  private final double reach;
  private final double core;

  /**
   * @param reach how far from m the panels go, in s
   * @param core how far from m the inner panels go, in s
   */
  Aim(Likelihood likelihood, Gauss gauss, Effect effect, double reach, double core) {
    this.likelihood = likelihood;
    this.gauss = gauss;
    this.reach = reach;
    this.core = core;
    curve = effect.curve();
    prior = effect.amount().orElseThrow();
    least = prior.getSupportLowerBound();
    most = prior.getSupportUpperBound();
    priorEdges = effect.outline().edges();
  }

  /** How what is read changes by the amount, over the whole of its range. */
  double[] slope() {
    return slope(least, most);
  }

  private double[] slope(double from, double to) {
    return likelihood.slope(curve, from, to);
  }

  /**
   * Where to take the integrand.
   *
   * @param begun the quantities without this amount
   * @param variance of another amount that is still open; 0 for none
   * @param along how what is read changes by that other amount
   */
  Nodes at(double[] begun, double variance, double[] along, GaussIntegrator rule) {
    TreeSet<Double> edges = new TreeSet<>();
    double[] aimed = aim(begun, variance, along);
    double low = least;
    double high = most;
    if (aimed.length > 0) {
      double middle = aimed[0];
      double spread = aimed[1];
      low = Math.min(Math.max(least, middle - reach * spread), most);
      high = Math.max(Math.min(most, middle + reach * spread), least);
      if (high - low < spread) {
        boolean below = middle < least;
        low = below ? least : Math.max(least, most - reach * spread);
        high = below ? Math.min(most, least + reach * spread) : most;
      }
      edges.addAll(List.of(middle - core * spread, middle, middle + core * spread));
    }
    likelihood.breaks(begun, curve).forEach(edges::add);
    if (aimed.length == 0 || rule.getNumberOfPoints() >= MANY_POINTS) {
      edges.addAll(priorEdges);
    }
    return nodes(low, high, edges, rule);
  }

  private double[] aim(double[] begun, double variance, double[] along) {
    if (gauss.size() == 0) {
      return new double[0];
    }
    double[] whole = slope();
    double[] first = aim(begun, whole, (least + most) / 2, variance, along);
    if (first.length == 0) {
      return first;
    }
    double at = Math.max(least, Math.min(most, first[0]));
    double near = (most - least) / 40;
    double from = Math.max(least, at - near);
    double to = Math.min(most, at + near);
    return aim(begun, slope(from, to), at, variance, along);
  }

  private double[] aim(
      double[] begun, double[] slope, double around, double variance, double[] along) {
    double[] there = begun.clone();
    curve.addTo(there, around);
    double[] rest = likelihood.deviation(there);
    double uu = gauss.product(slope, slope);
    double ur = gauss.product(slope, rest);
    if (variance > 0) {
      double vv = gauss.product(along, along);
      double uv = gauss.product(slope, along);
      double vr = gauss.product(along, rest);
      uu -= uv * uv / (vv + 1 / variance);
      ur -= uv * vr / (vv + 1 / variance);
    }
    double width = most - least;
    if (!(uu > 1e-4 / (width * width))) {
      return new double[0];
    }
    return new double[] {around + ur / uu, 1 / Math.sqrt(uu)};
  }

  private Nodes nodes(double low, double high, TreeSet<Double> edges, GaussIntegrator rule) {
    edges.removeIf(e -> !(e > low && e < high));
    edges.add(low);
    edges.add(high);
    double[] ends = edges.stream().mapToDouble(Double::doubleValue).toArray();
    int points = rule.getNumberOfPoints();
    double[] amounts = new double[points * (ends.length - 1)];
    double[] logs = new double[amounts.length];
    for (int panel = 0; panel + 1 < ends.length; panel++) {
      double half = (ends[panel + 1] - ends[panel]) / 2;
      double middle = (ends[panel + 1] + ends[panel]) / 2;
      for (int k = 0; k < points; k++) {
        int i = panel * points + k;
        amounts[i] = middle + half * rule.getPoint(k);
        logs[i] = Math.log(half * rule.getWeight(k)) + prior.logDensity(amounts[i]);
      }
    }
    return new Nodes(Arrays.copyOf(amounts, amounts.length), logs);
  }
}
