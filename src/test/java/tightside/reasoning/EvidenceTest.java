package tightside.reasoning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.apache.commons.statistics.distribution.TruncatedNormalDistribution;
import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.integration.SimpsonIntegrator;
import org.junit.jupiter.api.Test;
import tightside.timing.Drives;
import tightside.timing.Solver;
import tightside.timing.State;

/**
 * Evidence against integrals that are taken apart from the program: in closed form where there is
 * one, else by Simpson's rule of a general library over densities written down here by hand.
 */
class EvidenceTest {

  private static final DriveFaults FAULTS = Effects.of(Subject.of(Drives.answered()));
  private static final double BIAS = 0.5;
  private static final double HOT = 0.3;

  private static Hypothesis of(Explanation what) {
    return FAULTS.effects().stream()
        .filter(e -> e.what().equals(what))
        .map(e -> new Hypothesis(what, List.of(e), 1))
        .findFirst()
        .orElseThrow();
  }

  private static Hypothesis both(Explanation one, Explanation other) {
    return new Hypothesis(
        Explanation.both(one, other),
        List.of(of(one).effects().get(0), of(other).effects().get(0)),
        1);
  }

  private static Hypothesis none() {
    return new Hypothesis(Explanation.of(Cause.NONE), List.of(), 1);
  }

  private static Reading angle(String shaft, double degrees, double spread) {
    return new Reading.CamAngle(shaft, degrees, spread, Condition.HOT_IDLE, false);
  }

  private static Marginal marginal(Hypothesis hypothesis, Evidence evidence) {
    return new Integration(Likelihood.of(FAULTS, evidence), FAULTS.base()).of(hypothesis);
  }

  private static double simpson(UnivariateFunction function, double low, double high) {
    return new SimpsonIntegrator(1e-4, 1e-12, 5, 24).integrate(9_000_000, function, low, high);
  }

  private static double all(double spread) {
    return Math.sqrt(spread * spread + HOT * HOT + BIAS * BIAS);
  }

  private static double density(double mean, double spread, double at) {
    return NormalDistribution.of(mean, spread).density(at);
  }

  /** Two readings of one sensor: by hand, their covariance is s^2 + b^2 and b^2. */
  @Test
  void repeatsOfOneSensorShareItsBias() {
    Evidence evidence = Evidence.of(angle("intake", 1.2, 0.8), angle("intake", 0.7, 0.8));
    double own = 0.8 * 0.8 + HOT * HOT;
    double difference = density(0, Math.sqrt(2 * own), 0.5);
    double sum = density(0, Math.sqrt(2 * own + 4 * BIAS * BIAS), 1.9);
    double expected = Math.log(2 * difference * sum);
    assertThat(marginal(none(), evidence).logEvidence()).isCloseTo(expected, within(1e-10));
  }

  /** Normal prior and normal reading: the evidence is normal (any text on Bayes' rule). */
  @Test
  void aTurnedSensorInClosedForm() {
    Evidence evidence = Evidence.of(angle("intake", -6, 0.8), angle("exhaust", 0.4, 0.8));
    Hypothesis turned = of(Explanation.shaft(Cause.SENSOR, "intake", Explanation.Manner.TURNED));
    double spread = all(0.8);
    double expected =
        Math.log(density(0, Math.hypot(8, spread), -6)) + Math.log(density(0, spread, 0.4));
    Marginal found = marginal(turned, evidence);
    // the prior is cut at 40 degrees, five of its spreads
    assertThat(found.logEvidence()).isCloseTo(expected, within(1e-5));
    // JCGM 106 clauses 6 and 7 (from memory): mean = y u0^2 / (u0^2 + um^2)
    assertThat(found.mean()).isCloseTo(-6 * 64 / (64 + spread * spread), within(1e-4));
    double u = 8 * spread / Math.hypot(8, spread);
    assertThat(found.quantile(0.95) - found.mean()).isCloseTo(1.645 * u, within(0.02 * u));
  }

  /** A uniform prior: the evidence is a difference of two cumulated normals over its width. */
  @Test
  void aPhaserInClosedForm() {
    Evidence evidence = Evidence.of(angle("intake", 39.5, 0.8));
    Hypothesis stuck = of(Explanation.shaft(Cause.PHASER, "intake", Explanation.Manner.STUCK));
    NormalDistribution read = NormalDistribution.of(39.5, all(0.8));
    double expected = read.probability(-40, 40) / 80;
    assertThat(marginal(stuck, evidence).logEvidence()).isCloseTo(Math.log(expected), within(1e-8));
  }

  /** Stretch, with what the solver says of every stretch, and a plunger's interval. */
  @Test
  void aWornChainBySimpsonsRule() {
    Evidence evidence =
        Evidence.of(
            angle("intake", -2.4, 0.6),
            angle("exhaust", -1.3, 0.6),
            new Reading.PlungerStands("main", 17, 18.5));
    Solver solver = Solver.of(Drives.answered());
    double perPercent = (extension(solver, 0.125) - extension(solver, 0)) / 0.125;
    double soft = Math.hypot(0.2, 0.043 * perPercent);
    TruncatedNormalDistribution prior = TruncatedNormalDistribution.of(0, 0.5, 0.1, 2);
    double spread = all(0.6);
    double expected =
        simpson(
            percent -> {
              double at = extension(solver, percent);
              NormalDistribution plunger = NormalDistribution.of(at, soft);
              double within = plunger.probability(17, 18.5);
              return prior.density(percent)
                  * density(degrees(solver, percent, "intake"), spread, -2.4)
                  * density(degrees(solver, percent, "exhaust"), spread, -1.3)
                  * (0.98 * within + 0.02 * 1.5 / 28);
            },
            0.1,
            0.9);
    Marginal found = marginal(of(Explanation.chain(Cause.STRETCH, "main")), evidence);
    // the program's table runs straight between stretches an eighth of a percent apart
    assertThat(found.logEvidence()).isCloseTo(Math.log(expected), within(0.01));
  }

