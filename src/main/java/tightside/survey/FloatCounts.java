package tightside.survey;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.RealMatrix;

/**
 * The taut strands of a chain in pitches, as real numbers, before any is taken to be whole.
 *
 * @param strands the taut ones that the measurements say anything of
 * @param pitches from mark to mark
 * @param slopes by strand: pitches per unit of each unknown
 * @param covariance of the pitches, bends included
 */
record FloatCounts(
    List<StrandPlan> strands, double[] pitches, RealMatrix slopes, RealMatrix covariance) {

  /** Past this spread a count is anybody's guess, pitches. */
  static final double ANYBODYS_GUESS = 1.2;

  /** The spread of a strand's pitches. */
  double sigma(int strand) {
    return Math.sqrt(covariance.getEntry(strand, strand));
  }

  static FloatCounts of(Unknowns unknowns, LeastSquaresFit fit, List<StrandPlan> strands) {
    double[] at = fit.unknowns();
    int k = strands.size();
    double[] pitches = pitches(unknowns, at, strands);
    double[][] slopes = new double[k][at.length];
    for (int j = 0; j < at.length; j++) {
      double step = unknowns.all().get(j).step();
      double[] difference = difference(unknowns, at, j, step, strands);
      for (int i = 0; i < k; i++) {
        slopes[i][j] = difference[i] / (2 * step);
      }
    }
    RealMatrix slope = new Array2DRowRealMatrix(slopes, false);
    return new FloatCounts(strands, pitches, slope, spread(unknowns, fit, strands, pitches, slope));
  }

  private static double[] difference(
      Unknowns unknowns, double[] at, int j, double step, List<StrandPlan> strands) {
    double[] moved = at.clone();
    moved[j] = at[j] + step;
    double[] ahead = pitches(unknowns, moved, strands);
    moved[j] = at[j] - step;
    double[] behind = pitches(unknowns, moved, strands);
    double[] difference = new double[strands.size()];
    for (int i = 0; i < difference.length; i++) {
      difference[i] = ahead[i] - behind[i];
    }
    return difference;
  }

  static double[] pitches(Unknowns unknowns, double[] at, List<StrandPlan> strands) {
    Site site = unknowns.at(at);
    double[] pitches = new double[strands.size()];
    java.util.Map<String, java.util.Optional<SiteChain>> paths = new java.util.HashMap<>();
    for (int i = 0; i < pitches.length; i++) {
      StrandPlan strand = strands.get(i);
      pitches[i] =
          paths
              .computeIfAbsent(strand.chain(), site::path)
              .map(p -> p.pitches(strand))
              .orElse(Double.NaN);
    }
    return pitches;
  }

  /**
   * The covariance by divided differences along the columns s of a square root of the unknowns'
   * covariance: with f(+), f(-) a standard uncertainty either way, sum of ((f(+) - f(-)) / 2)^2 and
   * of ((f(+) + f(-)) / 2 - f)^2 / 2. It sees a face that touches within a standard uncertainty,
   * where slopes at a point do not (Norgaard, Poulsen, Ravn, Automatica 36, 2000; from memory).
   */
  private static RealMatrix spread(
      Unknowns unknowns,
      LeastSquaresFit fit,
      List<StrandPlan> strands,
      double[] middle,
      RealMatrix slopes) {
    int k = strands.size();
    RealMatrix sum = new Array2DRowRealMatrix(Math.max(1, k), Math.max(1, k));
    RealMatrix root = new CholeskyDecomposition(fit.covariance(), 1e-6, 0).getL();
    for (int j = 0; j < root.getColumnDimension(); j++) {
      double[] column = root.getColumn(j);
      double[] straight = slopes.operate(column);
      if (negligible(straight)) {
        continue;
      }
      double[] ahead = pitches(unknowns, moved(fit.unknowns(), column, 1), strands);
      double[] behind = pitches(unknowns, moved(fit.unknowns(), column, -1), strands);
      for (int a = 0; a < k; a++) {
        for (int b = 0; b < k; b++) {
          sum.addToEntry(
              a,
              b,
              secant(ahead, behind, straight, a) * secant(ahead, behind, straight, b)
                  + bend(ahead, behind, middle, a) * bend(ahead, behind, middle, b) / 2);
        }
      }
    }
    for (int a = 0; a < k; a++) {
      sum.addToEntry(a, a, 1e-8);
    }
    return sum;
  }

  private static boolean negligible(double[] change) {
    for (double c : change) {
      if (Math.abs(c) > 1e-7) {
        return false;
      }
    }
    return true;
  }

  private static double[] moved(double[] at, double[] column, int sign) {
    double[] moved = at.clone();
    for (int i = 0; i < moved.length; i++) {
      moved[i] += sign * column[i];
    }
    return moved;
  }

  private static boolean near(double[] ahead, double[] behind, double[] straight, int i) {
    return Math.abs(straight[i]) < ANYBODYS_GUESS
        && !Double.isNaN(ahead[i])
        && !Double.isNaN(behind[i]);
  }

  private static double secant(double[] ahead, double[] behind, double[] straight, int i) {
    return near(ahead, behind, straight, i) ? (ahead[i] - behind[i]) / 2 : straight[i];
  }

  private static double bend(double[] ahead, double[] behind, double[] middle, int i) {
    double bend = (ahead[i] + behind[i]) / 2 - middle[i];
    return Double.isNaN(bend) || Math.abs(bend) > ANYBODYS_GUESS ? 0 : bend;
  }

  /** The strands that the measurements say something of, and no others. */
  List<Integer> determined() {
    List<Integer> some = new ArrayList<>();
    for (int i = 0; i < strands.size(); i++) {
      if (!Double.isNaN(pitches[i]) && sigma(i) < ANYBODYS_GUESS) {
        some.add(i);
      }
    }
    return some;
  }
}
