package tightside.reasoning;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** How the engine ran while a camshaft's angle was read. */
public enum Condition {
  COLD_IDLE(0, true),
  HOT_IDLE(0.3, true),
  RAISED_SPEED(0.5, true),
  /** The phaser's valve unplugged: nothing drives it off its rest. */
  PHASER_UNPLUGGED(0, false),
  /** The phaser driven against an end stop, and read against where that stop belongs. */
  AT_STOP(0, false);

  private final double extraSpread;
  private final boolean phaserFree;

  Condition(double extraSpread, boolean phaserFree) {
    this.extraSpread = extraSpread;
    this.phaserFree = phaserFree;
  }

  /**
   * What heat and the load of speed add to the spread of a reading, crank degrees; from memory: a
   * warm block outgrows its chain, and a chain under load stretches.
   */
  double extraSpreadDegrees() {
    return extraSpread;
  }

  /** Whether a phaser that is driven off its rest shows in it; a stuck one always does. */
  boolean phaserFree() {
    return phaserFree;
  }

  /** As it is written: {@code hot-idle}. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  public static Optional<Condition> of(String word) {
    return Arrays.stream(values()).filter(c -> c.word().equals(word)).findFirst();
  }
}
