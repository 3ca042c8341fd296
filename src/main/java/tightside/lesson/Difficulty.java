package tightside.lesson;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import tightside.drive.Seen;
import tightside.timing.ChainSolution;
import tightside.timing.CountJudge;
import tightside.timing.CountVerdict;
import tightside.timing.Lag;
import tightside.timing.Lay;
import tightside.timing.Solution;
import tightside.timing.Solver;
import tightside.timing.State;
import tightside.timing.TensionerReading;

/**
 * How hard a fault is to find: two faults with the same of all three are as hard as each other.
 *
 * @param kind of fault
 * @param visibleStrands of the whole drive that can be counted
 * @param ambiguity simplest explanations, different in what they do to the shafts, of what can be
 *     counted and read: 1 where it can be told for certain, 0 where nothing shows it
 */
public record Difficulty(Cause kind, int visibleStrands, int ambiguity) {

  /** A plunger that stands no further from its place than this is read as being there, mm. */
  private static final double READ_MM = 1;

  static Difficulty of(Solver solver, State state, Seen access) {
    Solution solution = solver.solve(state);
    int visible =
        (int)
            solution.chains().stream()
                .flatMap(c -> c.strands().stream())
                .filter(s -> CountJudge.countable(s, access))
                .count();
    boolean worn = !state.stretchPercent().isEmpty();
    return new Difficulty(
        worn ? Cause.WORN_CHAIN : Cause.WRONG_TOOTH,
        visible,
        worn ? plungers(solver, solution, access) : lays(solver, state, access));
  }

  /** Lays that the counts of the chain can't tell apart and that leave shafts differently. */
  private static int lays(Solver solver, State state, Seen access) {
    String chain = state.reseats().keySet().iterator().next().chain();
    CountVerdict verdict = Truth.judged(solver, state, chain, access);
    if (!(verdict instanceof CountVerdict.Misplaced misplaced)
        || !misplaced.unproved().together().isEmpty()) {
      return verdict instanceof CountVerdict.Misplaced m ? 1 + m.unproved().together().size() : 0;
    }
    Set<List<?>> different =
        misplaced.simplest().stream().map(Lay::off).collect(Collectors.toSet());
    return different.size();
  }

  /** Worn chains are told by their plungers: as many as can be seen to stand off. */
  private static int plungers(Solver solver, Solution worn, Seen access) {
    Solution fresh = solver.solve(State.reference());
    boolean late =
        worn.shafts().stream().noneMatch(t -> t.lag() == Lag.ADVANCED)
            && worn.chains().stream().allMatch(Difficulty::taut);
    return !late
        ? 0
        : (int)
            worn.chains().stream()
                .filter(c -> shows(c, fresh.chain(c.chain().name()).orElseThrow(), access))
                .count();
  }

  private static boolean taut(ChainSolution chain) {
    return chain.tensioner().map(TensionerReading::taut).orElse(true);
  }

  private static boolean shows(ChainSolution worn, ChainSolution fresh, Seen access) {
    return worn.tensioner()
        .filter(t -> t.seen() != Seen.NEVER && t.seen().compareTo(access) <= 0)
        .filter(t -> t.extensionMm() - fresh.tensioner().orElseThrow().extensionMm() > READ_MM)
        .isPresent();
  }
}
