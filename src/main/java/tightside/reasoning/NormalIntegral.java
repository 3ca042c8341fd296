package tightside.reasoning;

/**
 * The integral over one amount x of a normal likelihood times a prior, both of which have a
 * parabola for a logarithm. With r the deviations at x = 0 and u what x takes from them by unit,
 * products in spreads, the exponent is {@code K + B x - A x x / 2} where {@code A = u'u - 2c},
 * {@code B = u'r + b} and {@code K = a + log N(r)}; so x is normal about B / A with variance 1 / A,
 * cut off at the ends of the prior.
 */
final class NormalIntegral {

  /** Gauss and Hermite's three points: for what the amount may be, not for the integral. */
  private static final double OUTER = Math.sqrt(3);

  private static final double LOG_MIDDLE = Math.log(2.0 / 3);
  private static final double LOG_OUTER = Math.log(1.0 / 6);

  private final Gauss gauss;
  private final double[] slope;
  private final Bell prior;
  private final double precision;
  private final double spread;

  /**
   * @param slope what is read more by unit of the amount
   */
  NormalIntegral(Gauss gauss, double[] slope, Bell prior) {
    this.gauss = gauss;
    this.slope = slope.clone();
    this.prior = prior;
    precision = gauss.product(slope, slope) - 2 * prior.c();
    spread = 1 / Math.sqrt(precision);
  }

  /** Whether readings or prior hold the amount at all. */
  boolean sound() {
    double width = prior.most() - prior.least();
    return precision * width * width > 1e-4;
  }

  /**
   * The integral for one set of deviations.
   *
   * @param log its logarithm
   * @param middle where the amount then lies, before it is cut off
   */
  record Value(double log, double middle, double spread, Bell prior) {

    void addTo(Sum sum, double first, double logMore) {
      add(sum, first, middle, logMore + LOG_MIDDLE);
      add(sum, first, middle - OUTER * spread, logMore + LOG_OUTER);
      add(sum, first, middle + OUTER * spread, logMore + LOG_OUTER);
    }

    private void add(Sum sum, double first, double second, double logMore) {
      double inside = Math.max(prior.least(), Math.min(prior.most(), second));
      sum.add(log + logMore, first, inside);
    }
  }

  Value over(double[] deviations) {
    double middle = (gauss.product(slope, deviations) + prior.b()) / precision;
    double log =
        prior.a()
            + gauss.logDensity(deviations)
            + precision * middle * middle / 2
            + Math.log(spread * Math.sqrt(2 * Math.PI))
            + Normal.logBetween(
                (prior.least() - middle) / spread, (prior.most() - middle) / spread);
    return new Value(log, middle, spread, prior);
  }
}
