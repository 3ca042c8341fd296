package tightside.timing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import java.util.function.ToDoubleFunction;
import java.util.stream.LongStream;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tightside.drive.Chain;
import tightside.drive.ChainFit;
import tightside.drive.Drive;
import tightside.drive.Sprocket;

/** What holds for every drive, tried on random ones. */
class DrivePropertiesTest {

  /** mm, degrees, pitches: some 1e-13 of rounding, grown by short lever arms. */
  private static final double SAME = 1e-7;

  /**
   * mm: where the tensioner only just comes to bear, the path grows with the square of what the
   * plunger does, so that 1e-13 in length is 1e-6 in extension.
   */
  private static final double SAME_EXTENSION = 1e-5;

  static LongStream seeds() {
    return LongStream.range(0, 150);
  }

  /** New, stretched, reseated by some teeth everywhere, and both. */
  private static List<State> states(Drive drive) {
    State wrong = reseated(State.reference(), drive, 1);
    State worn = stretched(drive, 0.3);
    return List.of(State.reference(), worn, wrong, reseated(worn, drive, 1));
  }

  private static State stretched(Drive drive, double percent) {
    State state = State.reference();
    for (Chain chain : drive.chains()) {
      state = state.stretched(chain.name(), percent);
    }
    return state;
  }

  /** Every sprocket by another number of teeth from -2 to 3, times a factor. */
  private static State reseated(State from, Drive drive, int times) {
    State state = from;
    int teeth = -2;
    for (Chain chain : drive.chains()) {
      for (Sprocket sprocket : chain.sprockets()) {
        state = state.reseated(new Seat(chain.name(), sprocket.shaft()), teeth * times);
        teeth = teeth == 3 ? -2 : teeth + 1;
      }
    }
    return state;
  }

