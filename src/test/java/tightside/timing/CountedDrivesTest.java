package tightside.timing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tightside.drive.Chain;
import tightside.drive.Drive;
import tightside.drive.Seen;
import tightside.drive.Sprocket;

/** A drive known by its counts says of them what the same drive says with all its geometry. */
class CountedDrivesTest {

  private static final double SAME = 1e-9;

  /**
   * What the run's own swing may take from an angle told by ruler, of that angle: to first order
   * the square of what the pitch radii differ by, or add up to, over the length of the run; and
   * half of as much again for what that leaves out.
   */
  private static final double SWING = 1.5;

  /** Crank degrees; the stretch squared, and what faces on the pulled side bend. */
  private static final double OTHERWISE = 0.02;

  static LongStream seeds() {
    return LongStream.range(0, 40);
  }

  private static State reseated(Drive drive, Random random) {
    State state = State.reference();
    for (Chain chain : drive.chains()) {
      for (Sprocket sprocket : chain.sprockets()) {
        state = state.reseated(new Seat(chain.name(), sprocket.shaft()), random.nextInt(7) - 3);
      }
    }
    return state;
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void reseatsCountsAndRealignAreTheSame(long seed) {
    Drive full = RandomDrives.of(seed);
    Drive counted = Counted.only(full);
    State state = reseated(full, new Random(seed));
    Solution there = Solver.solve(full, state);
    Solution here = Solver.solve(counted, state);
    assertThat(here.shafts()).hasSameSizeAs(there.shafts());
    for (ShaftTiming shaft : there.shafts()) {
      assertThat(here.shaft(shaft.shaft()).orElseThrow().shaftDegrees())
          .as(shaft.shaft())
          .isCloseTo(shaft.shaftDegrees(), within(SAME));
    }
    for (ChainSolution chain : there.chains()) {
      ChainSolution other = here.chain(chain.chain().name()).orElseThrow();
      assertThat(other.strands())
          .extracting(Strand::from, Strand::to, Strand::links, Strand::taut, Strand::seen)
          .isEqualTo(
              chain.strands().stream()
                  .map(
                      s ->
                          org.assertj.core.groups.Tuple.tuple(
                              s.from(), s.to(), s.links(), s.taut(), s.seen()))
                  .toList());
      assertThat(other.realignCrankTurns()).isEqualTo(chain.realignCrankTurns());
      assertThat(other.travel()).isEqualTo(chain.travel());
    }
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void countsAreJudgedAlike(long seed) {
    Drive full = RandomDrives.of(seed);
    Drive counted = Counted.only(full);
    Random random = new Random(seed);
    for (Chain chain : full.chains()) {
      CountJudge there = CountJudge.of(Solver.of(full), chain.name());
      CountJudge here = CountJudge.of(Solver.of(counted), chain.name());
      Map<String, Long> links = new HashMap<>();
      for (Strand strand : there.strands()) {
        links.put(
            strand.from(),
            Math.min(chain.links(), Math.max(1, strand.links() + random.nextInt(5) - 2)));
      }
      CountVerdict verdict = here.judge(links, Seen.BORESCOPE);
      CountVerdict other = there.judge(links, Seen.BORESCOPE);
      assertThat(verdict).hasSameClassAs(other);
      if (verdict instanceof CountVerdict.Misplaced misplaced) {
        assertThat(misplaced.simplest().stream().map(Lay::moved).toList())
            .isEqualTo(
                ((CountVerdict.Misplaced) other).simplest().stream().map(Lay::moved).toList());
      }
    }
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void stretchByRulerIsStretchByGeometryButForTheSwingOfTheRuns(long seed) {
    Drive full = RandomDrives.of(seed);
    Drive counted = Counted.withRuns(full);
    State worn = State.reference();
    for (Chain chain : full.chains()) {
      worn = worn.stretched(chain.name(), 0.3);
    }
    Solution there = Solver.solve(full, worn);
    Solution here = Solver.solve(counted, worn);
    double swing = counted.chains().stream().mapToDouble(CountedDrivesTest::swing).max().orElse(0);
    for (ShaftTiming shaft : there.shafts()) {
      ShaftTiming other = here.shaft(shaft.shaft()).orElseThrow();
      assertThat(other.crankDegrees())
          .as(shaft.shaft())
          .isCloseTo(
              shaft.crankDegrees(),
              within(SWING * swing * Math.abs(other.crankDegrees()) + OTHERWISE));
    }
  }

  /** The largest share that the swing of a run takes from it. */
  private static double swing(Chain chain) {
    List<Sprocket> all = chain.sprockets();
    double most = 0;
    for (int i = 0; i < all.size(); i++) {
      Sprocket from = all.get(i);
      Sprocket to = all.get((i + 1) % all.size());
      int side = from.contact() == to.contact() ? 1 : -1;
      double difference = (from.teeth() - side * to.teeth()) * chain.pitchMm() / (2 * Math.PI);
      most = Math.max(most, Math.pow(difference / from.straightMm().orElseThrow(), 2));
    }
    return most;
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void newChainsHaveNoErrorAtAll(long seed) {
    Solution solution = Solver.solve(Counted.only(RandomDrives.of(seed)), State.reference());
    assertThat(solution.shafts()).allMatch(s -> s.shaftDegrees() == 0);
  }
}
