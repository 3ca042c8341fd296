package tightside.reasoning;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;

/**
 * An explanation that is weighed.
 *
 * @param effects none for "nothing" and "none of these", one, or two at once
 * @param prior probability before anything is read
 * @param open what it leaves open
 */
record Hypothesis(Explanation what, List<Effect> effects, double prior, Factor.Open open) {

  Hypothesis {
    effects = List.copyOf(effects);
  }

  OptionalInt bent() {
    for (Effect effect : effects) {
      if (effect.bent().isPresent()) {
        return effect.bent();
      }
    }
    return OptionalInt.empty();
  }

  Hypothesis(Explanation what, List<Effect> effects, double prior) {
    this(what, effects, prior, open(what, effects));
  }

  private static Factor.Open open(Explanation what, List<Effect> effects) {
    Map<Cheap, Double> found = new EnumMap<>(Cheap.class);
    for (Cheap cheap : Cheap.values()) {
      found.put(cheap, cheap.foundUnder(what));
    }
    int freed =
        effects.stream()
            .filter(e -> e.freed().isPresent())
            .mapToInt(e -> e.freed().getAsInt())
            .findFirst()
            .orElse(-1);
    return new Factor.Open(freed, what.cause() == Cause.OTHER, found);
  }

  /** The effects that have an amount. */
  List<Effect> amounts() {
    return effects.stream().filter(e -> !e.fixed()).toList();
  }

  /** The quantities with every effect that has no amount. */
  double[] fixedPart(double[] base) {
    double[] quantities = base.clone();
    effects.stream().filter(Effect::fixed).forEach(e -> e.curve().addTo(quantities, 0));
    return quantities;
  }

  Hypothesis with(double otherPrior) {
    return new Hypothesis(what, effects, otherPrior, open);
  }
}
