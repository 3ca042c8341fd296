package tightside.timing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tightside.drive.Chain;
import tightside.drive.Drive;

class HoldBackTest {

  /** The answered example prints two decimals. */
  private static final double PRINTED = 0.005;

  /** Below anything but rounding. */
  private static final double EXACT = 1e-9;

  private final Drive drive = Drives.answered();
  private final Chain chain = Drives.chain(drive);

  private HoldBack hold(double extension, double stretch, LockingPlay play) {
    return (HoldBack) HeldBack.of(drive, chain, OptionalDouble.of(extension), stretch, play);
  }

  private HoldBack back() {
    return (HoldBack) HeldBack.of(drive, chain);
  }

  private WrongLay reseat(HoldBack hold, String shaft, int teeth) {
    return hold.judge(Reseating.of("main", shaft, teeth));
  }

  /** The answered example of the model format: 2.48 mm. */
  @Test
  void theAnsweredExample() {
    assertThat(back().slackMm()).isCloseTo(2.48, within(PRINTED));
    assertThat(back().strands().stream().map(LooseStrand::slackMm).toList().get(0))
        .isCloseTo(2.48, within(PRINTED));
    assertThat(back().leaving("intake").orElseThrow().slackMm()).isCloseTo(0, within(PRINTED));
    assertThat(back().leaving("exhaust").orElseThrow().slackMm()).isCloseTo(0, within(PRINTED));
  }

  @ParameterizedTest
  @CsvSource({"0, 0", "5, 0", "14, 0.3", "28, 0", "10, 1"})
  void theStrandsShareTheSlackOfTheLoop(double extension, double stretch) {
    HoldBack hold = hold(extension, stretch, LockingPlay.unknown());
    assertThat(hold.strands().stream().mapToDouble(LooseStrand::slackMm).sum())
        .isCloseTo(hold.slackMm(), within(EXACT));
  }

  @Test
  void theSolverSaysTheSame() {
    ChainSolution solved = Solver.solve(drive, State.reference().held("main", 6)).chains().get(0);
    HoldBack hold = hold(6, 0, LockingPlay.unknown());
    for (int i = 0; i < 3; i++) {
      Strand strand = solved.strands().get(i);
      assertThat(hold.strands().get(i).slackMm())
          .isCloseTo((strand.links() - strand.pitches()) * 8, within(EXACT));
    }
  }

  @Test
  void pastTheTautPlaceTheChainLacks() {
    assertThat(hold(16, 0, LockingPlay.unknown()).slackMm()).isNegative();
  }

  /** One tooth off lacks a pitch less what the strand has; the turn is what is missing in teeth. */
  @ParameterizedTest
  @CsvSource({
    "intake, -1, 5.52, 6.91, crank",
    "intake, 1, 8.00, 10.00, intake",
    "intake, 3, 24.00, 30.00, intake",
    "exhaust, -2, 16.00, 20.00, intake",
    "exhaust, 1, 8.00, 10.00, exhaust",
    "crank, 1, 5.52, 13.81, crank",
    "crank, -1, 8.00, 20.00, exhaust"
  })
  void noReseatFitsTheExampleWithShaftsLocked(
      String shaft, int teeth, double missing, double turn, String lackingFrom) {
    WrongLay lay = reseat(back(), shaft, teeth);
    assertThat(lay.possible()).isFalse();
    assertThat(lay.missingMm()).isCloseTo(missing, within(PRINTED));
    assertThat(lay.turnNeeded(shaft).orElseThrow()).isCloseTo(turn, within(PRINTED));
    assertThat(lay.lacking().orElseThrow().from()).isEqualTo(lackingFrom);
  }

  @Test
  void eachReseatIsAskedOnce() {
    assertThat(back().reseats()).hasSize(18);
  }

