package tightside.survey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.hipparchus.linear.DiagonalMatrix;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.optim.nonlinear.vector.leastsquares.GaussNewtonOptimizer;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresBuilder;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresFactory;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresOptimizer.Optimum;
import org.junit.jupiter.api.Test;

/**
 * The statistics of an adjustment against the library's own, which gets weights instead of scaled
 * equations, exact slopes instead of differences, and another method: a point sought from five
 * known ones by distances.
 */
class OwnStatisticsTest {

  private static final double[][] KNOWN = {{0, 0}, {300, 0}, {300, 200}, {0, 200}, {150, -80}};
  private static final double[] OBSERVED = {149.1, 228.0, 220.1, 134.4, 196.9};
  private static final double[] SIGMAS = {0.5, 0.5, 1.0, 0.3, 0.5};

  private static double[] distances(double[] at) {
    double[] d = new double[KNOWN.length];
    for (int i = 0; i < d.length; i++) {
      d[i] = Math.hypot(at[0] - KNOWN[i][0], at[1] - KNOWN[i][1]);
    }
    return d;
  }

  private static double[][] slopes(double[] at) {
    double[] d = distances(at);
    double[][] slopes = new double[d.length][2];
    for (int i = 0; i < d.length; i++) {
      slopes[i][0] = (at[0] - KNOWN[i][0]) / d[i];
      slopes[i][1] = (at[1] - KNOWN[i][1]) / d[i];
    }
    return slopes;
  }

  @Test
  void covarianceSquaresAndSpreadAreTheLibrarys() {
    double[] start = {100, 100};
    LeastSquaresFit ours =
        LeastSquares.fit(
            OwnStatisticsTest::distances, OBSERVED, SIGMAS, start, new double[] {1e-4, 1e-4});
    double[] weights = new double[SIGMAS.length];
    for (int i = 0; i < weights.length; i++) {
      weights[i] = 1 / (SIGMAS[i] * SIGMAS[i]);
    }
    Optimum theirs =
        new GaussNewtonOptimizer()
            .optimize(
                new LeastSquaresBuilder()
                    .model(OwnStatisticsTest::distances, OwnStatisticsTest::slopes)
                    .target(OBSERVED)
                    .weight(new DiagonalMatrix(weights))
                    .start(start)
                    .checker(
                        LeastSquaresFactory.evaluationChecker(
                            (i, a, b) ->
                                Math.hypot(
                                        a.getPoint()[0] - b.getPoint()[0],
                                        a.getPoint()[1] - b.getPoint()[1])
                                    < 1e-10))
                    .maxEvaluations(100)
                    .maxIterations(100)
                    .build());
    RealMatrix covariances = theirs.getCovariances(1e-14);
    for (int i = 0; i < 2; i++) {
      assertThat(ours.unknowns()[i]).isCloseTo(theirs.getPoint().getEntry(i), within(1e-5));
      assertThat(ours.sigmaOf(i)).isCloseTo(theirs.getSigma(1e-14).getEntry(i), within(1e-7));
      for (int j = 0; j < 2; j++) {
        assertThat(ours.covariance().getEntry(i, j))
            .isCloseTo(covariances.getEntry(i, j), within(1e-7));
      }
    }
    assertThat(ours.chiSquare()).isCloseTo(theirs.getCost() * theirs.getCost(), within(1e-7));
    assertThat(Math.sqrt(ours.chiSquare() / OBSERVED.length))
        .isCloseTo(theirs.getRMS(), within(1e-7));
    RealMatrix hat =
        theirs.getJacobian().multiply(covariances).multiply(theirs.getJacobian().transpose());
    double sum = 0;
    for (int i = 0; i < OBSERVED.length; i++) {
      assertThat(ours.redundancy()[i]).isCloseTo(1 - hat.getEntry(i, i), within(1e-7));
      sum += ours.redundancy()[i];
    }
    assertThat(sum).isCloseTo(OBSERVED.length - 2, within(1e-9));
  }

  /** Leaving a measurement out moves its own residual to v / r: the rule that blunders go by. */
  @Test
  void leavingOneOutIsAsItsRedundancySays() {
    double[] start = {100, 100};
    double[] steps = {1e-4, 1e-4};
    LeastSquaresFit all =
        LeastSquares.fit(OwnStatisticsTest::distances, OBSERVED, SIGMAS, start, steps);
    double[] without = SIGMAS.clone();
    without[0] = 1e4;
    LeastSquaresFit rest =
        LeastSquares.fit(OwnStatisticsTest::distances, OBSERVED, without, start, steps);
    double predicted = OBSERVED[0] - distances(rest.unknowns())[0];
    assertThat(predicted).isCloseTo(all.residual(0) / all.redundancy()[0], within(0.01));
  }
}
