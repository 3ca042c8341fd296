package tightside.lesson;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Test;
import tightside.timing.ChainSolution;
import tightside.timing.Solution;
import tightside.timing.State;
import tightside.words.Numbers;

/** What a class reads of a plunger can be worked out again from what else it reads. */
class WornFiguresTest {

  @Test
  void howMuchLongerIsTheDifferenceOfWhatIsReadNewAndWorn() {
    Setting setting = Lessons.setting("two-cams-arm");
    int rounded = 0;
    for (double percent = 0.05; percent < 0.5; percent += 0.005) {
      State worn = State.reference().stretched("main", percent);
      Truth truth = Truth.of(setting, worn, Quantity.CRANK_DEGREES, Margin.EXACT);
      Map<String, String> facts = new Facts(setting, truth).all();
      double now = Double.parseDouble(facts.get("extension"));
      double fresh = Double.parseDouble(Numbers.fixed(extension(truth.ifRight()), 1));
      assertThat(facts.get("longer")).isEqualTo(Numbers.fixed(now - fresh, 1));
      double exact = extension(truth.solution()) - extension(truth.ifRight());
      rounded += Numbers.fixed(exact, 1).equals(facts.get("longer")) ? 0 : 1;
    }
    assertThat(rounded).as("states in which rounding tells").isPositive();
  }

  private static double extension(Solution solution) {
    ChainSolution main = solution.chain("main").orElseThrow();
    return main.tensioner().orElseThrow().extensionMm();
  }
}
