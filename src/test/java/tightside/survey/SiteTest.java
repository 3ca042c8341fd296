package tightside.survey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tightside.drive.Drive;
import tightside.timing.ChainSolution;
import tightside.timing.Solver;
import tightside.timing.State;
import tightside.timing.Strand;

/** A site's paths against the solver's: two ways to the same pitches. */
class SiteTest {

  /** Pitches; what both lose to rounding over a loop. */
  private static final double ROUNDING = 1e-7;

  @ParameterizedTest
  @ValueSource(
      strings = {
        "two-cams-arm",
        "one-cam-no-tensioner",
        "v-six-two-stages",
        "counterclockwise-balancers"
      })
  void strandsAreAsTheSolverHasThem(String model) {
    Drive drive = MeasuredDrives.model(model);
    Unknowns unknowns = new Unknowns(drive);
    double[] at = unknowns.all().stream().mapToDouble(Unknown::start).toArray();
    for (ChainSolution chain : Solver.of(drive).solve(State.reference()).chains()) {
      chain
          .tensioner()
          .ifPresent(
              t -> at[unknowns.place(chain.chain().name() + "/extension")] = t.extensionMm());
      SiteChain path = unknowns.at(at).path(chain.chain().name()).orElseThrow();
      List<StrandPlan> plans = StrandPlan.of(chain.chain());
      assertThat(plans).hasSameSizeAs(chain.strands());
      for (int i = 0; i < plans.size(); i++) {
        Strand strand = chain.strands().get(i);
        assertThat(plans.get(i).from()).isEqualTo(strand.from());
        assertThat(plans.get(i).to()).isEqualTo(strand.to());
        assertThat(plans.get(i).taut()).isEqualTo(strand.taut());
        assertThat(path.pitches(plans.get(i))).isCloseTo(strand.pitches(), within(ROUNDING));
      }
      double all = chain.fit().path().orElseThrow().pitches();
      assertThat(path.pitches()).isCloseTo(all, within(ROUNDING));
    }
  }
}
