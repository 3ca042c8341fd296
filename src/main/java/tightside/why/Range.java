package tightside.why;

import tightside.reasoning.Forced;

/**
 * The crank degrees that an axis shows.
 *
 * @param low at its beginning
 * @param high at its end
 */
record Range(double low, double high) {

  private static final double LEAST_DEGREES = 4;
  private static final double MORE = 0.35;

  /** From a little beyond nothing to a little beyond what was read, and what is near it. */
  static Range of(Forced forced, boolean across) {
    Forced.Read at = forced.read();
    double read = across ? at.x() : at.y();
    double spread = across ? at.spreadX() : at.spreadY();
    double least = Math.min(0, read - 3 * spread);
    double most = Math.max(0, read + 3 * spread);
    double reach = Math.max(LEAST_DEGREES, most - least) * MORE;
    for (Forced.Line line : forced.lines()) {
      if (line.points().size() == 1) {
        Forced.Point point = line.points().get(0);
        double there = across ? point.x() : point.y();
        least = Math.min(least, there);
        most = Math.max(most, there);
      }
    }
    return new Range(least - reach, most + reach);
  }

  /** How far along the axis, 0 to 1. */
  double share(double degrees) {
    return (degrees - low) / (high - low);
  }
}
