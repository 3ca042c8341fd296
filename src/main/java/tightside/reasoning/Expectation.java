package tightside.reasoning;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;

/**
 * What checks are expected to decide: by how many bits the outcome lessens the doubt about which
 * explanation is right (the mutual information of explanation and outcome; D. MacKay, Information
 * Theory, Inference, and Learning Algorithms, chapters 2 and 8).
 */
final class Expectation {

  /** A jump more probable than this is suspected. */
  static final double SUSPECTED = 0.05;

  /** Cheap causes come first where they decide at least this much, bits. */
  private static final double CHEAP_BITS = 0.02;

  private static final int STATES = 40;
  private static final double LEAST_PROBABILITY = 0.003;
  private static final double LEAST_SHOWN = 0.02;
  private static final int SHOWN = 5;
  private static final double NINETY = 1.645;

  private final DriveFaults faults;
  private final Evidence evidence;
  private final CheckPlan plan;
  private final List<Believed> believed;
  private final boolean jumpSuspected;

  Expectation(DriveFaults faults, Evidence evidence, Weighing weighing, CheckPlan plan) {
    this.faults = faults;
    this.evidence = evidence;
    this.plan = plan;
    believed = new ArrayList<>();
    double jumped = 0;
    for (int i = 0; i < weighing.hypotheses().size(); i++) {
      Hypothesis hypothesis = weighing.hypotheses().get(i);
      double probability = weighing.probability(i);
      jumped += hypothesis.what().jumped() ? probability : 0;
      if (probability > LEAST_PROBABILITY) {
        believed.add(
            new Believed(
                hypothesis,
                place(hypothesis.what()),
                probability,
                States.of(hypothesis, weighing.marginal(i), faults.base(), STATES)));
      }
    }
    jumpSuspected = jumped > SUSPECTED;
  }

  /**
   * What would be mended, and where: explanations that lead to the same work are not told apart,
   * all pairs are one.
   */
  private static String place(Explanation what) {
    boolean manner = what.cause() == Cause.PHASER;
    return what.cause() == Cause.SEVERAL
        ? what.cause().word()
        : what.cause().word()
            + what.chain()
            + what.shaft()
            + what.teeth()
            + (manner ? what.manner() : "");
  }

  /** A hypothesis with the states that it may stand for. */
  private record Believed(
      Hypothesis hypothesis, String place, double probability, List<double[]> states) {}

  /** What decides most per minute first, cheap causes before all, what has to wait last. */
  List<NextCheck> ranked() {
    List<NextCheck> checks = new ArrayList<>();
    for (Candidate candidate : Candidates.of(faults, evidence)) {
      if (plan.minutes().containsKey(candidate.kind()) && plan.canSee(candidate.access())) {
        checks.add(check(candidate));
      }
    }
    checks.sort(
        Comparator.comparing(NextCheck::held)
            .thenComparing(c -> !(c.kind().cheap() && c.bits() >= CHEAP_BITS))
            .thenComparing(Comparator.comparingDouble(NextCheck::bitsPerMinute).reversed()));
    return checks;
  }

  private boolean waits(CheckKind kind) {
    boolean turned =
        plan.turnedByHand()
            || evidence.readings().stream().anyMatch(r -> r instanceof Reading.MarkStands);
    return kind.turnsByPower() && jumpSuspected && !turned;
  }

  private NextCheck check(Candidate candidate) {
    List<List<Candidate.Shown>> shown = new ArrayList<>();
    for (Believed one : believed) {
      shown.add(one.states().stream().map(q -> candidate.shows().in(q, one.hypothesis())).toList());
    }
    return new NextCheck(
        candidate.kind(),
        candidate.chain(),
        candidate.shaft(),
        candidate.to(),
        candidate.access(),
        plan.minutes().get(candidate.kind()),
        plan.openingMinutes(candidate.access()),
        bits(shown),
        waits(candidate.kind()),
        expects(candidate, shown));
  }

  private double bits(List<List<Candidate.Shown>> shown) {
    Outcomes outcomes = Outcomes.of(shown);
    Map<String, double[]> byPlace = new TreeMap<>();
    for (int i = 0; i < believed.size(); i++) {
      double[] joint = byPlace.computeIfAbsent(believed.get(i).place(), p -> outcomes.empty());
      for (Candidate.Shown one : shown.get(i)) {
        outcomes.addTo(joint, one, believed.get(i).probability() / shown.get(i).size());
      }
    }
    return Outcomes.mutualBits(byPlace.values());
  }

  private List<NextCheck.Expect> expects(Candidate candidate, List<List<Candidate.Shown>> shown) {
    Map<String, Integer> foremost = new TreeMap<>();
    Map<String, Double> sums = new TreeMap<>();
    for (int i = 0; i < believed.size(); i++) {
      String place = believed.get(i).place();
      double probability = believed.get(i).probability();
      sums.merge(place, probability, Double::sum);
      int at = i;
      foremost.merge(
          place,
          at,
          (a, b) -> believed.get(a).probability() >= believed.get(b).probability() ? a : b);
    }
    return foremost.entrySet().stream()
        .filter(e -> sums.get(e.getKey()) > LEAST_SHOWN)
        .sorted(Comparator.comparingDouble(e -> -sums.get(e.getKey())))
        .limit(SHOWN)
        .map(
            e ->
                expect(
                    believed.get(e.getValue()).hypothesis().what(),
                    candidate.outcome(),
                    shown.get(e.getValue())))
        .toList();
  }

  private static NextCheck.Expect expect(
      Explanation what, NextCheck.Outcome outcome, List<Candidate.Shown> shown) {
    double[] chances = new double[shown.get(0).chances().length];
    double mean = 0;
    double square = 0;
    for (Candidate.Shown one : shown) {
      for (int i = 0; i < chances.length; i++) {
        chances[i] += one.chances()[i] / shown.size();
      }
      mean += one.mean() / shown.size();
      square += (one.mean() * one.mean() + one.spread() * one.spread()) / shown.size();
    }
    if (chances.length == 0) {
      double spread = Math.sqrt(Math.max(0, square - mean * mean));
      return new NextCheck.Expect(
          what,
          outcome,
          OptionalDouble.of(mean - NINETY * spread),
          OptionalDouble.of(mean + NINETY * spread),
          OptionalDouble.empty());
    }
    if (outcome != NextCheck.Outcome.LINKS) {
      return new NextCheck.Expect(
          what,
          outcome,
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          OptionalDouble.of(chances[1]));
    }
    int best = 0;
    for (int i = 1; i < chances.length; i++) {
      best = chances[i] > chances[best] ? i : best;
    }
    return new NextCheck.Expect(
        what,
        outcome,
        OptionalDouble.of(mean + best),
        OptionalDouble.empty(),
        OptionalDouble.of(chances[best]));
  }
}
