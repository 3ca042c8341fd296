package tightside.engine;

/**
 * How a cam lifts its valve between closed and fully open.
 *
 * <p>Each is a rise law: the share s of the full lift at a share u of the way from opening to full
 * lift, both from 0 to 1; it closes the same way backwards. Speed is 0 at both ends. The formulas
 * are those of cam handbooks; the polynomials were read in print, the modified sine (sine quarters
 * of a short period at both ends, one of a long period between) is from memory and held to its
 * closed-form factors by a test.
 */
public enum LiftLaw {
  /** s = 10u^3 - 15u^4 + 6u^5. */
  POLYNOMIAL_345 {
    @Override
    double rise(double u) {
      return u * u * u * (10 + u * (-15 + 6 * u));
    }

    @Override
    double riseSlope(double u) {
      return 30 * u * u * (1 - u) * (1 - u);
    }
  },
  /** s = 35u^4 - 84u^5 + 70u^6 - 20u^7. */
  POLYNOMIAL_4567 {
    @Override
    double rise(double u) {
      return u * u * u * u * (35 + u * (-84 + u * (70 - 20 * u)));
    }

    @Override
    double riseSlope(double u) {
      return 140 * u * u * u * (1 - u) * (1 - u) * (1 - u);
    }
  },
  /** s = u - sin(2 pi u) / 2 pi. */
  CYCLOIDAL {
    @Override
    double rise(double u) {
      return u - Math.sin(2 * Math.PI * u) / (2 * Math.PI);
    }

    @Override
    double riseSlope(double u) {
      return 1 - Math.cos(2 * Math.PI * u);
    }
  },
  /** Sine accelerations of period 1/2 in the first and last eighth, of period 3/2 between them. */
  MODIFIED_SINE {
    @Override
    double rise(double u) {
      double sum =
          u < END || u > 1 - END
              ? (u < END ? 0 : 4) - Math.sin(4 * Math.PI * u) / 4
              : 2 - 9 * Math.sin(4 * Math.PI * u / 3 + Math.PI / 3) / 4;
      return (sum + Math.PI * u) / (Math.PI + 4);
    }

    @Override
    double riseSlope(double u) {
      double cosines =
          u < END || u > 1 - END
              ? Math.cos(4 * Math.PI * u)
              : 3 * Math.cos(4 * Math.PI * u / 3 + Math.PI / 3);
      return Math.PI * (1 - cosines) / (Math.PI + 4);
    }
  };

  private static final double END = 1.0 / 8;

  abstract double rise(double u);

  abstract double riseSlope(double u);

  /** The share of the full lift at u; 0 before it opens (u below 0), 1 past full lift. */
  public double share(double u) {
    return u <= 0 ? 0 : u >= 1 ? 1 : rise(u);
  }

  /** ds/du at u; 0 outside 0 to 1. */
  public double slope(double u) {
    return u <= 0 || u >= 1 ? 0 : riseSlope(u);
  }
}