  private static double extension(Solver solver, double percent) {
    return solver
        .solve(State.reference().stretched("main", percent))
        .chain("main")
        .orElseThrow()
        .tensioner()
        .orElseThrow()
        .extensionMm();
  }

  private static double degrees(Solver solver, double percent, String shaft) {
    return solver
        .solve(State.reference().stretched("main", percent))
        .shaft(shaft)
        .orElseThrow()
        .crankDegrees();
  }

  /** Two normal amounts on one shaft and one reading of each sensor: normal in two dimensions. */
  @Test
  void twoAmountsBySimpsonsRuleTwice() {
    Evidence evidence =
        Evidence.of(
            angle("intake", -6, 0.6),
            angle("exhaust", -1.5, 0.6),
            new Reading.LockingTool("intake", false, OptionalDouble.of(1.5)));
    Explanation worn = Explanation.chain(Cause.STRETCH, "main");
    Explanation slipped = Explanation.shaft(Cause.JOINT, "intake", null);
    TruncatedNormalDistribution wear = TruncatedNormalDistribution.of(0, 0.5, 0.1, 2);
    TruncatedNormalDistribution slip = TruncatedNormalDistribution.of(0, 12, -40, 40);
    Curve curve = of(worn).effects().get(0).curve();
    Quantities q = FAULTS.quantities();
    double spread = all(0.6);
    double expected =
        simpson(
            percent -> {
              double[] change = new double[q.size()];
              curve.addTo(change, percent);
              double exhaust = density(change[q.turned("exhaust")], spread, -1.5);
              double inner =
                  simpson(
                      by -> {
                        double stands = change[q.turned("intake")] + by;
                        double in = NormalDistribution.of(stands, 0.2).probability(-3, 3);
                        return slip.density(by)
                            * density(stands, spread, -6)
                            * (1 - (0.02 + 0.96 * in));
                      },
                      -14,
                      4);
              return wear.density(percent) * exhaust * inner;
            },
            0.1,
            1.2);
    assertThat(marginal(both(worn, slipped), evidence).logEvidence())
        .isCloseTo(Math.log(expected), within(0.01));
  }

  /** Two hypotheses without amounts: the log of the Bayes factor is half the difference of chi2. */
  @Test
  void withoutAmountsChiSquaresDecide() {
    Evidence evidence = Evidence.of(angle("intake", 0.5, 0.8), angle("exhaust", -19, 0.8));
    Hypothesis behind = of(Explanation.reseat("main", "exhaust", -1));
    double variance = all(0.8) * all(0.8);
    double chiNone = (0.25 + 19 * 19) / variance;
    double chiBehind = (0.25 + 1) / variance;
    double factor =
        marginal(behind, evidence).logEvidence() - marginal(none(), evidence).logEvidence();
    assertThat(factor).isCloseTo((chiNone - chiBehind) / 2, within(1e-9));
  }

  /**
   * JCGM 100:2008, H.3, the thermometer's calibration line, with a systematic part of 0.005 that
   * all readings share: printed for it (GTC, docs/API/GUM_H1.rst) are an intercept's uncertainty of
   * 0.00576893 and a slope's that stays 0.00067.
   */
  @Test
  void sharedBiasAsInTheGuideToUncertainty() {
    double[] t = {
      21.521, 22.012, 22.512, 23.003, 23.507, 23.999, 24.513, 25.002, 25.503, 26.010, 26.511
    };
    double residual = 0.000110096583109 / 9;
    int n = t.length;
    double[][] covariance = new double[n][n];
    double[] one = new double[n];
    double[] slope = new double[n];
    for (int i = 0; i < n; i++) {
      one[i] = 1;
      slope[i] = t[i] - 20;
      for (int j = 0; j < n; j++) {
        covariance[i][j] = 0.005 * 0.005 + (i == j ? residual : 0);
      }
    }
    Gauss gauss = new Gauss(covariance);
    double aa = gauss.product(one, one);
    double ab = gauss.product(one, slope);
    double bb = gauss.product(slope, slope);
    double determinant = aa * bb - ab * ab;
    assertThat(Math.sqrt(bb / determinant)).isCloseTo(0.00576893, within(5e-9));
    assertThat(Math.sqrt(aa / determinant)).isCloseTo(0.00067, within(5e-6));
  }

  /** The timing of a drive whose camshaft moved nearer: h / r, seen along the tight run. */
  @Test
  void aSkimmedHeadRetardsByWhatTheTightRunLoses() {
    double[] change = new double[FAULTS.quantities().size()];
    of(Explanation.chain(Cause.CENTRE, "main")).effects().get(0).curve().addTo(change, 0.4);
    double exhaust = change[FAULTS.quantities().turned("exhaust")];
    // 18 teeth of 8 mm: 2.5 crank degrees a mm of chain; the run stands nearly upright
    assertThat(exhaust).isCloseTo(-0.4 * 360 / (18 * 8.0), within(0.15));
    assertThat(change[FAULTS.quantities().turned("intake")]).isCloseTo(exhaust, within(0.2));
    assertThat(change[FAULTS.quantities().plunger("main")]).isPositive();
  }

  @Test
  void partsThatDidNotMoveMoveNothing() {
    var right = FAULTS.right();
    assertThat(Drifted.crankDegrees(right, right, "main").values()).containsOnly(0.0);
  }
}
