package tightside.reasoning;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** What kind of thing can be wrong, with the weight it has before anything is read. */
public enum Cause {
  /** Nothing: what is read is spread. */
  NONE(30),
  /** A chain grown by wear. */
  STRETCH(20),
  /** A sprocket one or more teeth off on its chain, put back so or jumped. */
  RESEAT(8),
  /** A cam phaser off its rest. */
  PHASER(15),
  /** A camshaft turned in its sprocket. */
  JOINT(4),
  /** A sensor or its wheel turned, bent or loose: a reading moves and no camshaft. */
  SENSOR(10),
  /** A tensioner that does not keep its chain tight. */
  TENSIONER(6),
  /** Guide faces worn: the chain runs nearer to its sprockets. */
  GUIDE(3),
  /** Centre distance changed: a skimmed head stands nearer to the crankshaft. */
  CENTRE(2),
  /** Two of these at once. */
  SEVERAL(4),
  /** None of these. */
  OTHER(3);

  private final double weight;

  Cause(double weight) {
    this.weight = weight;
  }

  /**
   * How often it is met among engines that come in with readings, as a weight beside the others; a
   * guess to begin with, common practice, no source.
   */
  double usualWeight() {
    return weight;
  }

  /** As it is written on the command line and in answers for programs. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  public static Optional<Cause> of(String word) {
    return Arrays.stream(values()).filter(c -> c.word().equals(word)).findFirst();
  }

  /** Whether it says that the drive itself is wrong, and not only what was read of it. */
  public boolean wrongWithDrive() {
    return this != NONE && this != SENSOR && this != OTHER;
  }
}
