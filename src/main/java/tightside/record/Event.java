package tightside.record;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import tightside.drive.Seen;

/** One thing that happened in a job. */
public sealed interface Event {

  Instant at();

  /** A step was answered, anew if it had an answer before. */
  record Entered(Instant at, String step, Answer answer) implements Event {}

  /**
   * An answer was taken back.
   *
   * @param standing the earlier answer that counts again
   */
  record TakenBack(Instant at, String step, Answer answer, Optional<Answer> standing)
      implements Event {}

  /** Something stands in a step's field and is not entered; empty where it was deleted. */
  record Typed(Instant at, String step, String text) implements Event {}

  /** The note of the job reads so from here on. */
  record Noted(Instant at, String text) implements Event {}

  /** What can be seen from here on. */
  record Access(Instant at, Seen access) implements Event {}

  /** The work was stopped, by a card. */
  record Stopped(Instant at, String card) implements Event {}

  /** The stop card was put away. */
  record WentOn(Instant at, String card) implements Event {}

  /**
   * @param leftOpen the steps that were not done, as they were shown
   */
  record Finished(Instant at, List<String> leftOpen) implements Event {

    public Finished {
      leftOpen = List.copyOf(leftOpen);
    }
  }

  /** The drive was drawn otherwise: the job goes on with another model. */
  record Remodelled(Instant at, ModelText model) implements Event {}

  /** A finished job was taken up again. */
  record Reopened(Instant at) implements Event {}

  /** What was found wrong with the file that this record was read from. */
  record Damage(Instant at, String sentence) implements Event {}
}
