package tightside.reasoning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import tightside.drive.Seen;
import tightside.timing.Drives;

/** Facts of the trade: what a worn chain, a jumped tooth, one camshaft and one sensor look like. */
class ReasonerTest {

  private static final Reasoner REASONER = Reasoner.of(Subject.of(Drives.answered()));

  private static Answer explain(Reading... readings) {
    return REASONER.explain(Evidence.of(readings), Priors.usual(), CheckPlan.usual());
  }

  private static Reading angle(String shaft, double degrees) {
    return new Reading.CamAngle(shaft, degrees, 0.5, Condition.HOT_IDLE, false);
  }

  private static Reading unplugged(String shaft, double degrees) {
    return new Reading.CamAngle(shaft, degrees, 0.5, Condition.PHASER_UNPLUGGED, false);
  }

  /** The stretch of the model format's answered example: 1.88 and 2.53 cam degrees at 0.5 %. */
  @Test
  void bothLateInTheRatioOfTheirRunsIsAWornChain() {
    Answer answer =
        explain(
            angle("intake", -5.06),
            angle("exhaust", -3.76),
            new Reading.PlungerStands("main", 22, 23));
    Weighed first = answer.explanations().get(0);
    assertThat(first.what()).isEqualTo(Explanation.chain(Cause.STRETCH, "main"));
    assertThat(first.probability()).isGreaterThan(0.9);
    assertThat(first.amount().orElseThrow().mean()).isCloseTo(0.5, within(0.03));
    assertThat(first.amount().orElseThrow().low()).isLessThan(0.5);
    assertThat(first.amount().orElseThrow().high()).isGreaterThan(0.5);
    assertThat(answer.decided()).isTrue();
    assertThat(answer.leader().wrongWithDrive()).isTrue();
  }

  /** One tooth of 18 is 20 crank degrees. */
  @Test
  void bothLateByOneToothIsTheCranksSprocket() {
    Answer answer = explain(angle("intake", -20.3), angle("exhaust", -19.8));
    assertThat(answer.explanations().get(0).what())
        .isEqualTo(Explanation.reseat("main", "crank", 1));
  }

  @Test
  void countsThatFitRuleOutATooth() {
    Reading late = angle("exhaust", -20.2);
    Answer guess = explain(angle("intake", 0.2), late);
    assertThat(guess.explanations().get(0).what())
        .isEqualTo(Explanation.reseat("main", "exhaust", -1));
    Answer counted =
        explain(angle("intake", 0.2), late, new Reading.Counted("main", "intake", "exhaust", 17));
    assertThat(counted.explanations().get(0).what().cause()).isNotEqualTo(Cause.RESEAT);
    Answer short16 =
        explain(angle("intake", 0.2), late, new Reading.Counted("main", "intake", "exhaust", 16));
    assertThat(short16.leader().first().what())
        .isEqualTo(Explanation.reseat("main", "exhaust", -1));
    assertThat(short16.leader().probability()).isGreaterThan(0.95);
  }

  @Test
  void oneLateCamshaftReadsAlikeFromPhaserJointAndSensor() {
    Answer answer = explain(angle("intake", 0.2), angle("exhaust", -7));
    assertThat(answer.leader().members())
        .extracting(m -> m.what().cause())
        .contains(Cause.PHASER, Cause.JOINT, Cause.SENSOR);
    assertThat(answer.leader().members())
        .allMatch(m -> m.what().shaft().equals(Optional.of("exhaust")));
  }

  @Test
  void unpluggedAPhaserThatIsDrivenGoesHome() {
    Answer home = explain(angle("intake", 0.2), angle("exhaust", -7), unplugged("exhaust", 0.1));
    assertThat(home.explanations().get(0).what())
        .isEqualTo(Explanation.shaft(Cause.PHASER, "exhaust", Explanation.Manner.DRIVEN));
    Answer stays = explain(angle("intake", 0.2), angle("exhaust", -7), unplugged("exhaust", -7.2));
    assertThat(stays.leader().members())
        .noneMatch(m -> m.what().manner().equals(Optional.of(Explanation.Manner.DRIVEN)));
  }

