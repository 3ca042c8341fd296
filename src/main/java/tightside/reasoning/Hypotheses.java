package tightside.reasoning;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** Every explanation of a drive with its prior probability. */
final class Hypotheses {

  private Hypotheses() {}

  /** In the order of the causes; priors add up to 1. */
  static List<Hypothesis> of(DriveFaults faults, Priors priors) {
    Map<Cause, Double> shares = new EnumMap<>(Cause.class);
    faults.effects().forEach(e -> shares.merge(e.what().cause(), e.share(), Double::sum));
    List<Hypothesis> all = new ArrayList<>();
    all.add(new Hypothesis(Explanation.of(Cause.NONE), List.of(), priors.of(Cause.NONE)));
    for (Effect effect : faults.effects()) {
      Cause cause = effect.what().cause();
      double prior = priors.of(cause) * effect.share() / shares.get(cause);
      all.add(new Hypothesis(effect.what(), List.of(effect), prior));
    }
    all.addAll(pairs(faults, all, priors.of(Cause.SEVERAL)));
    all.add(new Hypothesis(Explanation.of(Cause.OTHER), List.of(), priors.of(Cause.OTHER)));
    double sum = all.stream().mapToDouble(Hypothesis::prior).sum();
    return all.stream().map(h -> h.with(h.prior() / sum)).filter(h -> h.prior() > 0).toList();
  }

  /** Pairs, their weight shared out by how often both are met. */
  private static List<Hypothesis> pairs(
      DriveFaults faults, List<Hypothesis> singles, double weight) {
    List<Hypothesis> pairs = new ArrayList<>();
    double sum = 0;
    for (int i = 0; i < singles.size(); i++) {
      for (int j = i + 1; j < singles.size(); j++) {
        Hypothesis one = singles.get(i);
        Hypothesis other = singles.get(j);
        if (one.effects().isEmpty() || other.effects().isEmpty()) {
          continue;
        }
        Effect first = one.effects().get(0);
        Effect second = other.effects().get(0);
        double both = one.prior() * other.prior();
        if (goTogether(first.what(), second.what()) && both > 0) {
          sum += both;
          pairs.add(
              new Hypothesis(
                  Explanation.both(first.what(), second.what()), List.of(first, second), both));
        }
      }
    }
    double all = sum;
    return pairs.stream().map(h -> h.with(weight * h.prior() / all)).toList();
  }

  /**
   * Which pairs are weighed: a worn chain with anything else, two sprockets one tooth off each, and
   * two camshafts whose phasers, joints or wheels are off alike. Other pairs are left to {@link
   * Cause#OTHER}.
   */
  private static boolean goTogether(Explanation one, Explanation other) {
    if (one.cause() == Cause.STRETCH) {
      return switch (other.cause()) {
        case STRETCH, PHASER, JOINT -> true;
        case RESEAT -> Math.abs(other.teeth()) == 1;
        case SENSOR -> other.manner().orElseThrow() == Explanation.Manner.TURNED;
        default -> false;
      };
    }
    if (one.cause() == Cause.RESEAT && other.cause() == Cause.RESEAT) {
      return Math.abs(one.teeth()) == 1
          && Math.abs(other.teeth()) == 1
          && !(one.chain().equals(other.chain()) && one.shaft().equals(other.shaft()));
    }
    return one.cause() == Cause.PHASER
        && other.cause() == Cause.PHASER
        && one.manner().equals(other.manner())
        && !one.shaft().equals(other.shaft());
  }
}
