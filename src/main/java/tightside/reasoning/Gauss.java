package tightside.reasoning;

import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.RealMatrix;

/** Deviations that are normal and hang together by a covariance. */
final class Gauss {

  private static final double LOG_TWO_PI = Math.log(2 * Math.PI);

  private final int size;
  private final double[][] whiten;
  private final double[][] inverse;
  private final double logScale;

  /**
   * @param covariance symmetric, positive definite
   */
  Gauss(double[][] covariance) {
    size = covariance.length;
    if (size == 0) {
      whiten = new double[0][0];
      inverse = new double[0][0];
      logScale = 0;
      return;
    }
    CholeskyDecomposition factors =
        new CholeskyDecomposition(new Array2DRowRealMatrix(covariance), 1e-10, 1e-14);
    RealMatrix lower = factors.getL();
    inverse = factors.getSolver().getInverse().getData();
    double log = 0;
    for (int i = 0; i < size; i++) {
      log += Math.log(lower.getEntry(i, i));
    }
    logScale = -log - size * LOG_TWO_PI / 2;
    whiten = inverseOfLower(lower.getData());
  }

  private static double[][] inverseOfLower(double[][] lower) {
    int n = lower.length;
    double[][] inverse = new double[n][n];
    for (int column = 0; column < n; column++) {
      for (int i = column; i < n; i++) {
        double sum = i == column ? 1 : 0;
        for (int k = column; k < i; k++) {
          sum -= lower[i][k] * inverse[k][column];
        }
        inverse[i][column] = sum / lower[i][i];
      }
    }
    return inverse;
  }

  /** Log of the density at a deviation. */
  double logDensity(double[] deviation) {
    return logScale - squared(deviation) / 2;
  }

  /** The squared distance of a deviation from nothing, in spreads. */
  double squared(double[] deviation) {
    double sum = 0;
    for (int i = 0; i < size; i++) {
      double white = 0;
      double[] row = whiten[i];
      for (int j = 0; j <= i; j++) {
        white += row[j] * deviation[j];
      }
      sum += white * white;
    }
    return sum;
  }

  /** One direction's product with another, in spreads. */
  double product(double[] one, double[] other) {
    double sum = 0;
    for (int i = 0; i < size; i++) {
      for (int j = 0; j < size; j++) {
        sum += one[i] * inverse[i][j] * other[j];
      }
    }
    return sum;
  }

  /** Log of the greatest density that a deviation can be brought to along two directions. */
  double logBest(double[] deviation, double[] one, double[] other) {
    return logScale - leastSquared(deviation, one, other) / 2;
  }

  /**
   * The least squared distance, in spreads, that a deviation can be brought to along two
   * directions; a direction of zeros brings nothing.
   */
  double leastSquared(double[] deviation, double[] one, double[] other) {
    double aa = product(one, one);
    double bb = product(other, other);
    double ab = product(one, other);
    double ar = product(one, deviation);
    double br = product(other, deviation);
    double determinant = aa * bb - ab * ab;
    double gained;
    if (determinant > 1e-9 * aa * bb) {
      gained = (bb * ar * ar - 2 * ab * ar * br + aa * br * br) / determinant;
    } else {
      double alongOne = aa > 0 ? ar * ar / aa : 0;
      double alongOther = bb > 0 ? br * br / bb : 0;
      gained = Math.max(alongOne, alongOther);
    }
    return Math.max(0, squared(deviation) - gained);
  }

  int size() {
    return size;
  }
}
