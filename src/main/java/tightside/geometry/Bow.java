package tightside.geometry;

/** A straight run whose one end is pulled out of the chain's plane. */
public final class Bow {

  private Bow() {}

  /**
   * How much longer the run has to be: sqrt(s^2 + e^2) - s, written so that nothing cancels.
   *
   * @param spanMm of the run in its plane, mm
   * @param offsetMm of one end, square to the plane, mm
   */
  public static double extraMm(double spanMm, double offsetMm) {
    if (!(spanMm >= 0) || !(offsetMm >= 0)) {
      throw new IllegalArgumentException(
          "a span and an offset are 0 mm or more, not " + spanMm + " and " + offsetMm);
    }
    double longer = Math.hypot(spanMm, offsetMm);
    return offsetMm == 0 ? 0 : offsetMm * (offsetMm / (longer + spanMm));
  }
}
