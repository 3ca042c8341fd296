package tightside.engine;

import tightside.drive.Limits;

/**
 * The spring that closes a valve.
 *
 * @param preloadN its force with the valve closed
 * @param rateNPerMm by which the force grows with the lift
 */
public record Spring(double preloadN, double rateNPerMm) {

  public Spring {
    Limits.SPRING_PRELOAD_N.refuseOutside("preload", preloadN);
    Limits.SPRING_RATE_N_PER_MM.refuseOutside("rate", rateNPerMm);
  }
}
