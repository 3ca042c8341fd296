package tightside.reasoning;

import java.util.List;

/**
 * How far the answer moves when what was taken for granted changes.
 *
 * @param least the least probability of the leading group in any of the trials
 * @param most the most
 * @param trials all of them
 */
public record Stability(double least, double most, List<Trial> trials) {

  /** How much a prior weight is changed, either way. */
  public static final double PRIOR_TIMES = 3;

  /** How much all spreads are changed, either way. */
  public static final double SPREAD_TIMES = 2;

  /**
   * One change.
   *
   * @param what whose weight was changed; SPREADS for all spreads
   * @param times by how much
   * @param leader the probability of what led before
   * @param leading what leads now
   * @param changed whether that is another group
   */
  public record Trial(
      String what, double times, double leader, Explanation leading, boolean changed) {}

  /** The name of the trials that change spreads. */
  public static final String SPREADS = "spreads";

  public Stability {
    trials = List.copyOf(trials);
  }

  /** Whether some change puts another group first. */
  public boolean undecided() {
    return trials.stream().anyMatch(Trial::changed);
  }
}
