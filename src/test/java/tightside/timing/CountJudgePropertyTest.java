package tightside.timing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tightside.drive.Seen;

/** Every lay of up to two sprockets by up to three teeth, against the solver that lays it. */
class CountJudgePropertyTest {

  private static final List<String> SHAFTS = List.of("crank", "intake", "exhaust");
  private static final Solver SOLVER = Solver.of(Drives.answered());
  private static final CountJudge JUDGE = CountJudge.of(SOLVER, "main");

  static Stream<Map<String, Integer>> lays() {
    Set<Map<String, Integer>> lays = new HashSet<>();
    for (String first : SHAFTS) {
      for (String second : SHAFTS) {
        for (int i = 0; i < 49; i++) {
          Map<String, Integer> lay = new HashMap<>(Map.of(first, i % 7 - 3));
          lay.put(second, i / 7 - 3);
          lays.add(Map.copyOf(lay));
        }
      }
    }
    return lays.stream();
  }

  private static Solution laid(Map<String, Integer> lay) {
    State state = State.reference();
    for (Map.Entry<String, Integer> moved : lay.entrySet()) {
      state = state.reseated(new Seat("main", moved.getKey()), moved.getValue());
    }
    return SOLVER.solve(state);
  }

  private static Map<String, Long> counts(Solution solution, int which) {
    List<Strand> strands = solution.chains().get(0).strands();
    Map<String, Long> counts = new HashMap<>();
    IntStream.range(0, strands.size())
        .filter(i -> (which >> i & 1) != 0)
        .forEach(i -> counts.put(strands.get(i).from(), strands.get(i).links()));
    return counts;
  }

  @ParameterizedTest
  @MethodSource("lays")
  void allCounted_anEquivalentLayIsNamed(Map<String, Integer> lay) {
    Solution truth = laid(lay);
    List<Lay> named = named(JUDGE.judge(counts(truth, 7), Seen.COVER_OFF));
    List<ShaftTiming> off = truth.shafts().stream().filter(s -> s.lag() != Lag.RIGHT).toList();
    assertThat(named).isNotEmpty().allSatisfy(n -> assertThat(n.off()).isEqualTo(off));
    long moved = lay.values().stream().filter(k -> k != 0).count();
    assertThat(named.get(0).moved()).hasSizeLessThanOrEqualTo((int) moved);
  }

  @ParameterizedTest
  @MethodSource("lays")
  void anyCounted_theTrueLayDiffersFromANamedOneOnlyByWhatIsUnproved(Map<String, Integer> lay) {
    for (int which = 0; which < 8; which++) {
      CountVerdict verdict = JUDGE.judge(counts(laid(lay), which), Seen.COVER_OFF);
      for (Lay named : named(verdict)) {
        for (List<String> group : groups(verdict.unproved())) {
          assertThat(group.stream().map(s -> lay.getOrDefault(s, 0) - named.teethOf(s)).distinct())
              .as("%s, counted %d, group %s", lay, which, group)
              .hasSize(1);
        }
      }
    }
  }

  private static List<Lay> named(CountVerdict verdict) {
    if (verdict instanceof CountVerdict.Misplaced misplaced) {
      return misplaced.simplest();
    }
    assertThat(verdict).isInstanceOfAny(CountVerdict.Fits.class, CountVerdict.NothingCounted.class);
    return List.of(new Lay(List.of(), List.of()));
  }

  /** The groups that may have moved together, and the rest, which hangs on the driving sprocket. */
  private static List<List<String>> groups(Unproved unproved) {
    List<List<String>> groups = new ArrayList<>(unproved.together());
    groups.add(
        SHAFTS.stream()
            .filter(s -> unproved.together().stream().noneMatch(g -> g.contains(s)))
            .toList());
    return groups;
  }
}
