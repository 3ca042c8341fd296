package tightside.reasoning;

import java.util.List;
import tightside.timing.Solution;

/** All that can be wrong with one drive, worked out once. */
final class DriveFaults {

  private final Subject subject;
  private final Quantities quantities;
  private final Solution right;
  private final double[] base;
  private final List<Effect> effects;

  DriveFaults(
      Subject subject, Quantities quantities, Solution right, double[] base, List<Effect> effects) {
    this.subject = subject;
    this.quantities = quantities;
    this.right = right;
    this.base = base.clone();
    this.effects = List.copyOf(effects);
  }

  Subject subject() {
    return subject;
  }

  Quantities quantities() {
    return quantities;
  }

  Solution right() {
    return right;
  }

  List<Effect> effects() {
    return effects;
  }

  /** The quantities of a drive that is right. */
  double[] base() {
    return base.clone();
  }

  /** How a plunger moves per percent of stretch near a new chain, mm; 0 without one. */
  double plungerPerPercent(String chain) {
    int place = quantities.plunger(chain);
    return effects.stream()
        .filter(e -> e.what().cause() == Cause.STRETCH)
        .filter(e -> e.what().chain().orElseThrow().equals(chain))
        .mapToDouble(
            e -> {
              double[] change = new double[quantities.size()];
              e.curve().addTo(change, 0.1);
              return change[place] / 0.1;
            })
        .findFirst()
        .orElse(0);
  }
}
