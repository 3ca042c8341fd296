package tightside.session;

/** An engine that turns by itself. */
public final class Play {

  private static final double NANOS_PER_SECOND = 1e9;

  private Play() {}

  /**
   * The crank angle after some time. Reckoned from where it started, so that no error gathers from
   * picture to picture.
   *
   * @param fromDegrees where the crank started
   * @param degreesPerSecond of the crank; negative turns it back
   * @param elapsedNanos since it started; a clock that went back counts as none
   * @return degrees, stopped at the ends of {@link Crank#ANGLE}
   */
  public static double angle(double fromDegrees, double degreesPerSecond, long elapsedNanos) {
    double seconds = Math.max(0, elapsedNanos) / NANOS_PER_SECOND;
    double angle = fromDegrees + degreesPerSecond * seconds;
    return Math.max(Crank.ANGLE.least(), Math.min(Crank.ANGLE.most(), angle));
  }
}
