package tightside.timing;

import java.util.OptionalDouble;
import tightside.drive.Chain;
import tightside.drive.Drive;

/**
 * How far shafts can still turn in their locking tools.
 *
 * @param camshaftDegrees that a camshaft can turn either way of its place; nothing if nobody said
 */
public record LockingPlay(OptionalDouble camshaftDegrees) {

  /** What a strand may lack where no play is known, mm (model format 1). */
  public static final double UNKNOWN_STRAND_MM = 0.05;

  private static final double MOST_DEGREES = 45;

  public LockingPlay {
    double degrees = camshaftDegrees.orElse(0);
    if (!(degrees >= 0 && degrees <= MOST_DEGREES)) {
      throw new IllegalArgumentException(
          "play in a locking tool lies from 0 to 45 camshaft degrees, not " + degrees);
    }
  }

  public static LockingPlay unknown() {
    return new LockingPlay(OptionalDouble.empty());
  }

  public static LockingPlay of(double camshaftDegrees) {
    return new LockingPlay(OptionalDouble.of(camshaftDegrees));
  }

  /**
   * What a strand may lack and still be laid, mm of chain: each of its ends gives its own play, and
   * a camshaft degree is the same travel of the chain at every sprocket, 2 x (driver turns per
   * crank turn) x z(driver) / 360 pitches.
   */
  public double strandMm(Drive drive, Chain chain, double pitchMm) {
    return camshaftDegrees.isEmpty()
        ? UNKNOWN_STRAND_MM
        : 2 * endMm(drive, chain, pitchMm, camshaftDegrees.getAsDouble());
  }

  private static double endMm(Drive drive, Chain chain, double pitchMm, double degrees) {
    double driverTurns = drive.gearing().perCrankTurn(chain.driver().shaft()).doubleValue();
    return degrees * 2 * driverTurns * chain.driver().teeth() / 360 * pitchMm;
  }
}
