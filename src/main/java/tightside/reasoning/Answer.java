package tightside.reasoning;

import java.util.List;
import java.util.Optional;

/**
 * What readings say of a drive.
 *
 * @param explanations every one, the most probable first
 * @param groups of explanations that read alike, the most probable first
 * @param stability how far the answer moves
 * @param checks what could be done next, what decides most for its time first
 * @param forced what explanations force on the camshafts; nothing where none was read
 */
public record Answer(
    Evidence evidence,
    Priors priors,
    List<Weighed> explanations,
    List<Group> groups,
    Stability stability,
    List<NextCheck> checks,
    Optional<Forced> forced) {

  public Answer {
    explanations = List.copyOf(explanations);
    groups = List.copyOf(groups);
    checks = List.copyOf(checks);
  }

  public Group leader() {
    return groups.get(0);
  }

  /**
   * Whether the readings settle it: no change of priors or spreads puts another group first, and
   * they tell the leading group from most others.
   */
  public boolean decided() {
    return tellsApart() && !stability.undecided();
  }

  /** Whether the readings tell the leading group from at least half of all explanations. */
  public boolean tellsApart() {
    return 2 * leader().members().size() <= explanations.size();
  }

  /** The number of the group that an explanation belongs to, from 0. */
  public int groupOf(Weighed explanation) {
    for (int i = 0; i < groups.size(); i++) {
      if (groups.get(i).members().contains(explanation)) {
        return i;
      }
    }
    throw new IllegalArgumentException("no explanation of this answer");
  }
}
