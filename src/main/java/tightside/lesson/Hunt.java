package tightside.lesson;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.ListSampler;
import org.apache.commons.rng.simple.RandomSource;
import tightside.drive.Chain;
import tightside.drive.Seen;
import tightside.drive.Sprocket;
import tightside.timing.Lay;
import tightside.timing.Seat;
import tightside.timing.Solver;
import tightside.timing.State;

/**
 * Random faults from a seed: five variants that differ and are as hard as each other, so that
 * neighbours can't copy and no one is better off. Each can be told for certain by what can be seen.
 *
 * @param variants the five faults
 * @param difficulty of every one of them
 */
public record Hunt(
    Setting setting, Seen access, long seed, List<State> variants, Difficulty difficulty) {

  public static final int VARIANTS = 5;

  /** Stretch that a worn chain may have, percent, in steps in which a plunger can be read. */
  private static final double LEAST_STRETCH = 0.15;

  private static final double STRETCH_STEP = 0.05;
  private static final int STRETCHES = 10;

  public Hunt {
    variants = List.copyOf(variants);
  }

  /**
   * Draws the faults; the same seed gives the same.
   *
   * @param access how far the class can look
   * @return nothing where too little can be seen of the drive for five faults of one difficulty
   */
  public static Optional<Hunt> drawn(Setting setting, Seen access, long seed) {
    UniformRandomProvider random = RandomSource.XO_RO_SHI_RO_128_PP.create(seed);
    List<Map.Entry<Difficulty, List<State>>> groups =
        byDifficulty(setting, access).entrySet().stream()
            .filter(e -> e.getKey().ambiguity() == 1 && e.getValue().size() >= VARIANTS)
            .toList();
    if (groups.isEmpty()) {
      return Optional.empty();
    }
    Map.Entry<Difficulty, List<State>> group = groups.get(random.nextInt(groups.size()));
    List<State> shuffled = new ArrayList<>(group.getValue());
    ListSampler.shuffle(random, shuffled);
    return Optional.of(
        new Hunt(setting, access, seed, shuffled.subList(0, VARIANTS), group.getKey()));
  }

  private static Map<Difficulty, List<State>> byDifficulty(Setting setting, Seen access) {
    Solver solver = Solver.of(setting.drive());
    Map<Difficulty, List<State>> groups = new LinkedHashMap<>();
    for (State state : candidates(setting)) {
      groups
          .computeIfAbsent(Difficulty.of(solver, state, access), d -> new ArrayList<>())
          .add(state);
    }
    return groups;
  }

  /** Every single wrong tooth of a driven sprocket, and every single worn chain. */
  private static List<State> candidates(Setting setting) {
    List<State> states = new ArrayList<>();
    for (Chain chain : setting.drive().chains()) {
      chain.sprockets().stream()
          .skip(1)
          .filter(s -> s.mark().isPresent())
          .map(Sprocket::shaft)
          .forEach(shaft -> teeth(states, new Seat(chain.name(), shaft)));
      if (chain.tensioner().isPresent()) {
        for (int i = 0; i < STRETCHES; i++) {
          double percent = Math.round(100 * (LEAST_STRETCH + i * STRETCH_STEP)) / 100.0;
          states.add(State.reference().stretched(chain.name(), percent));
        }
      }
    }
    return states;
  }

  private static void teeth(List<State> states, Seat seat) {
    for (int teeth = -Lay.MOST_TEETH; teeth <= Lay.MOST_TEETH; teeth++) {
      if (teeth != 0) {
        states.add(State.reference().reseated(seat, teeth));
      }
    }
  }

  /**
   * @param variant from 1 to {@link #VARIANTS}
   */
  public LessonSheet sheet(int variant) {
    LessonSheet.Outline outline =
        new LessonSheet.Outline(
            "hunt",
            "Find the fault, seed %d, variant %d".formatted(seed, variant),
            access,
            false,
            Optional.empty(),
            Optional.empty());
    Truth truth =
        Truth.of(setting, variants.get(variant - 1), Quantity.CRANK_DEGREES, new Margin(0.5, 0.4));
    return new LessonSheet(outline, setting, truth);
  }

  /** In one sentence, why there is no hunt on a drive. */
  public static String tooLittle(Seen access) {
    return ("Too little can be seen of this drive %s to tell five faults apart; look further in, or"
            + " take a drive with more marks.")
        .formatted(Observations.with(access));
  }

  @Override
  public String toString() {
    return "hunt from seed " + seed;
  }
}
