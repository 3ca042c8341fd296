package tightside.reasoning;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Which explanations read alike on a drive with the readings at hand. It depends on what was read,
 * and how well, but not on what the readings said, so that percentages are never told apart by
 * readings that can't tell them apart.
 */
public final class Grouping {

  /** Below this separation, in spreads, two explanations read alike. */
  public static final double ALIKE = 3;

  private final Map<Explanation, Integer> groups;

  private Grouping(Map<Explanation, Integer> groups) {
    this.groups = Map.copyOf(groups);
  }

  /** Every two members of a group read alike; what comes first in the order of causes leads. */
  static Grouping of(DriveFaults faults, Likelihood likelihood, List<Hypothesis> hypotheses) {
    Separation separation = new Separation(likelihood, faults.base());
    Map<Explanation, Integer> groups = new HashMap<>();
    List<List<Hypothesis>> members = new ArrayList<>();
    for (Hypothesis hypothesis : hypotheses) {
      if (hypothesis.what().cause() == Cause.SEVERAL) {
        continue;
      }
      int group = 0;
      while (group < members.size() && !fits(separation, members.get(group), hypothesis)) {
        group++;
      }
      if (group == members.size()) {
        members.add(new ArrayList<>());
      }
      members.get(group).add(hypothesis);
      groups.put(hypothesis.what(), group);
    }
    return new Grouping(groups);
  }

  private static boolean fits(
      Separation separation, List<Hypothesis> members, Hypothesis hypothesis) {
    if (hypothesis.what().cause() == Cause.OTHER) {
      return false;
    }
    return members.stream().allMatch(m -> separation.between(m, hypothesis) < ALIKE);
  }

  /** The number of an explanation's group; all pairs are one of their own. */
  int of(Explanation explanation) {
    return groups.getOrDefault(explanation, -1);
  }
}
