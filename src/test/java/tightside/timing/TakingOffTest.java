package tightside.timing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.api.Test;
import tightside.drive.Chain;
import tightside.drive.ChainKind;
import tightside.drive.Drive;
import tightside.drive.Role;
import tightside.drive.Shaft;
import tightside.drive.Sprocket;
import tightside.geometry.Bearing;
import tightside.geometry.Rotation;

class TakingOffTest {

  private static final double EXACT = 1e-9;

  private static HoldBack answered(double extension) {
    Drive drive = Drives.answered();
    return (HoldBack)
        HeldBack.of(
            drive, Drives.chain(drive), OptionalDouble.of(extension), 0, LockingPlay.unknown());
  }

  private static double bow(double span, double offset) {
    return Math.sqrt(span * span + offset * offset) - span;
  }

  /** The run between two equal sprockets is as long as their shafts are apart: 104 mm. */
  @Test
  void oneSprocketBowsTheRunsOnBothItsSides() {
    SlideOff slide = SlideOff.of(answered(0), Set.of("intake"), 10);
    assertThat(slide.strands().get(1).neededMm()).isCloseTo(bow(104, 10), within(EXACT));
    assertThat(slide.strands().get(0).neededMm()).isBetween(bow(150, 10), bow(90, 10));
    assertThat(slide.strands().get(2).neededMm()).isZero();
    assertThat(slide.neededMm())
        .isCloseTo(slide.strands().get(0).neededMm() + bow(104, 10), within(EXACT));
  }

  @Test
  void sprocketsThatSlideTogetherLeaveTheRunBetweenThemStraight() {
    SlideOff slide = SlideOff.of(answered(0), Set.of("intake", "exhaust"), 10);
    assertThat(slide.strands().get(1).neededMm()).isZero();
    assertThat(slide.strands().get(2).neededMm()).isPositive();
  }

  /** A tight strand has nothing to bow with until its camshaft may turn. */
  @Test
  void aTightStrandBowsOnlyOnceACamshaftTurns() {
    SlideOff both = SlideOff.of(answered(0), Set.of("intake", "exhaust"), 10);
    assertThat(both.enoughLocked()).isFalse();
    assertThat(both.enoughTurning()).isTrue();
    assertThat(SlideOff.of(answered(0), Set.of("exhaust"), 10).enoughTurning()).isFalse();
    assertThat(SlideOff.of(answered(14.2), Set.of("intake", "exhaust"), 10).enoughTurning())
        .isFalse();
    assertThat(SlideOff.of(answered(0), Set.of("intake", "exhaust"), 1).enoughLocked()).isTrue();
  }

  private static HoldBack twoSprockets(int links) {
    Drive drive =
        new Drive(
            "two sprockets",
            "Invented for a test.",
            Rotation.CLOCKWISE,
            List.of(
                new Shaft("crank", Role.CRANKSHAFT, Vector2D.of(0, 0)),
                new Shaft("cam", Role.CAMSHAFT, Vector2D.of(0, 300))),
            List.of(
                new Chain(
                    "main",
                    ChainKind.BUSH,
                    8,
                    links,
                    7.2,
                    5,
                    List.of(
                        Sprocket.inside("crank", 20, new Bearing(180)),
                        Sprocket.inside("cam", 40, new Bearing(0))))));
    return (HoldBack) HeldBack.of(drive, Drives.chain(drive));
  }

  /** Open two-sprocket formula in pitches, the sprocket ridden over its tips counted in chords. */
  private static double pitches(double apart, double smallLift, double largeLift) {
    double small = 8 / (2 * Math.sin(Math.PI / 20)) + smallLift;
    double large = 8 / (2 * Math.sin(Math.PI / 40)) + largeLift;
    double a = Math.asin((large - small) / apart);
    return 2 * apart * Math.cos(a) / 8
        + (Math.PI - 2 * a) / (2 * Math.asin(8 / (2 * small)))
        + (Math.PI + 2 * a) / (2 * Math.asin(8 / (2 * large)));
  }

  @Test
  void theLeastMoveLeavesTheChainExactlyLongEnough() {
    HoldBack hold = twoSprockets(107);
    FreeTeeth free = FreeTeeth.alone(hold, "cam").orElseThrow();
    double lift = (8 * (1 - 1.6 / 40) / 2 + 5) / 2;
    assertThat(free.liftMm()).isCloseTo(lift, within(EXACT));
    assertThat(free.standingNeedMm()).isCloseTo((pitches(300, 0, lift) - 107) * 8, within(EXACT));
    assertThat(pitches(300 - free.moveMm().orElseThrow(), 0, lift)).isCloseTo(107, within(1e-7));
    assertThat(free.keeper()).isEmpty();
  }

