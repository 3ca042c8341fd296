package tightside.timing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import tightside.drive.Chain;
import tightside.drive.Drive;

class ReseatingTest {

  private final Drive drive = Drives.answered();
  private final Chain chain = Drives.chain(drive);

  private static Reseating lay(String one, int k, String other, int m) {
    return new Reseating("main", Map.of(one, k, other, m));
  }

  @Test
  void bothCamsBehindIsTheCrankAhead() {
    assertThat(lay("intake", -2, "exhaust", -2).fromDriver(chain))
        .isEqualTo(Reseating.of("main", "crank", 2).fromDriver(chain));
    assertThat(lay("intake", -2, "exhaust", -2)).isNotEqualTo(Reseating.of("main", "crank", 2));
  }

  /** Timing knows no difference between two names of one lay, but for the reading of the crank. */
  @Test
  void twoNamesOfOneLayTimeTheShaftsAlike() {
    Solver solver = Solver.of(drive);
    for (Reseating lay : Reseatings.ofUpToTwoSprockets(chain)) {
      List<ShaftTiming> said = solver.solve(lay.appliedTo(State.reference())).shafts();
      Reseating other = lay.fromDriver(chain);
      assertThat(solver.solve(other.appliedTo(State.reference())).shafts()).isEqualTo(said);
    }
  }

  @Test
  void everyLayIsListedOnceAndNoneIsRight() {
    List<Reseating> lays = Reseatings.ofUpToTwoSprockets(chain);
    Set<Reseating> distinct =
        lays.stream().map(l -> l.fromDriver(chain)).collect(Collectors.toSet());
    assertThat(distinct).hasSameSizeAs(lays).doesNotContain(Reseating.right("main"));
    assertThat(lays)
        .startsWith(Reseating.of("main", "crank", -3))
        .contains(lay("intake", 1, "exhaust", 2));
    assertThat(lays).doesNotContain(lay("intake", 1, "exhaust", 1));
  }

  @Test
  void theArrivingStrandGainsAndTheLeavingOneLoses() {
    List<Strand> strands = Solver.solve(drive, State.reference()).chains().get(0).strands();
    Reseating lay = Reseating.of("main", "exhaust", 2);
    assertThat(strands.stream().map(lay::linksGained)).containsExactly(0, 2, -2);
  }

  @Test
  void paintOnTheCamsSeesNoJumpAtTheCrank() {
    Set<String> painted = Set.of("intake", "exhaust");
    assertThat(Reseating.of("main", "crank", 1).paintStillMeets(painted)).isTrue();
    assertThat(lay("intake", 1, "exhaust", 1).paintStillMeets(painted)).isTrue();
    assertThat(Reseating.of("main", "intake", 1).paintStillMeets(painted)).isFalse();
  }

  @Test
  void aLayIsReadFromAStateAndPutBack() {
    State state = State.reference().reseated(new Seat("main", "intake"), -1);
    assertThat(Reseating.in(state, "main")).isEqualTo(Reseating.of("main", "intake", -1));
    assertThat(Reseating.in(state, "second")).isEqualTo(Reseating.right("second"));
    assertThat(Reseating.of("main", "intake", -1).appliedTo(State.reference())).isEqualTo(state);
    assertThat(Reseating.of("main", "intake", 0)).isEqualTo(Reseating.right("main"));
  }
}
