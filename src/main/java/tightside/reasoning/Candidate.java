package tightside.reasoning;

import java.util.Optional;
import tightside.drive.Seen;

/**
 * A check that could be made, and what it shows in a state.
 *
 * @param shows the likely outcomes
 */
record Candidate(
    CheckKind kind,
    Optional<String> chain,
    Optional<String> shaft,
    Optional<String> to,
    Seen access,
    NextCheck.Outcome outcome,
    Shows shows) {

  /** What a check shows in a state of the drive. */
  interface Shows {
    Shown in(double[] quantities, Hypothesis hypothesis);
  }

  /**
   * An outcome that is not certain: a normal number, or one of several.
   *
   * @param chances of each of several outcomes; empty for a normal number
   */
  record Shown(double mean, double spread, double[] chances) {
    static Shown normal(double mean, double spread) {
      return new Shown(mean, spread, new double[0]);
    }

    static Shown yes(double chance) {
      return new Shown(chance, 0, new double[] {1 - chance, chance});
    }
  }
}
