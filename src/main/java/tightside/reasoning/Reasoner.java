package tightside.reasoning;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Weighs explanations of one drive. What can be wrong with the drive is worked out once; the
 * reasoner keeps nothing else and may be shared.
 */
public final class Reasoner {

  private final DriveFaults faults;

  private Reasoner(DriveFaults faults) {
    this.faults = faults;
  }

  public static Reasoner of(Subject subject) {
    return new Reasoner(Effects.of(subject));
  }

  public Subject subject() {
    return faults.subject();
  }

  DriveFaults faults() {
    return faults;
  }

  /**
   * The whole answer.
   *
   * @throws IllegalArgumentException if a reading names what the drive has not
   */
  public Answer explain(Evidence evidence, Priors priors, CheckPlan plan) {
    List<Hypothesis> hypotheses = Hypotheses.of(faults, priors);
    Weighing weighing = Weighing.of(faults, evidence, hypotheses);
    Grouping grouping = Grouping.of(faults, Likelihood.of(faults, evidence), hypotheses);
    List<Weighed> weighed = withFactors(evidence, hypotheses, weighing.weighed());
    List<Group> groups = Weighing.groups(weighed, grouping);
    Stability stability = stability(evidence, weighing, grouping, groups.get(0));
    List<NextCheck> checks = new Expectation(faults, evidence, weighing, plan).ranked();
    Optional<Forced> forced = Forced.of(faults, evidence, hypotheses, weighed);
    return new Answer(evidence, priors, weighed, groups, stability, checks, forced);
  }

  /** What each reading made of the belief in each explanation, in the order of the readings. */
  private List<Weighed> withFactors(
      Evidence evidence, List<Hypothesis> hypotheses, List<Weighed> weighed) {
    List<List<Weighed>> steps = new ArrayList<>();
    List<Map<Explanation, Foreseen>> foreseen = new ArrayList<>();
    Set<Explanation> told = weighed.stream().map(Weighed::what).collect(Collectors.toSet());
    for (int i = 0; i < evidence.readings().size(); i++) {
      Evidence before = evidence.first(i);
      Weighing weighing = Weighing.of(faults, before, hypotheses);
      steps.add(weighing.weighed());
      foreseen.add(foreseen(before, evidence.readings().get(i), weighing, told));
    }
    steps.add(weighed);
    return weighed.stream()
        .map(
            w ->
                w.with(
                    factors(w, steps),
                    foreseen.stream().map(f -> Optional.ofNullable(f.get(w.what()))).toList()))
        .toList();
  }

  private Map<Explanation, Foreseen> foreseen(
      Evidence before, Reading next, Weighing weighing, Set<Explanation> told) {
    Foresight foresight = new Foresight(faults, before, next);
    Map<Explanation, Foreseen> all = new HashMap<>();
    for (int i = 0; i < weighing.hypotheses().size(); i++) {
      Hypothesis hypothesis = weighing.hypotheses().get(i);
      if (told.contains(hypothesis.what())) {
        foresight
            .of(hypothesis, weighing.marginal(i))
            .ifPresent(f -> all.put(hypothesis.what(), f));
      }
    }
    return all;
  }

  private static List<Double> factors(Weighed of, List<List<Weighed>> steps) {
    List<Double> factors = new ArrayList<>();
    for (int i = 0; i + 1 < steps.size(); i++) {
      double before = probability(of, steps.get(i));
      double after = probability(of, steps.get(i + 1));
      factors.add(before > 0 ? after / before : 0);
    }
    return factors;
  }

  private static double probability(Weighed of, List<Weighed> among) {
    boolean several = of.what().cause() == Cause.SEVERAL;
    return among.stream()
        .filter(w -> several ? w.what().cause() == Cause.SEVERAL : w.what().equals(of.what()))
        .mapToDouble(Weighed::probability)
        .sum();
  }

  private Stability stability(
      Evidence evidence, Weighing weighing, Grouping grouping, Group leader) {
    List<Stability.Trial> trials = new ArrayList<>();
    for (Cause cause : Cause.values()) {
      if (weighing.hypotheses().stream().anyMatch(h -> h.what().cause() == cause)) {
        for (double times : List.of(Stability.PRIOR_TIMES, 1 / Stability.PRIOR_TIMES)) {
          trials.add(trial(cause.word(), times, weighing.with(cause, times), grouping, leader));
        }
      }
    }
    for (double times : List.of(Stability.SPREAD_TIMES, 1 / Stability.SPREAD_TIMES)) {
      Evidence other = evidence.with(evidence.spreads().times(times));
      Weighing again = Weighing.of(faults, other, weighing.hypotheses());
      trials.add(trial(Stability.SPREADS, times, again, grouping, leader));
    }
    double least = trials.stream().mapToDouble(Stability.Trial::leader).min().orElse(0);
    double most = trials.stream().mapToDouble(Stability.Trial::leader).max().orElse(1);
    return new Stability(
        Math.min(least, leader.probability()), Math.max(most, leader.probability()), trials);
  }

  private static Stability.Trial trial(
      String what, double times, Weighing weighing, Grouping grouping, Group leader) {
    List<Group> groups = Weighing.groups(weighing.weighed(), grouping);
    double then = groups.stream().filter(leader::same).mapToDouble(Group::probability).sum();
    Group leading = groups.get(0);
    return new Stability.Trial(what, times, then, leading.first().what(), !leader.same(leading));
  }
}
