package tightside.reasoning;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Hypotheses weighed by readings. */
final class Weighing {

  /** A pair whose belief is below the leader's by this factor, as a log, is not worked out. */
  private static final double NEGLIGIBLE = 10;

  private final List<Hypothesis> hypotheses;
  private final List<Marginal> marginals;
  private final double[] probabilities;
  private final double logAll;

  private Weighing(List<Hypothesis> hypotheses, List<Marginal> marginals, double[] priors) {
    this.hypotheses = hypotheses;
    this.marginals = marginals;
    probabilities = new double[priors.length];
    double most = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < priors.length; i++) {
      probabilities[i] = Math.log(priors[i]) + marginals.get(i).logEvidence();
      most = Math.max(most, probabilities[i]);
    }
    double sum = 0;
    for (int i = 0; i < priors.length; i++) {
      probabilities[i] = Math.exp(probabilities[i] - most);
      sum += probabilities[i];
    }
    for (int i = 0; i < priors.length; i++) {
      probabilities[i] /= sum;
    }
    logAll = most + Math.log(sum);
  }

  static Weighing of(DriveFaults faults, Evidence evidence, List<Hypothesis> hypotheses) {
    Integration integration = new Integration(Likelihood.of(faults, evidence), faults.base());
    Marginal[] marginals = new Marginal[hypotheses.size()];
    double most = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < marginals.length; i++) {
      Hypothesis hypothesis = hypotheses.get(i);
      if (hypothesis.effects().size() < 2) {
        marginals[i] = integration.of(hypothesis);
        most = Math.max(most, Math.log(hypothesis.prior()) + marginals[i].logEvidence());
      }
    }
    for (int i = 0; i < marginals.length; i++) {
      if (marginals[i] == null) {
        Hypothesis hypothesis = hypotheses.get(i);
        double bound = Math.log(hypothesis.prior()) + integration.bound(hypothesis);
        marginals[i] =
            bound < most - NEGLIGIBLE
                ? Marginal.atMost(most - 2 * NEGLIGIBLE)
                : integration.of(hypothesis);
      }
    }
    double[] priors = hypotheses.stream().mapToDouble(Hypothesis::prior).toArray();
    return new Weighing(hypotheses, List.of(marginals), priors);
  }

  /** The same evidence with the weight of one cause multiplied. */
  Weighing with(Cause cause, double times) {
    double[] priors =
        hypotheses.stream()
            .mapToDouble(h -> h.what().cause() == cause ? times * h.prior() : h.prior())
            .toArray();
    return new Weighing(hypotheses, marginals, priors);
  }

  List<Hypothesis> hypotheses() {
    return hypotheses;
  }

  Marginal marginal(int i) {
    return marginals.get(i);
  }

  double probability(int i) {
    return probabilities[i];
  }

  /** Log of the probability of the readings, over all hypotheses. */
  double logAll() {
    return logAll;
  }

  /** Every explanation, all pairs as one, the most probable first. */
  List<Weighed> weighed() {
    List<Weighed> all = new ArrayList<>();
    int best = -1;
    double prior = 0;
    double probability = 0;
    for (int i = 0; i < hypotheses.size(); i++) {
      Hypothesis hypothesis = hypotheses.get(i);
      if (hypothesis.what().cause() == Cause.SEVERAL) {
        prior += hypothesis.prior();
        probability += probabilities[i];
        best = best < 0 || probabilities[i] > probabilities[best] ? i : best;
      } else {
        all.add(
            new Weighed(
                hypothesis.what(),
                hypothesis.prior(),
                probabilities[i],
                marginals.get(i).logEvidence(),
                amount(hypothesis, marginals.get(i))));
      }
    }
    if (best >= 0) {
      double log = probability > 0 ? Math.log(probability / prior) + logAll : -1e300;
      Explanation pair = hypotheses.get(best).what();
      all.add(new Weighed(pair, prior, probability, log, Optional.empty()));
    }
    all.sort(Comparator.comparingDouble(Weighed::probability).reversed());
    return all;
  }

  private static Optional<Amount> amount(Hypothesis hypothesis, Marginal marginal) {
    Explanation.Unit unit = hypothesis.what().unit();
    return marginal.first().length == 0 || unit == Explanation.Unit.NOTHING
        ? Optional.empty()
        : Optional.of(
            new Amount(marginal.mean(), marginal.quantile(0.05), marginal.quantile(0.95), unit));
  }

  /** The groups, the most probable first. */
  static List<Group> groups(List<Weighed> weighed, Grouping grouping) {
    Map<Integer, List<Weighed>> byNumber = new TreeMap<>();
    for (Weighed one : weighed) {
      byNumber.computeIfAbsent(grouping.of(one.what()), n -> new ArrayList<>()).add(one);
    }
    return byNumber.values().stream()
        .map(m -> new Group(m, m.stream().mapToDouble(Weighed::probability).sum()))
        .sorted(Comparator.comparingDouble(Group::probability).reversed())
        .toList();
  }
}