  @Test
  void aToolThatGoesInLeavesTheSensor() {
    Answer answer =
        explain(
            angle("intake", 0.2),
            angle("exhaust", -7),
            new Reading.LockingTool("exhaust", true, OptionalDouble.of(0.5)),
            unplugged("exhaust", -7));
    assertThat(answer.leader().first().what().cause()).isEqualTo(Cause.SENSOR);
    assertThat(answer.leader().wrongWithDrive()).isFalse();
  }

  @Test
  void edgesApartFromEachOtherAreABentWheel() {
    Answer bent =
        explain(
            angle("intake", 0),
            new Reading.CamEdges(
                "exhaust", List.of(-4.0, 0.5, 3.5, -0.2), 0.5, Condition.HOT_IDLE));
    assertThat(bent.explanations().get(0).what())
        .isEqualTo(Explanation.shaft(Cause.SENSOR, "exhaust", Explanation.Manner.BENT));
    Answer turned =
        explain(
            angle("intake", 0),
            new Reading.CamEdges(
                "exhaust", List.of(-7.0, -7.3, -6.8, -7.1), 0.5, Condition.HOT_IDLE));
    assertThat(turned.explanations().get(0).what().manner())
        .isNotEqualTo(Optional.of(Explanation.Manner.BENT));
  }

  @Test
  void aLearnedValueHidesWhatWasThere() {
    Reading learned = new Reading.CamAngle("exhaust", -6, 0.5, Condition.HOT_IDLE, true);
    double none = probability(explain(angle("intake", 0), learned), Cause.NONE);
    double absolute = probability(explain(angle("intake", 0), angle("exhaust", -6)), Cause.NONE);
    assertThat(none).isGreaterThan(0.2);
    assertThat(absolute).isLessThan(1e-6);
  }

  private static double probability(Answer answer, Cause cause) {
    return answer.explanations().stream()
        .filter(w -> w.what().cause() == cause)
        .mapToDouble(Weighed::probability)
        .sum();
  }

  @Test
  void nothingThatIsReadIsNothingLearned() {
    Answer answer = explain(new Reading.Looked(Cheap.OIL, false));
    assertThat(probability(answer, Cause.RESEAT)).isCloseTo(8 / 105.0, within(0.02));
    assertThat(answer.decided()).isFalse();
  }

  @Test
  void readingsThatNothingFitsAreNotOnTheList() {
    Answer answer =
        explain(
            angle("intake", 14),
            angle("exhaust", -9),
            unplugged("intake", 14.2),
            unplugged("exhaust", -9.3),
            new Reading.Counted("main", "intake", "exhaust", 17),
            new Reading.ValveAngle("intake", 13.5, 1),
            new Reading.ValveAngle("exhaust", -9, 1));
    assertThat(answer.explanations().get(0).what().cause()).isIn(Cause.OTHER, Cause.SEVERAL);
  }

  @Test
  void priorsTimesFactorsAreProbabilities() {
    Answer answer = explain(angle("intake", -2), angle("exhaust", -1.6));
    for (Weighed one : answer.explanations()) {
      double product = one.factors().stream().reduce(one.prior(), (a, b) -> a * b);
      assertThat(product).isCloseTo(one.probability(), within(1e-9));
      assertThat(one.foreseen()).hasSameSizeAs(one.factors());
      assertThat(one.foreseen().get(0)).as(one.what().cause().word()).isPresent();
    }
    assertThat(answer.explanations().stream().mapToDouble(Weighed::probability).sum())
        .isCloseTo(1, within(1e-9));
    assertThat(answer.groups().stream().mapToDouble(Group::probability).sum())
        .isCloseTo(1, within(1e-9));
  }

