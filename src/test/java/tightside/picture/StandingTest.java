package tightside.picture;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tightside.timing.Solution;
import tightside.timing.Solver;
import tightside.timing.State;

/** A picture of which only what moves is drawn again, beside one that is drawn as a whole. */
class StandingTest {

  private static final PictureOptions OPTIONS = PictureOptions.labelled(Optional.empty(), 1);

  @ParameterizedTest
  @MethodSource("tightside.picture.Scenes#all")
  void whatMovesOnWhatStandsIsTheWholePicture(Solution solution) {
    Standing standing = DrivePicture.standing(solution, OPTIONS);
    Picture picture = standing.picture();
    assertThat(picture).isEqualTo(DrivePicture.of(solution, OPTIONS));
    State state = solution.state();
    for (double on : new double[] {0, 1.7, 93, 720}) {
      State turned = state.turnedTo(state.crankDegrees() + on, state.arrived());
      Solution then = Solver.solve(solution.drive(), turned);
      Picture moved = DrivePicture.moved(standing, then, OPTIONS);
      assertThat(moved.shapes()).isEqualTo(DrivePicture.of(then, OPTIONS.withoutWords()).shapes());
      assertThat(moved.bounds()).isEqualTo(picture.bounds());
      assertThat(moved.lineMm()).isEqualTo(picture.lineMm());
    }
  }
}
