package tightside.timing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tightside.drive.Seen;

class LeastTurnTest {

  private static List<Strand> ring(int size) {
    List<Strand> strands = new ArrayList<>();
    for (int i = 0; i < size; i++) {
      String from = "s" + i;
      String to = "s" + (i + 1) % size;
      strands.add(
          new Strand(
              from, to, i, (i + 1) % size, 10, 10, OptionalDouble.of(0), true, Seen.COVER_OFF));
    }
    return strands;
  }

  /** By relaxing places until none is pushed on: shafts may stand within t of their places. */
  private static boolean fits(List<Double> lack, Set<Integer> movable, double t) {
    int size = lack.size();
    double[] least = new double[size];
    for (int i = 0; i < size; i++) {
      least[i] = movable.contains(i) ? -t : 0;
    }
    for (int round = 0; round <= size + 1; round++) {
      for (int i = 0; i < size; i++) {
        int next = (i + 1) % size;
        least[i] = Math.max(least[i], least[next] + lack.get(i));
      }
    }
    boolean settled = true;
    for (int i = 0; i < size; i++) {
      settled &= least[i] >= least[(i + 1) % size] + lack.get(i) - 1e-9;
      settled &= least[i] <= (movable.contains(i) ? t : 0) + 1e-9;
    }
    return settled;
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8})
  void noLessTurnFitsAndNoMoreIsNeeded(int seed) {
    Random random = new Random(seed);
    int hopeful = 0;
    for (int i = 0; i < 300; i++) {
      int size = 3 + random.nextInt(3);
      Set<Integer> movable = new HashSet<>(Set.of(random.nextInt(size)));
      movable.add(random.nextInt(size));
      List<Double> lack = new ArrayList<>();
      for (int s = 0; s < size; s++) {
        boolean touched = movable.contains(s) || movable.contains((s + 1) % size);
        lack.add(touched ? 16 * random.nextDouble() - 11 : 0);
      }
      Set<String> names = new HashSet<>();
      movable.forEach(m -> names.add("s" + m));
      OptionalDouble turn = LeastTurn.mm(ring(size), lack, 0, names);
      if (turn.isPresent()) {
        hopeful++;
        assertThat(fits(lack, movable, turn.getAsDouble())).as("%s %s", lack, movable).isTrue();
        assertThat(turn.getAsDouble() > 1e-6 && fits(lack, movable, turn.getAsDouble() - 1e-6))
            .as("%s %s", lack, movable)
            .isFalse();
      } else {
        assertThat(fits(lack, movable, 1e6)).as("%s %s", lack, movable).isFalse();
      }
    }
    assertThat(hopeful).isGreaterThan(50);
  }

  @Test
  void oneShaftTurnsByAllThatIsMissing() {
    assertThat(LeastTurn.mm(ring(3), List.of(5.5, -8.0, 0.0), 0.05, Set.of("s1")).orElseThrow())
        .isCloseTo(5.5, within(1e-12));
  }

  @Test
  void whatPlayGivesNeedsNoTurn() {
    assertThat(LeastTurn.mm(ring(3), List.of(0.04, -1.0, 0.0), 0.05, Set.of("s1")).orElseThrow())
        .isZero();
  }

  @Test
  void twoStrandsThatBothLackHelpEachOtherNothing() {
    assertThat(LeastTurn.mm(ring(3), List.of(5.5, -5.0, 0.0), 0.05, Set.of("s1"))).isEmpty();
  }
}
