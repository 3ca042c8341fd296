package tightside.validation;

import org.apache.commons.numbers.rootfinder.BrentSolver;

/**
 * The centre-distance factor of ISO 10823, found from the program's own paths: f4 = a / (p [2X -
 * (z1 + z2)]) where a is the centre distance at which the path is X pitches long. It depends on k =
 * (X - z1)/(z2 - z1) alone, but for the difference between a pitch radius and z p / 2pi, which
 * moves it by less than 1e-7 at these teeth: a small and a large sprocket, so that they stand clear
 * of each other even at the table's least k.
 */
public final class FactorF4 {

  private static final int SMALL = 12;
  private static final int LARGE = 300;
  private static final double PITCH_MM = 4;

  private FactorF4() {}

  public static double at(double k) {
    double pitches = SMALL + k * (LARGE - SMALL);
    double touching = PITCH_MM * (LARGE + SMALL) / (2 * Math.PI);
    double centre =
        new BrentSolver(1e-13, 1e-10, 1e-13)
            .findRoot(a -> excess(pitches, a), 1.005 * touching, PITCH_MM * pitches);
    return centre / (PITCH_MM * (2 * pitches - SMALL - LARGE));
  }

  private static double excess(double pitches, double centreMm) {
    return new TwoSprockets(SMALL, LARGE, PITCH_MM, centreMm).path().pitches() - pitches;
  }
}
