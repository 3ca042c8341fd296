package tightside.session;

import java.util.Optional;

/**
 * A step from one snapshot to the next.
 *
 * @param name what was done, as a person would say it: "Reseat exhaust by +1"
 * @param gesture steps of the same gesture that follow each other are undone as one; none if the
 *     step stands for itself
 * @param after what it leads to
 */
public record Edit(String name, Optional<String> gesture, Snapshot after) {

  static Edit single(String name, Snapshot after) {
    return new Edit(name, Optional.empty(), after);
  }

  static Edit partOf(String gesture, String name, Snapshot after) {
    return new Edit(name, Optional.of(gesture), after);
  }
}
