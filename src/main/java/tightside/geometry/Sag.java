package tightside.geometry;

import org.apache.commons.numbers.rootfinder.BrentSolver;

/** How far the middle of a slack run leaves the straight line between its ends. */
public final class Sag {

  /** Half a circle: past this half angle no run hangs in one arc. */
  private static final double WIDEST = Math.PI / 2;

  /** The extra length, in spans, at which the arc is half a circle: pi / 2 - 1. */
  public static final double MOST_EXTRA = WIDEST - 1;

  private Sag() {}

  /**
   * The shallow closed form: an arc of chord s and height h is longer than s by 8 h^2 / 3 s, so h =
   * sqrt(3 s d / 8). It is under 2 % off the circle where the extra length is a tenth of the span.
   *
   * @param spanMm between the points that hold the run, mm
   * @param extraMm length beyond the span, mm; what is below zero sags nothing
   */
  public static double shallowMm(double spanMm, double extraMm) {
    return Math.sqrt(3 * refuseNonsense(spanMm) * Math.max(0, extraMm) / 8);
  }

  /**
   * The height of the circular arc that is longer than its chord by the extra length. With a the
   * half angle, s a / sin a = s + d, and the height is s / 2 x tan(a / 2).
   *
   * @param spanMm chord, mm
   * @param extraMm length beyond it, mm; what is below zero sags nothing
   * @throws IllegalArgumentException if the arc would be more than half a circle
   */
  public static double arcMm(double spanMm, double extraMm) {
    double span = refuseNonsense(spanMm);
    double ratio = Math.max(0, extraMm) / span;
    if (ratio > MOST_EXTRA) {
      throw new IllegalArgumentException(
          extraMm + " mm more than " + spanMm + " mm of span hangs in no shallow arc");
    }
    if (ratio == 0) {
      return 0;
    }
    double half =
        new BrentSolver(1e-14, 1e-14, 1e-16)
            .findRoot(a -> (a - Math.sin(a)) - ratio * Math.sin(a), 1e-9, WIDEST);
    return span / 2 * Math.tan(half / 2);
  }

  private static double refuseNonsense(double spanMm) {
    if (!(spanMm > 0) || Double.isInfinite(spanMm)) {
      throw new IllegalArgumentException("a span must be positive, not " + spanMm + " mm");
    }
    return spanMm;
  }
}
