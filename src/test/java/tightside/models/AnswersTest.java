package tightside.models;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import tightside.drive.ChainFit;
import tightside.drive.Drive;
import tightside.files.ModelReader;
import tightside.geometry.Rotation;
import tightside.timing.Seat;
import tightside.timing.Solution;
import tightside.timing.Solver;
import tightside.timing.State;
import tightside.timing.Strand;

/** The answers that models/README.md gives to its own questions. */
class AnswersTest {

  private static Drive drive(String file) {
    return ModelReader.read(PrintedChain.FOLDER.resolve(file)).model().orElseThrow().drive();
  }

  private static double error(Solution solution, String shaft) {
    return solution.shaft(shaft).orElseThrow().shaftDegrees();
  }

  @Test
  void aThirdOfAPercentBringsThePlungerToTwentyMillimetres() {
    Solution worn =
        Solver.solve(drive("two-cams-arm.yaml"), State.reference().stretched("main", 1 / 3.0));
    assertThat(worn.chains().get(0).tensioner().orElseThrow().extensionMm())
        .isCloseTo(20, within(0.5));
    assertThat(error(worn, "exhaust")).isNegative();
    assertThat(error(worn, "intake")).isLessThan(error(worn, "exhaust"));
  }

  @Test
  void theFirstChainMakesTheLeftBankTwiceAsLateAsTheRight() {
    Drive six = drive("v-six-two-stages.yaml");
    Solution worn = Solver.solve(six, State.reference().stretched("first", 0.3));
    assertThat(error(worn, "right-intake")).isNegative().isEqualTo(error(worn, "right-exhaust"));
    assertThat(error(worn, "left-intake")).isEqualTo(error(worn, "left-exhaust"));
    assertThat(error(worn, "left-intake") / error(worn, "right-intake")).isCloseTo(2, within(0.05));
    Solution second = Solver.solve(six, State.reference().stretched("left", 0.3));
    assertThat(error(second, "left-intake")).isNegative();
    assertThat(error(second, "right-intake")).isZero();
  }

  @Test
  void withoutATensionerWearShowsAsSlack() {
    Drive one = drive("one-cam-no-tensioner.yaml");
    Solution worn = Solver.solve(one, State.reference().stretched("main", 0.5));
    assertThat(((ChainFit.Solved) worn.chains().get(0).fit()).slackMm())
        .isCloseTo(2.4, within(0.05));
    assertThat(error(worn, "cam")).isCloseTo(-0.5, within(0.05));
  }

  @Test
  void theBalancerTurnedByTheChainsOutsideRunsBackwards() {
    Drive four = drive("counterclockwise-balancers.yaml");
    assertThat(four.gearing().rotationOf("left-balancer")).isEqualTo(Rotation.CLOCKWISE);
    Solution ahead =
        Solver.solve(four, State.reference().reseated(new Seat("balance", "left-balancer"), 1));
    assertThat(ahead.chain("balance").orElseThrow().strands())
        .extracting(Strand::links)
        .containsExactly(25L, 25L, 50L);
    assertThat(error(ahead, "left-balancer")).isEqualTo(20);
  }
}
