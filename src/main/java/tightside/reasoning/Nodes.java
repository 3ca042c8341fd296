package tightside.reasoning;

/** Amounts at which an integrand is taken, with the logs of their weights, the prior included. */
final class Nodes {

  private final double[] amounts;
  private final double[] logWeights;

  Nodes(double[] amounts, double[] logWeights) {
    this.amounts = amounts.clone();
    this.logWeights = logWeights.clone();
  }

  int size() {
    return amounts.length;
  }

  double amount(int i) {
    return amounts[i];
  }

  double logWeight(int i) {
    return logWeights[i];
  }

  double[] amounts() {
    return amounts.clone();
  }
}
