package tightside.timing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigInteger;
import org.junit.jupiter.api.Test;
import tightside.drive.ChainFit;

/**
 * The answered example of the model format's description, computed there by two other programs, to
 * the last digit shown.
 */
class AnsweredExampleTest {

  private final Solver solver = Solver.of(Drives.answered());

  private ChainSolution chain(State state) {
    return solver.solve(state).chains().get(0);
  }

  private double error(State state, String shaft) {
    return solver.solve(state).shaft(shaft).orElseThrow().shaftDegrees();
  }

  @Test
  void countsAndPlunger() {
    ChainSolution chain = chain(State.reference());
    assertThat(chain.strands().stream().map(Strand::links)).containsExactly(51L, 17L, 50L);
    assertThat(chain.tensioner().orElseThrow().extensionMm()).isCloseTo(14.23, within(0.005));
    assertThat(chain.realignCrankTurns()).isEqualTo(BigInteger.valueOf(118));
    assertThat(chain.countsTrusted()).isTrue();
  }

  @Test
  void slackFullyPushedBack() {
    ChainFit fit = chain(State.reference().held("main", 0)).fit();
    assertThat(((ChainFit.Solved) fit).slackMm()).isCloseTo(2.48, within(0.005));
  }

  @Test
  void stretchRetardsBothCams() {
    State little = State.reference().stretched("main", 0.2);
    assertThat(error(little, "exhaust")).isCloseTo(-0.755, within(0.0005));
    assertThat(error(little, "intake")).isCloseTo(-1.015, within(0.0005));
    assertThat(chain(little).tensioner().orElseThrow().extensionMm())
        .isCloseTo(17.96, within(0.005));
    State more = State.reference().stretched("main", 0.5);
    assertThat(error(more, "exhaust")).isCloseTo(-1.88, within(0.005));
    assertThat(error(more, "intake")).isCloseTo(-2.53, within(0.005));
    assertThat(chain(more).tensioner().orElseThrow().extensionMm()).isCloseTo(22.45, within(0.005));
  }

  @Test
  void oneToothOnACamIsTenOfItsDegreesAndTwentyOfTheCrank() {
    State state = State.reference().reseated(new Seat("main", "exhaust"), 1);
    ShaftTiming exhaust = solver.solve(state).shaft("exhaust").orElseThrow();
    assertThat(exhaust.shaftDegrees()).isEqualTo(10);
    assertThat(exhaust.crankDegrees()).isEqualTo(20);
    assertThat(error(state, "intake")).isZero();
  }

  @Test
  void oneToothAheadAtTheCrankRetardsBothCams() {
    State state = State.reference().reseated(new Seat("main", "crank"), 1);
    assertThat(error(state, "crank")).isZero();
    assertThat(error(state, "intake")).isEqualTo(-10);
    assertThat(error(state, "exhaust")).isEqualTo(-10);
  }

  @Test
  void newAndRightIsExactlyRight() {
    for (ShaftTiming shaft : solver.solve(State.reference()).shafts()) {
      assertThat(shaft.shaftDegrees()).isZero();
      assertThat(shaft.lag()).isEqualTo(Lag.RIGHT);
    }
  }
}
