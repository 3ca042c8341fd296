package tightside.survey;

import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;

/**
 * Where an adjustment settled. Rows and residuals are in standard uncertainties of their
 * observations.
 *
 * @param unknowns the estimate
 * @param rows by observation: how it changes with each unknown
 * @param residuals observed - adjusted
 * @param covariance of the unknowns, (A'PA)^-1, for a variance factor of 1
 * @param redundancy by observation, from 0 (nothing checks it) to 1 (the others know it already):
 *     the diagonal of I - A (A'PA)^-1 A'P
 */
public record LeastSquaresFit(
    double[] unknowns,
    RealMatrix rows,
    double[] residuals,
    double[] sigmas,
    RealMatrix covariance,
    double[] redundancy) {

  /** Below this a redundancy number is rounding: nothing checks the observation. */
  public static final double UNCHECKED = 1e-4;

  static LeastSquaresFit of(
      double[] unknowns, RealMatrix rows, double[] residuals, double[] sigmas) {
    RealMatrix covariance = inverse(rows.transposeMultiply(rows));
    double[] redundancy = new double[residuals.length];
    for (int i = 0; i < residuals.length; i++) {
      redundancy[i] = Math.max(0, 1 - quadratic(covariance, rows.getRow(i), rows.getRow(i)));
    }
    return new LeastSquaresFit(unknowns, rows, residuals, sigmas, covariance, redundancy);
  }

  /** The inverse of a normal matrix, scaled to a unit diagonal first. */
  static RealMatrix inverse(RealMatrix normal) {
    int n = normal.getRowDimension();
    double[] scale = new double[n];
    for (int i = 0; i < n; i++) {
      scale[i] = 1 / Math.sqrt(normal.getEntry(i, i));
    }
    RealMatrix by = MatrixUtils.createRealDiagonalMatrix(scale);
    RealMatrix scaled = by.multiply(normal).multiply(by);
    RealMatrix inverse = new CholeskyDecomposition(scaled, 1e-9, 1e-14).getSolver().getInverse();
    return by.multiply(inverse).multiply(by);
  }

  static double quadratic(RealMatrix q, double[] a, double[] b) {
    double[] qb = q.operate(b);
    double sum = 0;
    for (int i = 0; i < a.length; i++) {
      sum += a[i] * qb[i];
    }
    return sum;
  }

  /** Residual of an observation in its own unit. */
  public double residual(int i) {
    return residuals[i] * sigmas[i];
  }

  /**
   * Residual over its own standard uncertainty, sigma sqrt(r): about normal with spread 1 where
   * nothing is wrong; 0 where nothing checks the observation.
   */
  public double normalised(int i) {
    return redundancy[i] < UNCHECKED ? 0 : residuals[i] / Math.sqrt(redundancy[i]);
  }

  /** The correlation of two normalised residuals; near 1 either may be taken for the other. */
  public double correlation(int i, int j) {
    double both = -quadratic(covariance, rows.getRow(i), rows.getRow(j));
    return i == j ? 1 : both / Math.sqrt(redundancy[i] * redundancy[j]);
  }

  /** Weighted sum of squares, v'Pv. */
  public double chiSquare() {
    double sum = 0;
    for (double v : residuals) {
      sum += v * v;
    }
    return sum;
  }

  /** Standard uncertainty of an unknown, for a variance factor of 1. */
  public double sigmaOf(int unknown) {
    return Math.sqrt(covariance.getEntry(unknown, unknown));
  }
}
