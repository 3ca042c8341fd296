package tightside.timing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class CountedLoopTest {

  static LongStream seeds() {
    return LongStream.range(0, 400);
  }

  private static List<List<Long>> simplest(int size, Map<Integer, Long> gained) {
    return new CountedLoop(size, gained)
        .simplest().stream().map(t -> Arrays.stream(t).boxed().toList()).toList();
  }

  @Test
  void nothingGained_everythingRight() {
    assertThat(simplest(3, Map.of(0, 0L, 1, 0L, 2, 0L))).containsExactly(List.of(0L, 0L, 0L));
  }

  @Test
  void strandThatArrivesGains_strandThatLeavesLoses_thatSprocketAlone() {
    assertThat(simplest(3, Map.of(0, 1L, 1, -1L, 2, 0L))).containsExactly(List.of(0L, 1L, 0L));
  }

  @Test
  void bothOthersAhead_driverBehindIsSimpler() {
    assertThat(simplest(3, Map.of(0, 1L, 1, 0L, 2, -1L))).containsExactly(List.of(-1L, 0L, 0L));
  }

  @Test
  void twoSprockets_eitherMayBeNamed() {
    assertThat(simplest(2, Map.of(0, 2L, 1, -2L)))
        .containsExactlyInAnyOrder(List.of(0L, 2L), List.of(-2L, 0L));
  }

  @Test
  void oneStrandOfThree_eitherEndMayHaveMoved_theThirdIsUntied() {
    CountedLoop loop = new CountedLoop(3, Map.of(1, 1L));
    assertThat(loop.tied().stream().map(CountedLoop.Tied::members))
        .containsExactlyInAnyOrder(List.of(0), List.of(1, 2));
    assertThat(simplest(3, Map.of(1, 1L)))
        .containsExactlyInAnyOrder(List.of(0L, 0L, 1L), List.of(0L, -1L, 0L));
  }

  @Test
  void moreThanThreeTeeth_namedAsTwoWithinThree_whereThatCanBe() {
    assertThat(simplest(2, Map.of(0, 5L, 1, -5L)))
        .containsExactlyInAnyOrder(List.of(-3L, 2L), List.of(-2L, 3L));
    assertThat(simplest(2, Map.of(0, 9L, 1, -9L)))
        .containsExactlyInAnyOrder(List.of(-9L, 0L), List.of(0L, 9L));
  }

  @Test
  void wholeLoopThatGains_refused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new CountedLoop(2, Map.of(0, 1L, 1, 0L)))
        .withMessageContaining("can't gain");
  }

  /** Whatever was moved and whatever was counted: every answer accounts for every count. */
  @ParameterizedTest
  @MethodSource("seeds")
  void anyLay_anyCounts_everyAnswerGivesTheCounts(long seed) {
    Random random = new Random(seed);
    int size = 1 + random.nextInt(6);
    long[] lay = random.longs(size, -3, 4).toArray();
    Map<Integer, Long> gained = new LinkedHashMap<>();
    for (int i = 0; i < size; i++) {
      if (random.nextInt(3) > 0) {
        gained.put(i, lay[(i + 1) % size] - lay[i]);
      }
    }
    for (long[] named : new CountedLoop(size, gained).simplest()) {
      gained.forEach(
          (i, gain) ->
              assertThat(named[(i + 1) % size] - named[i]).as("seed %d", seed).isEqualTo(gain));
      assertThat(moved(named)).as("seed %d", seed).isLessThanOrEqualTo(moved(lay));
    }
  }

  private static long moved(long[] teeth) {
    return Arrays.stream(teeth).filter(k -> k != 0).count();
  }
}
