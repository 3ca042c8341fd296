package tightside.engine;

/**
 * Where a valve and its piston come nearest.
 *
 * @param clearanceMm along the cylinder; at zero and below they touch, by so much
 * @param atDegrees crank degrees from top dead centre at gas exchange
 */
public record Nearest(double clearanceMm, double atDegrees) {

  public boolean contact() {
    return clearanceMm <= 0;
  }

  /** The nearer of two, the first where they are alike. */
  public static Nearest nearer(Nearest a, Nearest b) {
    return b.clearanceMm < a.clearanceMm ? b : a;
  }
}
