package tightside.reasoning;

/**
 * How far readings stray, beside the spread that each names for itself.
 *
 * @param sensorDegrees what all readings of one sensor have in common, crank degrees: where its
 *     wheel and the camshaft were fitted; standard deviation
 * @param learnedDegrees what a learned value may have hidden when it was learned, crank degrees;
 *     standard deviation
 * @param plungerMm how soft the ends of a plunger's interval are; pins that walk on their polygons
 *     move it by 0.2 mm
 * @param newChainPercent how a new chain's length strays, seen by the plunger; ISO 606 allows 0 to
 *     0.15 %, evenly spread a standard deviation of 0.043
 * @param toolDegrees how soft the ends of a locking tool's play are, degrees of the shaft
 * @param factor by which all of these and the spread of each reading are multiplied
 */
public record Spreads(
    double sensorDegrees,
    double learnedDegrees,
    double plungerMm,
    double newChainPercent,
    double toolDegrees,
    double factor) {

  /** A plunger is never read to better than this, mm: pins walk (model format 1). */
  public static final double PLUNGER_BEST_MM = 0.2;

  public Spreads {
    for (double spread :
        new double[] {sensorDegrees, learnedDegrees, newChainPercent, toolDegrees, factor}) {
      if (!(spread > 0 && spread <= 100)) {
        throw new IllegalArgumentException("a spread lies above 0, up to 100, not " + spread);
      }
    }
    if (!(plungerMm >= PLUNGER_BEST_MM && plungerMm <= 20)) {
      throw new IllegalArgumentException("a plunger is read to 0.2 mm at best");
    }
  }

  /** Common practice, from memory, but for what a new chain's length may be. */
  public static Spreads usual() {
    return new Spreads(0.5, 5, PLUNGER_BEST_MM, 0.043, 0.1, 1);
  }

  public Spreads times(double more) {
    return new Spreads(
        sensorDegrees, learnedDegrees, plungerMm, newChainPercent, toolDegrees, factor * more);
  }

  public Spreads withSensor(double degrees) {
    return new Spreads(degrees, learnedDegrees, plungerMm, newChainPercent, toolDegrees, factor);
  }
}