  private static double error(Solution solution, String shaft) {
    return solution.shaft(shaft).orElseThrow().shaftDegrees();
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void countsAddUpToTheLinksAndPitchesToThePath(long seed) {
    Drive drive = RandomDrives.of(seed);
    Solver solver = Solver.of(drive);
    for (State state : states(drive)) {
      for (ChainSolution chain : solver.solve(state).chains()) {
        if (chain.strands().isEmpty()) {
          assertThat(chain.fit().path()).as("no strands without a path").isEmpty();
          continue;
        }
        assertThat(chain.strands().stream().mapToLong(Strand::links).sum())
            .isEqualTo(chain.chain().links());
        assertThat(chain.strands().stream().mapToDouble(Strand::pitches).sum())
            .isCloseTo(chain.fit().path().orElseThrow().pitches(), within(SAME));
      }
    }
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void aReseatAndTheSameOneBackIsNothing(long seed) {
    Drive drive = RandomDrives.of(seed);
    Solver solver = Solver.of(drive);
    Solution right = solver.solve(State.reference());
    for (ShaftTiming shaft : right.shafts()) {
      Seat seat = new Seat(drive.chainsOn(shaft.shaft()).get(0).name(), shaft.shaft());
      State there = State.reference().reseated(seat, 2);
      assertThat(there).isNotEqualTo(State.reference());
      assertThat(solver.solve(there.reseated(seat, 0))).isEqualTo(right);
    }
    Solution ahead = solver.solve(reseated(State.reference(), drive, 1));
    Solution behind = solver.solve(reseated(State.reference(), drive, -1));
    for (ShaftTiming shaft : right.shafts()) {
      assertThat(shaft.shaftDegrees()).isZero();
      assertThat(error(ahead, shaft.shaft()) + error(behind, shaft.shaft()))
          .isCloseTo(0, within(SAME));
    }
    for (int c = 0; c < right.chains().size(); c++) {
      List<Strand> strands = right.chains().get(c).strands();
      for (int s = 0; s < strands.size(); s++) {
        assertThat(
                ahead.chains().get(c).strands().get(s).links()
                    + behind.chains().get(c).strands().get(s).links())
            .isEqualTo(2 * strands.get(s).links());
      }
    }
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void seenFromTheBackItIsTheSame(long seed) {
    assertSame(RandomDrives.of(seed), Redrawn.mirror());
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void movedTurnedAndScaledItIsTheSame(long seed) {
    Random random = new Random(seed);
    Vector2D shift = Vector2D.of(random.nextInt(2000) - 1000, random.nextInt(2000) - 1000);
    assertSame(
        RandomDrives.of(seed),
        Redrawn.similar(360 * random.nextDouble(), 0.5 + 2 * random.nextDouble(), shift));
  }

  private static void assertSame(Drive drive, Redrawn redrawn) {
    Solver one = Solver.of(drive);
    Solver other = Solver.of(redrawn.drive(drive));
    for (State state : states(drive)) {
      Solution a = one.solve(state);
      Solution b = other.solve(state);
      assertThat(b.shafts()).hasSameSizeAs(a.shafts());
      for (ShaftTiming shaft : a.shafts()) {
        assertThat(error(b, shaft.shaft()))
            .as("error of %s in %s", shaft.shaft(), state)
            .isCloseTo(shaft.shaftDegrees(), within(SAME));
      }
      for (int c = 0; c < a.chains().size(); c++) {
        assertSame(a.chains().get(c), b.chains().get(c), redrawn.scale());
      }
    }
  }

  private static void assertSame(ChainSolution a, ChainSolution b, double scale) {
    assertThat(b.fit().getClass()).isEqualTo(a.fit().getClass());
    assertThat(b.realignCrankTurns()).isEqualTo(a.realignCrankTurns());
    assertThat(b.strands().stream().map(Strand::links).toList())
        .isEqualTo(a.strands().stream().map(Strand::links).toList());
    ToDoubleFunction<ChainSolution> extension =
        c -> c.tensioner().map(TensionerReading::extensionMm).orElse(0.0);
    assertThat(extension.applyAsDouble(b) / scale)
        .isCloseTo(extension.applyAsDouble(a), within(SAME_EXTENSION));
    assertThat(overMm(b.fit()) / scale).isCloseTo(overMm(a.fit()), within(SAME));
    for (int s = 0; s < a.strands().size(); s++) {
      assertThat(b.strands().get(s).pitches())
          .isCloseTo(a.strands().get(s).pitches(), within(SAME));
    }
  }

  private static double overMm(ChainFit fit) {
    if (fit instanceof ChainFit.Solved solved) {
      return solved.slackMm();
    }
    return fit instanceof ChainFit.OutOfTravel out ? out.slackLeftMm() : 0;
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void moreStretchNeverMeansLessExtension(long seed) {
    Drive drive = RandomDrives.of(seed);
    Solver solver = Solver.of(drive);
    for (Chain chain : drive.chains()) {
      double extension = 0;
      double over = 0;
      for (double percent : new double[] {0, 0.1, 0.2, 0.4, 0.8}) {
        ChainSolution worn =
            solver
                .solve(State.reference().stretched(chain.name(), percent))
                .chain(chain.name())
                .orElseThrow();
        if (worn.fit().path().isEmpty()) {
          break;
        }
        double now = worn.tensioner().map(TensionerReading::extensionMm).orElse(0.0);
        assertThat(now).as("extension at %s %%", percent).isGreaterThanOrEqualTo(extension);
        assertThat(overMm(worn.fit())).as("slack at %s %%", percent).isGreaterThanOrEqualTo(over);
        extension = now;
        over = overMm(worn.fit());
      }
    }
  }

  /** A reseat moves no tensioner, and its degrees add to those of stretch. */
  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void stretchAndReseatsAddUp(long seed) {
    Drive drive = RandomDrives.of(seed);
    Solver solver = Solver.of(drive);
    Solution worn = solver.solve(stretched(drive, 0.3));
    Solution wrong = solver.solve(reseated(State.reference(), drive, 1));
    Solution both = solver.solve(reseated(stretched(drive, 0.3), drive, 1));
    for (ShaftTiming shaft : both.shafts()) {
      if (worn.shaft(shaft.shaft()).isPresent()) {
        assertThat(shaft.shaftDegrees())
            .isCloseTo(error(worn, shaft.shaft()) + error(wrong, shaft.shaft()), within(SAME));
      }
    }
    for (ChainSolution chain : both.chains()) {
      String name = chain.chain().name();
      assertThat(chain.fit()).isEqualTo(worn.chain(name).orElseThrow().fit());
      assertThat(wrong.chain(name).orElseThrow().fit())
          .isEqualTo(solver.solve(State.reference()).chain(name).orElseThrow().fit());
    }
  }

  /** In whole teeth, as the model format says it: for its own shaft, and for every other. */
  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void aReseatTurnsWhatItShould(long seed) {
    Drive drive = RandomDrives.of(seed);
    Solver solver = Solver.of(drive);
    Chain chain = drive.chains().get(0);
    for (Sprocket wrong : chain.sprockets()) {
      boolean driving = wrong.equals(chain.driver());
      Solution solution =
          solver.solve(State.reference().reseated(new Seat(chain.name(), wrong.shaft()), 3));
      for (Sprocket sprocket : chain.sprockets()) {
        if (solution.shaft(sprocket.shaft()).isPresent()) {
          boolean itself = sprocket.equals(wrong);
          double teeth = driving ? (itself ? 0 : -3) : itself ? 3 : 0;
          assertThat(error(solution, sprocket.shaft()))
              .isCloseTo(teeth * 360 / sprocket.teeth(), within(SAME));
        }
      }
    }
  }
}