  /** The bow takes chain that then lacks, so the sprocket has further to go. */
  @Test
  void aBowAsksForMore() {
    HoldBack hold = answered(0);
    SlideOff slide = SlideOff.of(hold, Set.of("intake"), 12);
    FreeTeeth bowed = FreeTeeth.of(hold, "intake", slide, Optional.empty()).orElseThrow();
    FreeTeeth plain = FreeTeeth.alone(hold, "intake").orElseThrow();
    assertThat(bowed.standingNeedMm() - plain.standingNeedMm())
        .isCloseTo(slide.neededMm(), within(EXACT));
    assertThat(bowed.moveMm().orElseThrow()).isGreaterThan(plain.moveMm().orElseThrow() + 0.5);
  }

  @Test
  void theNeighbourKeepsASprocketThatMovesTowardIt() {
    HoldBack hold = answered(14.2);
    SlideOff slide = SlideOff.of(hold, Set.of("intake"), 20);
    FreeTeeth free =
        FreeTeeth.of(hold, "intake", slide, Optional.of(Vector2D.of(1, 0))).orElseThrow();
    assertThat(free.moveMm()).isEmpty();
    assertThat(free.keeper()).contains(new FreeTeeth.Keeper(FreeTeeth.Cause.NEIGHBOUR, "exhaust"));
  }

  /** Down along the tensioner's arm, which bends the chain round behind it. */
  @Test
  void theTensionerKeepsASprocketThatMovesAlongIt() {
    HoldBack hold = answered(14.2);
    SlideOff slide = SlideOff.of(hold, Set.of("intake"), 12);
    Vector2D down = new Bearing(195).direction();
    FreeTeeth held = FreeTeeth.of(hold, "intake", slide, Optional.of(down)).orElseThrow();
    assertThat(held.keeper()).contains(new FreeTeeth.Keeper(FreeTeeth.Cause.FACE, "tensioner"));
    FreeTeeth pushedBack =
        FreeTeeth.of(answered(0), "intake", slide, Optional.of(down)).orElseThrow();
    assertThat(pushedBack.moveMm()).isPresent();
  }

  @Test
  void movedAwayNothingFreesIt() {
    HoldBack hold = answered(0);
    SlideOff slide = SlideOff.of(hold, Set.of("intake"), 0);
    FreeTeeth free =
        FreeTeeth.of(hold, "intake", slide, Optional.of(Vector2D.of(-1, 2))).orElseThrow();
    assertThat(free.moveMm()).isEmpty();
    assertThat(free.keeper()).contains(new FreeTeeth.Keeper(FreeTeeth.Cause.SLACK, ""));
  }

  @Test
  void whoHasNotSlidOffOrDrivesStays() {
    HoldBack hold = answered(0);
    SlideOff slide = SlideOff.of(hold, Set.of("intake"), 0);
    assertThatThrownBy(() -> FreeTeeth.of(hold, "exhaust", slide, Optional.empty()))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> FreeTeeth.alone(hold, "crank"))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> SlideOff.of(hold, Set.of("intake"), -1))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void ridingOverTheCranksTeeth() {
    HoldBack hold = twoSprockets(106);
    Climb climb = Climb.of(hold, "crank").orElseThrow();
    double lift = (8 * (1 - 1.6 / 20) / 2 + 5) / 2;
    assertThat(climb.allAtOnceMm())
        .isCloseTo((pitches(300, lift, 0) - pitches(300, 0, 0)) * 8, within(EXACT));
    assertThat(climb.toothByToothMm()).isEqualTo(8);
    assertThat(climb.neededMm()).isEqualTo(8);
    assertThat(climb.possible()).isFalse();
    assertThat(Climb.of(twoSprockets(107), "crank").orElseThrow().possible()).isTrue();
  }

  /**
   * Two links that stand like a roof over one gap stand higher than a tip: sqrt(3) / 2 of a pitch
   * above the chord against the rise to the tip and the polygon's depth.
   */
  @Test
  void theRoofClearsTheTip() {
    Climb climb = Climb.of(twoSprockets(107), "crank").orElseThrow();
    double radius = 8 / (2 * Math.sin(Math.PI / 20));
    double apex = radius * Math.cos(Math.PI / 20) + 8 * Math.sqrt(3) / 2;
    assertThat(apex).isGreaterThan(radius + climb.liftMm());
  }
}