  /** 3.5 camshaft degrees are 3.5 x 36 / 360 teeth of 8 mm at each end: 5.6 mm a strand. */
  @Test
  void playInTheToolsMakesThreeReseatsPossible() {
    HoldBack hold = hold(0, 0, LockingPlay.of(3.5));
    assertThat(hold.strandPlayMm()).isCloseTo(5.6, within(EXACT));
    List<WrongLay> possible = hold.reseats().stream().filter(WrongLay::possible).toList();
    assertThat(possible.stream().map(WrongLay::lay))
        .containsExactly(Reseating.of("main", "crank", 1), Reseating.of("main", "intake", -1));
    for (WrongLay lay : possible) {
      assertThat(lay.missingMm()).isZero();
      assertThat(lay.lacking()).isEmpty();
      assertThat(lay.turnNeededDegrees().values()).containsOnly(0.0);
    }
  }

  @Test
  void withoutPlayTheStrandMayLackAFewHundredths() {
    assertThat(back().strandPlayMm()).isEqualTo(0.05);
    assertThat(hold(0, 0, LockingPlay.of(0)).judge(Reseating.right("main")).possible()).isTrue();
  }

  /** The wraps keep their teeth, so a tight strand gains stretch on its straight runs alone. */
  @ParameterizedTest
  @ValueSource(doubles = {0.2, 0.5, 1})
  void stretchIsWearAndNoMistake(double stretch) {
    LooseStrand between = hold(0, stretch, LockingPlay.unknown()).leaving("intake").orElseThrow();
    assertThat(between.slackMm()).isCloseTo(104 * stretch / 100, within(EXACT));
    assertThat(between.wearMm()).isCloseTo(between.slackMm(), within(EXACT));
    assertThat(back().leaving("intake").orElseThrow().wearMm()).isZero();
  }

  @Test
  void aSagIsThatOfTheLongestStraightRun() {
    LooseStrand between = back().leaving("intake").orElseThrow();
    assertThat(between.longestRunMm()).isCloseTo(104, within(EXACT));
    assertThat(between.sagMm(0)).hasValue(0);
    assertThat(between.sagMm(8).orElseThrow()).isCloseTo(Math.sqrt(3 * 104 * 8 / 8.0), within(0.3));
    assertThat(between.sagMm(80)).isEmpty();
  }

  @Test
  void whatCantBeAskedIsNamed() {
    assertThat(HeldBack.of(drive, chain, OptionalDouble.of(28.1), 0, LockingPlay.unknown()))
        .isEqualTo(new HeldBack.NotPossible(HeldBack.Reason.OUTSIDE_TRAVEL));
    Drive short1 = LooseDrives.withTensioner(chain.route().get(1), 110);
    assertThat(HeldBack.of(short1, Drives.chain(short1)))
        .isEqualTo(new HeldBack.NotPossible(HeldBack.Reason.NEW_CHAIN_DOES_NOT_FIT));
  }

  @Test
  void theSlackGrowsAsThePlungerGoesBack() {
    SlackByExtension slack = SlackByExtension.of(drive, chain, 0).orElseThrow();
    double free = LooseDrives.free(drive).orElseThrow().extensionMm();
    assertThat(slack.loopMm(free)).isCloseTo(0, within(1e-7));
    assertThat(slack.loopMm(0)).isCloseTo(back().slackMm(), within(EXACT));
    assertThat(slack.loopMm(7)).isBetween(slack.loopMm(8), slack.loopMm(6));
    double wanted = slack.extensionFor(1).orElseThrow();
    assertThat(slack.loopMm(wanted)).isCloseTo(1, within(1e-7));
    assertThat(slack.extensionFor(2.5)).isEmpty();
  }

  @Test
  void aPlungerLetGoTakesUpTheSlackSideAlone() {
    SlackByExtension slack = SlackByExtension.of(drive, chain, 0).orElseThrow();
    assertThat(slack.extensionLetGo(Reseating.right("main"))).isCloseTo(14.23, within(PRINTED));
    assertThat(slack.extensionLetGo(Reseating.of("main", "intake", -1))).isZero();
    assertThat(slack.extensionLetGo(Reseating.of("main", "intake", 1))).isGreaterThan(20);
  }
}
