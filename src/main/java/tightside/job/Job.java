package tightside.job;

import java.util.Optional;
import java.util.OptionalDouble;
import tightside.drive.Limits;
import tightside.drive.Texts;

/**
 * What the user notes for the work on a drive.
 *
 * @param lockingToolPlayDegrees how far a locked camshaft can still be turned, camshaft degrees
 */
public record Job(OptionalDouble lockingToolPlayDegrees, Optional<String> note) {

  public Job {
    lockingToolPlayDegrees.ifPresent(
        play -> Limits.LOCKING_PLAY_DEGREES.refuseOutside("locking-tool-play", play));
    if (note.isPresent() && !Texts.prose(note.get())) {
      throw new IllegalArgumentException("a note has lines of printable text");
    }
  }
}
