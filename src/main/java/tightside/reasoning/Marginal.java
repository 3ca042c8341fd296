package tightside.reasoning;

import java.util.Arrays;

/**
 * What is known of a hypothesis from the readings.
 *
 * @param logEvidence log of the probability of the readings, every amount integrated
 * @param first amounts of its first effect that has one; empty where none has
 * @param second amounts of its second effect that has one
 * @param weights of the amounts, adding up to 1
 */
record Marginal(double logEvidence, double[] first, double[] second, double[] weights) {

  /** Of a hypothesis that can't matter: no more than a bound, and nothing known of its amounts. */
  static Marginal atMost(double logEvidence) {
    return new Marginal(logEvidence, new double[0], new double[0], new double[0]);
  }

  /** Mean of the first amount. */
  double mean() {
    double sum = 0;
    for (int i = 0; i < weights.length; i++) {
      sum += weights[i] * first[i];
    }
    return sum;
  }

  /** The amount below which so much of the belief lies; between nodes by straight lines. */
  double quantile(double share) {
    Integer[] order = new Integer[weights.length];
    for (int i = 0; i < order.length; i++) {
      order[i] = i;
    }
    Arrays.sort(order, (a, b) -> Double.compare(first[a], first[b]));
    double sum = 0;
    double before = first[order[0]];
    double sumBefore = 0;
    for (int i : order) {
      double middle = sum + weights[i] / 2;
      if (middle >= share) {
        double width = middle - sumBefore;
        double part = width > 0 ? (share - sumBefore) / width : 1;
        return before + Math.max(0, Math.min(1, part)) * (first[i] - before);
      }
      before = first[i];
      sumBefore = middle;
      sum += weights[i];
    }
    return first[order[order.length - 1]];
  }
}
