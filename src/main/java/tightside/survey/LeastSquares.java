package tightside.survey;

import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresBuilder;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresOptimizer.Optimum;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LevenbergMarquardtOptimizer;
import org.hipparchus.optim.nonlinear.vector.leastsquares.ValueAndJacobianFunction;
import org.hipparchus.util.Pair;

/**
 * Weighted least squares by Hipparchus's Levenberg-Marquardt optimizer. All is divided by the
 * standard uncertainties first, so that every equation has weight 1.
 */
public final class LeastSquares {

  private static final int MOST_STEPS = 200;

  private LeastSquares() {}

  /** What would be observed for given unknowns. */
  @FunctionalInterface
  public interface Model {
    double[] valuesAt(double[] unknowns);

    /**
     * The same but for observations that one unknown does not bear on, which may be anything that
     * does not depend on it.
     */
    default double[] valuesAt(double[] unknowns, int moved) {
      return valuesAt(unknowns);
    }
  }

  /**
   * The adjustment.
   *
   * @param sigmas standard uncertainties of the observations
   * @param steps by unknown: half the width over which the model is differentiated
   * @throws org.hipparchus.exception.MathIllegalStateException if it does not settle
   * @throws org.hipparchus.exception.MathIllegalArgumentException if the unknowns are not
   *     determined
   */
  public static LeastSquaresFit fit(
      Model model, double[] observed, double[] sigmas, double[] start, double[] steps) {
    Optimum optimum =
        new LevenbergMarquardtOptimizer()
            .withCostRelativeTolerance(1e-9)
            .withParameterRelativeTolerance(1e-9)
            .optimize(
                new LeastSquaresBuilder()
                    .model(new Scaled(model, sigmas, steps))
                    .lazyEvaluation(true)
                    .target(divided(observed, sigmas))
                    .start(start)
                    .maxEvaluations(MOST_STEPS)
                    .maxIterations(MOST_STEPS)
                    .build());
    return LeastSquaresFit.of(
        optimum.getPoint().toArray(),
        optimum.getJacobian(),
        optimum.getResiduals().toArray(),
        sigmas);
  }

  /** The model in standard uncertainties, differentiated only where that is asked for. */
  private record Scaled(Model model, double[] sigmas, double[] steps)
      implements ValueAndJacobianFunction {

    @Override
    public RealVector computeValue(double[] at) {
      return divided(model.valuesAt(at), sigmas);
    }

    @Override
    public RealMatrix computeJacobian(double[] at) {
      return jacobian(model, at, sigmas, steps);
    }

    @Override
    public Pair<RealVector, RealMatrix> value(RealVector at) {
      return Pair.create(computeValue(at.toArray()), computeJacobian(at.toArray()));
    }
  }

  private static RealVector divided(double[] values, double[] sigmas) {
    double[] divided = new double[values.length];
    for (int i = 0; i < values.length; i++) {
      divided[i] = values[i] / sigmas[i];
    }
    return new ArrayRealVector(divided, false);
  }

  /** By central differences: d(i, j) = (f(x + h) - f(x - h)) / 2h, in sigmas. */
  static RealMatrix jacobian(Model model, double[] at, double[] sigmas, double[] steps) {
    double[][] rows = new double[sigmas.length][at.length];
    for (int j = 0; j < at.length; j++) {
      double[] moved = at.clone();
      moved[j] = at[j] + steps[j];
      double[] ahead = model.valuesAt(moved, j);
      moved[j] = at[j] - steps[j];
      double[] behind = model.valuesAt(moved, j);
      for (int i = 0; i < sigmas.length; i++) {
        rows[i][j] = (ahead[i] - behind[i]) / (2 * steps[j] * sigmas[i]);
      }
    }
    return new Array2DRowRealMatrix(rows, false);
  }
}
