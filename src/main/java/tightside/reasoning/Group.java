package tightside.reasoning;

import java.util.List;

/**
 * Explanations that read alike, the most probable first.
 *
 * @param probability of all of them together
 */
public record Group(List<Weighed> members, double probability) {

  public Group {
    members = List.copyOf(members);
    if (members.isEmpty()) {
      throw new IllegalArgumentException("a group has a member");
    }
  }

  public Weighed first() {
    return members.get(0);
  }

  /** Whether it is the same group of explanations, whatever they weigh. */
  boolean same(Group other) {
    Explanation one = first().what();
    return one.cause() == Cause.SEVERAL
        ? other.first().what().cause() == Cause.SEVERAL
        : other.members.stream().anyMatch(m -> m.what().equals(one));
  }

  /** Whether every member says that the drive itself is wrong. */
  public boolean wrongWithDrive() {
    return members.stream().allMatch(m -> m.what().cause().wrongWithDrive());
  }
}
