package tightside.reasoning;

import java.util.EnumMap;
import java.util.Map;

/**
 * How often each cause is met, as weights beside each other.
 *
 * @param weights every cause; 0 leaves one out
 */
public record Priors(Map<Cause, Double> weights) {

  public Priors {
    weights = Map.copyOf(weights);
    for (Cause cause : Cause.values()) {
      double weight = weights.getOrDefault(cause, -1.0);
      if (!(weight >= 0 && weight <= 1e6)) {
        throw new IllegalArgumentException("a prior weight lies from 0 to a million: " + cause);
      }
    }
    if (weights.values().stream().allMatch(w -> w == 0)) {
      throw new IllegalArgumentException("some cause must have a weight above 0");
    }
  }

  /** A guess to begin with: see {@link Cause}. */
  public static Priors usual() {
    Map<Cause, Double> weights = new EnumMap<>(Cause.class);
    for (Cause cause : Cause.values()) {
      weights.put(cause, cause.usualWeight());
    }
    return new Priors(weights);
  }

  public Priors with(Cause cause, double weight) {
    Map<Cause, Double> changed = new EnumMap<>(weights);
    changed.put(cause, weight);
    return new Priors(changed);
  }

  public double of(Cause cause) {
    return weights.get(cause);
  }
}
