package tightside.timing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.math.BigInteger;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import tightside.drive.Chain;
import tightside.drive.ChainSize;
import tightside.drive.Drive;
import tightside.drive.Role;
import tightside.drive.Seen;
import tightside.drive.Shaft;
import tightside.drive.Sprocket;
import tightside.geometry.Rotation;

/** A drive known by its counts alone. Expected values are worked out by hand beside each. */
class CountedOnlyTest {

  /** Half of the last digit that the format's description prints. */
  private static final double AS_PRINTED = 0.005;

  private static final Drive ANSWERED = Counted.withRuns(Drives.answered());

  private static double error(Drive drive, State state, String shaft) {
    return Solver.solve(drive, state).shaft(shaft).orElseThrow().shaftDegrees();
  }

  private static ChainSolution main(Drive drive) {
    return Solver.solve(drive, State.reference()).chain("main").orElseThrow();
  }

  /** Crank of 18 teeth, one cam of 36 straight above it, 300 mm of free run on the pulled side. */
  private static Drive oneCam(ChainSize size, OptionalDouble run) {
    return new Drive(
        "one cam",
        "",
        Rotation.CLOCKWISE,
        List.of(Shaft.unplaced("crank", Role.CRANKSHAFT), Shaft.unplaced("cam", Role.CAMSHAFT)),
        List.of(
            new Chain(
                "main",
                size,
                102,
                List.of(
                    Sprocket.counted("crank", 18), Sprocket.counted("cam", 36).withStraight(run)),
                java.util.Optional.of(List.of(52, 50)))));
  }

  private static ChainSize pitch(double mm) {
    return new ChainSize(
        java.util.Optional.empty(),
        OptionalDouble.of(mm),
        OptionalDouble.empty(),
        OptionalDouble.empty());
  }

  @Test
  void strandsAreAsCountedAndTheOneBeforeTheArmIsSlack() {
    assertThat(main(ANSWERED).strands()).extracting(Strand::links).containsExactly(51L, 17L, 50L);
    assertThat(main(ANSWERED).strands())
        .extracting(Strand::taut)
        .containsExactly(false, true, true);
    assertThat(main(ANSWERED).strands())
        .allMatch(s -> s.measured().isEmpty() && s.misfit().isEmpty() && s.trusted());
  }

  @Test
  void withoutATensionerTheStrandThatLeavesTheDriverIsSlack() {
    assertThat(main(oneCam(ChainSize.UNKNOWN, OptionalDouble.empty())).strands())
        .extracting(Strand::taut)
        .containsExactly(false, true);
  }

  /** One tooth of 36 is 10 degrees; lcm(102, 18, 36) = 612 links = 34 turns of 18 teeth. */
  @Test
  void teethAndRealignNeedNoGeometry() {
    Drive drive = oneCam(ChainSize.UNKNOWN, OptionalDouble.empty());
    assertThat(error(drive, State.reference().reseated(new Seat("main", "cam"), 1), "cam"))
        .isEqualTo(10);
    assertThat(error(drive, State.reference().reseated(new Seat("main", "crank"), 1), "cam"))
        .isEqualTo(-10);
    assertThat(main(drive).realignCrankTurns()).isEqualTo(BigInteger.valueOf(34));
  }

  @Test
  void aMiscountIsJudgedAsInADriveWithGeometry() {
    CountJudge judge = CountJudge.of(Solver.of(ANSWERED), "main");
    CountVerdict verdict =
        judge.judge(Map.of("crank", 51L, "intake", 16L, "exhaust", 51L), Seen.COVER_OFF);
    assertThat(((CountVerdict.Misplaced) verdict).simplest().get(0).moved())
        .containsExactly(new Lay.Moved("exhaust", -1));
  }

  /**
   * The format's description prints 0.755 degrees for the full geometry at 0.2 %, about 305 mm of
   * free run and a pitch radius of 45.9 mm: 305 x 0.002 / 45.9 = 0.01329 = 0.76 degrees.
   */
  @Test
  void stretchByRulerIsTheAnsweredExampleToAHundredth() {
    State worn = State.reference().stretched("main", 0.2);
    assertThat(error(ANSWERED, worn, "exhaust")).isCloseTo(-0.76, within(AS_PRINTED));
    assertThat(error(ANSWERED, worn, "exhaust")).isCloseTo(-0.755, within(0.01));
    assertThat(error(ANSWERED, worn, "intake")).isCloseTo(-1.015, within(0.01));
  }

  /** 300 / 8 pitches x 0.01 / 1.01 of a tooth of 10 degrees = 3.7129 degrees. */
  @Test
  void stretchOfOneRunByHand() {
    Drive drive = oneCam(pitch(8), OptionalDouble.of(300));
    assertThat(error(drive, State.reference().stretched("main", 1), "cam"))
        .isCloseTo(-3.7129, within(5e-5));
  }

  @Test
  void whatIsMissingIsNamedAndNothingIsMadeUp() {
    State worn = State.reference().stretched("main", 0.2);
    Solution noRun = Solver.solve(oneCam(pitch(8), OptionalDouble.empty()), worn);
    assertThat(noRun.shaft("cam")).isEmpty();
    assertThat(noRun.untimed()).containsExactly("cam");
    assertThat(noRun.unknowns())
        .extracting(Unknown::kind)
        .containsExactly(Unknown.Kind.RUN_MISSING, Unknown.Kind.COUNTED_ONLY);
    Solution noPitch = Solver.solve(oneCam(ChainSize.UNKNOWN, OptionalDouble.of(300)), worn);
    assertThat(noPitch.shaft("cam")).isEmpty();
    assertThat(noPitch.unknowns())
        .extracting(Unknown::kind)
        .containsExactly(Unknown.Kind.PITCH_MISSING, Unknown.Kind.COUNTED_ONLY);
  }

  @Test
  void whatNeedsGeometryIsRefused() {
    Chain chain = ANSWERED.chains().get(0);
    assertThat(HeldBack.of(ANSWERED, chain))
        .isEqualTo(new HeldBack.NotPossible(HeldBack.Reason.COUNTED_ONLY));
    assertThat(StretchLimit.of(ANSWERED, chain)).isEmpty();
    assertThat(main(ANSWERED).tensioner()).isEmpty();
    assertThatThrownBy(() -> ANSWERED.inPlace(chain)).hasMessageContaining("has no place");
  }

  @Test
  void countsThatCannotBeAreRefusedWhenBuilt() {
    Chain chain = ANSWERED.chains().get(0);
    for (List<Integer> wrong : List.of(List.of(51, 17, 49), List.of(68, 50), List.<Integer>of())) {
      assertThatThrownBy(
              () ->
                  new Drive(
                      "x",
                      "",
                      Rotation.CLOCKWISE,
                      ANSWERED.shafts(),
                      List.of(chain.withCounts(wrong))))
          .isInstanceOf(IllegalArgumentException.class);
    }
    assertThatThrownBy(() -> chain.withCounts(List.of(101, 0, 17)))
        .hasMessageContaining("lies from 1");
  }
}