  @Test
  void nothingIsCrankedBeforeASuspectedJumpWasTurnedByHand() {
    Evidence jumped = Evidence.of(angle("intake", 0.2), angle("exhaust", -20.2));
    Answer before = REASONER.explain(jumped, Priors.usual(), CheckPlan.usual());
    assertThat(before.checks().get(0).kind().turnsByPower()).isFalse();
    assertThat(before.checks())
        .filteredOn(c -> c.kind().turnsByPower())
        .isNotEmpty()
        .allMatch(NextCheck::held);
    Answer after = REASONER.explain(jumped, Priors.usual(), CheckPlan.usual().turned(true));
    assertThat(after.checks()).noneMatch(NextCheck::held);
  }

  @Test
  void minutesAndAccessDecideWhatComesNext() {
    Evidence late = Evidence.of(angle("intake", 0.2), angle("exhaust", -20.2));
    CheckPlan cheapDone =
        CheckPlan.usual()
            .without(CheckKind.OIL)
            .without(CheckKind.WIRING)
            .seeing(EnumSet.of(Seen.COVER_ON, Seen.COVER_OFF));
    Answer quick = REASONER.explain(late, Priors.usual(), cheapDone.with(CheckKind.COUNT, 1));
    assertThat(quick.checks().get(0).kind()).isEqualTo(CheckKind.COUNT);
    Answer slow = REASONER.explain(late, Priors.usual(), cheapDone.with(CheckKind.COUNT, 500));
    assertThat(slow.checks().get(0).kind()).isNotEqualTo(CheckKind.COUNT);
    NextCheck count = quick.checks().get(0);
    assertThat(count.bits()).isBetween(0.3, 1.5);
    assertThat(count.expects().get(0).what()).isEqualTo(Explanation.reseat("main", "exhaust", -1));
  }

  @Test
  void whatTheDriveHasNotIsRefused() {
    assertThatThrownBy(() -> explain(angle("pump", 1)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("pump");
    assertThatThrownBy(() -> new Spreads(0.5, 5, 0.1, 0.04, 0.1, 1)).hasMessageContaining("0.2 mm");
  }

  /**
   * Before anything of it was read, a sensor that sits turned by a normal amount of 8 degrees shows
   * 0 give or take 8 and the spread of the reading; nothing wrong shows 0 give or take that alone.
   */
  @Test
  void whatWasExpectedOfAReading() {
    Answer answer = explain(angle("intake", 0.2), angle("exhaust", -7), unplugged("exhaust", -7));
    double own = Math.sqrt(0.5 * 0.5 + 0.3 * 0.3 + 0.5 * 0.5);
    Foreseen right = foreseen(answer, Explanation.of(Cause.NONE), 1);
    assertThat(right.expected().orElseThrow()).isZero();
    assertThat(right.spread()).isCloseTo(own, within(1e-9));
    assertThat(right.apart()).isCloseTo(7 / own, within(1e-9));
    Explanation turned = Explanation.shaft(Cause.SENSOR, "exhaust", Explanation.Manner.TURNED);
    Foreseen before = foreseen(answer, turned, 1);
    assertThat(before.expected().orElseThrow()).isCloseTo(0, within(0.2));
    assertThat(before.spread()).isCloseTo(Math.hypot(8, own), within(0.25));
    Foreseen again = foreseen(answer, turned, 2);
    assertThat(again.expected().orElseThrow()).isCloseTo(-7, within(0.2));
    assertThat(again.spread()).isLessThan(1);
  }

  private static Foreseen foreseen(Answer answer, Explanation what, int reading) {
    return answer.explanations().stream()
        .filter(w -> w.what().equals(what))
        .findFirst()
        .orElseThrow()
        .foreseen()
        .get(reading)
        .orElseThrow();
  }

  /** One count in fifty is wrong. */
  @Test
  void howProbableACountWas() {
    Answer answer = explain(new Reading.Counted("main", "intake", "exhaust", 17));
    assertThat(foreseen(answer, Explanation.of(Cause.NONE), 0).chance().orElseThrow())
        .isCloseTo(0.98, within(1e-9));
    assertThat(foreseen(answer, Explanation.reseat("main", "exhaust", 1), 0).chance().orElseThrow())
        .isLessThan(0.02);
  }
}
