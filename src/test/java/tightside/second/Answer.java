package tightside.second;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * What the second solver answers.
 *
 * @param errors shaft degrees by shaft, positive = advanced
 * @param loops by name
 */
public record Answer(Map<String, Double> errors, Map<String, Looped> loops) {

  /** Of one chain. */
  public record Looped(Fit whenNew, Fit fit, double pathPitches, List<Stretch> strands) {}

  /** From one marked tooth to the next. */
  public record Stretch(
      String from, String to, double pitches, long links, OptionalDouble misfit, boolean taut) {}
}
