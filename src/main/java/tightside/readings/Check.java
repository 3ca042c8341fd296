package tightside.readings;

import java.util.Optional;
import tightside.drive.Seen;

/** Something that a person can do at the engine to find out how the drive was put together. */
public sealed interface Check
    permits CountStrand,
        PlungerStands,
        LockingToolGoesIn,
        SagByThumb,
        DowelMeets,
        TwoTurnsAgain,
        Compression {

  /** What is done, and how long it takes: common practice, from memory. */
  enum Kind {
    DOWEL(1),
    PLUNGER(2),
    THUMB(2),
    LOCKING_TOOL(3),
    COUNT(5),
    TWO_TURNS(10),
    COMPRESSION(40);

    private final int minutes;

    Kind(int minutes) {
      this.minutes = minutes;
    }

    int minutesFromMemory() {
      return minutes;
    }
  }

  Kind kind();

  /** What has to be seen or reached for it. */
  Seen access(Situation situation);

  /** What it shows; nothing where it can't be made then, or nobody knows. */
  Optional<Shown> shows(Situation situation, Moment moment);

  /** The smallest difference from the right reading that a person notices, in the same unit. */
  double noticeable(Situation right, Shown reading);

  /** Whether it tells a situation from the right one. */
  default boolean tells(Situation right, Situation other, Moment moment) {
    Optional<Shown> expected = shows(right, moment);
    Optional<Shown> found = shows(other, moment);
    return expected.isPresent()
        && found.isPresent()
        && expected.get().apart(found.get()) > noticeable(right, expected.get());
  }
}
