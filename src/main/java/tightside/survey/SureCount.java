package tightside.survey;

import java.util.OptionalLong;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * How sure the count of a strand is by what was measured.
 *
 * @param pitches from mark to mark by the measurements alone, no whole number assumed; NaN where no
 *     chain can be laid
 * @param sigma their standard uncertainty, pitches
 * @param links the most probable whole number
 * @param probability that it is right
 * @param odds of every number worth weighing, that one included
 * @param counted what was counted on the engine
 */
public record SureCount(
    StrandPlan strand,
    double pitches,
    double sigma,
    long links,
    double probability,
    SortedMap<Long, Double> odds,
    OptionalLong counted) {

  public SureCount {
    odds = java.util.Collections.unmodifiableSortedMap(new TreeMap<>(odds));
  }

  /** Whether the measurements say so nearly without doubt: 99 %. */
  public boolean sure() {
    return probability >= Doubt.SURE;
  }

  /** Whether the measurements say anything of it worth having. */
  public boolean determined() {
    return !odds.isEmpty();
  }

  /** Whether what was counted and what was measured say the same. */
  public boolean agrees() {
    return counted.isPresent() && determined() && counted.getAsLong() == links;
  }

  /** Whether what was counted is as good as ruled out by what was measured. */
  public boolean contradicted() {
    return counted.isPresent()
        && determined()
        && odds.getOrDefault(counted.getAsLong(), 0.0) < 1 - Doubt.SURE;
  }
}
