package tightside.reasoning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import tightside.timing.Drives;

/** What the study of known faults calls clear, and a few faults of it. */
class FaultStudyTest {

  private static final Subject SUBJECT = Subject.of(Drives.answered());
  static final DriveFaults FAULTS = Effects.of(SUBJECT);
  static final List<Hypothesis> ALL = Hypotheses.of(FAULTS, Priors.usual());

  static final Evidence CAMS_AND_PLUNGER =
      Evidence.of(
          new Reading.CamAngle("intake", 0, 1, Condition.HOT_IDLE, false),
          new Reading.CamAngle("exhaust", 0, 1, Condition.HOT_IDLE, false),
          new Reading.PlungerStands("main", 0, 1));

  private static Hypothesis of(Explanation what) {
    return ALL.stream().filter(h -> h.what().equals(what)).findFirst().orElseThrow();
  }

  private static FaultMaker.Made made(Explanation what, double amount) {
    Hypothesis truth = of(what);
    double[] quantities = truth.fixedPart(FAULTS.base());
    truth.amounts().forEach(e -> e.curve().addTo(quantities, amount));
    return new FaultMaker.Made(truth, OptionalDouble.of(amount), quantities);
  }

  private static boolean clear(FaultMaker.Made made) {
    Likelihood likelihood = Likelihood.of(FAULTS, CAMS_AND_PLUNGER);
    Grouping grouping = Grouping.of(FAULTS, likelihood, ALL);
    return new Clearness(likelihood, FAULTS.base(), grouping, ALL).clear(made);
  }

  /** A spread of one reading is 1.2 crank degrees here: 1, its sensor's 0.5 and 0.3 of heat. */
  @Test
  void aFaultIsClearByTheAmountThatItHas() {
    Explanation turned = Explanation.shaft(Cause.SENSOR, "intake", Explanation.Manner.TURNED);
    assertThat(clear(made(turned, 8))).isTrue();
    assertThat(clear(made(turned, 3))).isFalse();
  }

  /**
   * 20 crank degrees are a tooth: turned by as much, and the chain worn a little, reads like it.
   */
  @Test
  void whatAPairComesNearToIsNotClear() {
    Explanation turned = Explanation.shaft(Cause.SENSOR, "intake", Explanation.Manner.TURNED);
    assertThat(clear(made(turned, 14))).isTrue();
    assertThat(clear(made(turned, -23))).isFalse();
  }

  /**
   * One plunger in fifty is misread: that alone is no three spreads (2 ln 50 = 7.8, under 9). With
   * all camshafts late alike, it alone tells a slack chain from the crankshaft's sensor, turned.
   */
  @Test
  void aPlungerThatStandsWrongIsNoClearTensioner() {
    for (double swing : new double[] {0, -8}) {
      FaultMaker.Made slack = made(Explanation.chain(Cause.TENSIONER, "main"), swing);
      slack.quantities()[FAULTS.quantities().plunger("main")] = 2;
      assertThat(clear(slack)).isFalse();
    }
  }

  /** Every pair that matters, by sums over a grid of 250 by 250 amounts. */
  @Test
  void pairsAreIntegratedRightly() {
    FaultMaker maker = new FaultMaker(FAULTS, ALL, 3);
    int checked = 0;
    for (int i = 0; i < 8; i++) {
      FaultMaker.Made made = maker.draw(FaultMaker.Mismatch.MATCHED);
      Evidence read = maker.read(made, CAMS_AND_PLUNGER, FaultMaker.Mismatch.MATCHED);
      Likelihood likelihood = Likelihood.of(FAULTS, read);
      Weighing weighing = Weighing.of(FAULTS, read, ALL);
      for (int k = 0; k < ALL.size(); k++) {
        if (ALL.get(k).amounts().size() == 2 && weighing.probability(k) > 0.01) {
          double sum = grid(likelihood, ALL.get(k));
          assertThat(weighing.marginal(k).logEvidence()).isCloseTo(sum, within(0.02));
          checked++;
        }
      }
    }
    assertThat(checked).isGreaterThan(3);
  }

  private static double grid(Likelihood likelihood, Hypothesis pair) {
    int n = 250;
    Effect one = pair.amounts().get(0);
    Effect two = pair.amounts().get(1);
    double first = (one.curve().most() - one.curve().least()) / n;
    double second = (two.curve().most() - two.curve().least()) / n;
    double sum = 0;
    for (int i = 0; i < n; i++) {
      for (int k = 0; k < n; k++) {
        double[] quantities = pair.fixedPart(FAULTS.base());
        double x = one.curve().least() + first * (i + 0.5);
        double y = two.curve().least() + second * (k + 0.5);
        one.curve().addTo(quantities, x);
        two.curve().addTo(quantities, y);
        sum +=
            one.amount().orElseThrow().density(x)
                * two.amount().orElseThrow().density(y)
                * Math.exp(likelihood.log(likelihood.gauss(pair), quantities, pair.open()));
      }
    }
    return Math.log(sum * first * second);
  }

  /** Of the study, as many as a test can bear; the whole of it is a command. */
  @Test
  void clearFaultsComeFirst() {
    FaultTally tally = new FaultStudy(SUBJECT).run(0, 210, 20_261_126L);
    assertThat(tally.clear).isGreaterThan(20);
    assertThat(tally.clearFirst()).isGreaterThanOrEqualTo(95);
    assertThat(tally.covered()).isBetween(84.0, 96.0);
  }
}
