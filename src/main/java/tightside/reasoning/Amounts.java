package tightside.reasoning;

import java.util.Optional;
import org.apache.commons.statistics.distribution.ContinuousDistribution;
import org.apache.commons.statistics.distribution.TruncatedNormalDistribution;
import org.apache.commons.statistics.distribution.UniformContinuousDistribution;
import tightside.engine.Phaser;

/**
 * How the amount of each cause is spread before anything is read: guesses, common practice, no
 * source, and the same for every drive but where its model says better.
 */
final class Amounts {

  /** What no stretch may pass, percent; and where a chain's table ends. */
  static final double MOST_STRETCH = 2;

  /** The deepest wear of guide faces, mm. */
  static final double MOST_GUIDE_MM = 3;

  /** The most that a head comes nearer to the crankshaft, mm. */
  static final double MOST_CENTRE_MM = 1;

  /** A camshaft under {@link Cause#OTHER}, crank degrees either way; standard deviation. */
  static final double OTHER_DEGREES = 12;

  /** An edge of a bent wheel, crank degrees; standard deviation. */
  static final double BENT_DEGREES = 3;

  private Amounts() {}

  /**
   * Percent. It begins at 0.1, near what ISO 606 allows a new chain: less is no wear to speak of.
   */
  static ContinuousDistribution stretch(double most) {
    return TruncatedNormalDistribution.of(0, 0.5, 0.1, most);
  }

  /** How far a phaser can stand off its rest, crank degrees; wide where the model says nothing. */
  static ContinuousDistribution phaser(Optional<Phaser> phaser) {
    if (phaser.isEmpty()) {
      return UniformContinuousDistribution.of(-40, 40);
    }
    double least = 2 * phaser.get().leastDegrees();
    return UniformContinuousDistribution.of(least, least + 2 * phaser.get().travelDegrees());
  }

  /** Crank degrees. */
  static ContinuousDistribution joint() {
    return TruncatedNormalDistribution.of(0, 12, -40, 40);
  }

  /** Crank degrees. */
  static ContinuousDistribution sensor() {
    return TruncatedNormalDistribution.of(0, 8, -40, 40);
  }

  /** How far a slack chain lets its camshafts swing together, crank degrees. */
  static ContinuousDistribution swing() {
    return TruncatedNormalDistribution.of(0, 2.5, -10, 10);
  }

  /** Depth of wear of every face on the chain, mm. */
  static ContinuousDistribution guide(double most) {
    return TruncatedNormalDistribution.of(0.8, 0.6, 0.1, most);
  }

  /** By how much the head stands nearer, mm. */
  static ContinuousDistribution centre(double most) {
    return TruncatedNormalDistribution.of(0.3, 0.2, 0.05, most);
  }
}
