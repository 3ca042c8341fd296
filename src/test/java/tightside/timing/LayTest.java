package tightside.timing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import tightside.drive.Chain;
import tightside.drive.Drive;

class LayTest {

  private final Drive drive = Drives.answered();
  private final Chain chain = Drives.chain(drive);

  private static Lay lay(String one, int k, String other, int m) {
    return new Lay("main", Map.of(one, k, other, m));
  }

  @Test
  void bothCamsBehindIsTheCrankAhead() {
    assertThat(lay("intake", -2, "exhaust", -2).fromDriver(chain))
        .isEqualTo(Lay.of("main", "crank", 2).fromDriver(chain));
    assertThat(lay("intake", -2, "exhaust", -2)).isNotEqualTo(Lay.of("main", "crank", 2));
  }

  /** Timing knows no difference between two names of one lay, but for the reading of the crank. */
  @Test
  void twoNamesOfOneLayTimeTheShaftsAlike() {
    Solver solver = Solver.of(drive);
    for (Lay lay : Lays.ofUpToTwoSprockets(chain)) {
      List<ShaftTiming> said = solver.solve(lay.appliedTo(State.reference())).shafts();
      Lay other = lay.fromDriver(chain);
      assertThat(solver.solve(other.appliedTo(State.reference())).shafts()).isEqualTo(said);
    }
  }

  @Test
  void everyLayIsListedOnceAndNoneIsRight() {
    List<Lay> lays = Lays.ofUpToTwoSprockets(chain);
    Set<Lay> distinct = lays.stream().map(l -> l.fromDriver(chain)).collect(Collectors.toSet());
    assertThat(distinct).hasSameSizeAs(lays).doesNotContain(Lay.right("main"));
    assertThat(lays)
        .startsWith(Lay.of("main", "crank", -3))
        .contains(lay("intake", 1, "exhaust", 2));
    assertThat(lays).doesNotContain(lay("intake", 1, "exhaust", 1));
  }

  @Test
  void theArrivingStrandGainsAndTheLeavingOneLoses() {
    List<Strand> strands = Solver.solve(drive, State.reference()).chains().get(0).strands();
    Lay lay = Lay.of("main", "exhaust", 2);
    assertThat(strands.stream().map(lay::linksGained)).containsExactly(0, 2, -2);
  }

  @Test
  void paintOnTheCamsSeesNoJumpAtTheCrank() {
    Set<String> painted = Set.of("intake", "exhaust");
    assertThat(Lay.of("main", "crank", 1).paintStillMeets(painted)).isTrue();
    assertThat(lay("intake", 1, "exhaust", 1).paintStillMeets(painted)).isTrue();
    assertThat(Lay.of("main", "intake", 1).paintStillMeets(painted)).isFalse();
  }

  @Test
  void aLayIsReadFromAStateAndPutBack() {
    State state = State.reference().reseated(new Seat("main", "intake"), -1);
    assertThat(Lay.in(state, "main")).isEqualTo(Lay.of("main", "intake", -1));
    assertThat(Lay.in(state, "second")).isEqualTo(Lay.right("second"));
    assertThat(Lay.of("main", "intake", -1).appliedTo(State.reference())).isEqualTo(state);
    assertThat(Lay.of("main", "intake", 0)).isEqualTo(Lay.right("main"));
  }
}
