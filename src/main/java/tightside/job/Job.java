package tightside.job;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import tightside.drive.Limits;
import tightside.drive.Texts;

/**
 * What the user notes for the work on a drive.
 *
 * @param lockingToolPlayDegrees how far a locked camshaft can still be turned, camshaft degrees
 * @param figures where the figures of the bolts come from, in the user's words
 * @param order in which the bolts are taken through their steps
 * @param bolts in the order in which they are tightened
 */
public record Job(
    OptionalDouble lockingToolPlayDegrees,
    Optional<String> note,
    Optional<String> figures,
    Order order,
    List<Bolt> bolts) {

  /** How several bolts are taken through their steps. */
  public enum Order {
    /** All steps of the first bolt, then the next bolt. */
    BOLT_BY_BOLT,
    /** The first step on every bolt, then the next step on every bolt. */
    STEP_BY_STEP
  }

  public Job {
    bolts = List.copyOf(bolts);
    lockingToolPlayDegrees.ifPresent(
        play -> Limits.LOCKING_PLAY_DEGREES.refuseOutside("locking-tool-play", play));
    if (note.isPresent() && !Texts.prose(note.get())) {
      throw new IllegalArgumentException("a note has lines of printable text");
    }
    if (figures.isPresent() && !Texts.title(figures.get())) {
      throw new IllegalArgumentException("where figures come from is said on one line");
    }
    if (!bolts.isEmpty()) {
      Limits.BOLTS.refuseOutside("bolts", bolts.size());
    }
    if (bolts.stream().map(Bolt::name).distinct().count() != bolts.size()) {
      throw new IllegalArgumentException("two bolts have the same name");
    }
  }

  /** A job with no bolts. */
  public Job(OptionalDouble lockingToolPlayDegrees, Optional<String> note) {
    this(lockingToolPlayDegrees, note, Optional.empty(), Order.BOLT_BY_BOLT, List.of());
  }

  /** A job of which nothing is said. */
  public static Job unsaid() {
    return new Job(OptionalDouble.empty(), Optional.empty());
  }
}
