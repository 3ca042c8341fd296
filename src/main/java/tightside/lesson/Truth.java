package tightside.lesson;

import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import tightside.drive.Seen;
import tightside.engine.TimedEngine;
import tightside.timing.CountJudge;
import tightside.timing.CountVerdict;
import tightside.timing.Lay;
import tightside.timing.Seat;
import tightside.timing.ShaftTiming;
import tightside.timing.Solution;
import tightside.timing.Solver;
import tightside.timing.State;
import tightside.timing.Strand;

/**
 * What is wrong in a lesson, at the reference position. It never leaves this package but through
 * {@link LessonSheet#open}.
 *
 * @param shafts whose sprocket may be named as the wrong one: more than one where two names mean
 *     the same links
 */
record Truth(
    State state,
    Diagnosis right,
    Set<String> shafts,
    Quantity quantity,
    Margin margin,
    Solution solution,
    Solution ifRight) {

  /**
   * @param state with one sprocket on another tooth, or one chain worn, or nothing wrong
   */
  static Truth of(Setting setting, State state, Quantity quantity, Margin margin) {
    Solver solver = Solver.of(setting.drive());
    Solution solution = solver.solve(state);
    Solution ifRight = solver.solve(State.reference());
    Cause cause = cause(state);
    String shaft = shaft(cause, state, solution);
    double off =
        shaft.isEmpty() ? 0 : solution.shaft(shaft).map(ShaftTiming::crankDegrees).orElse(0.0);
    Diagnosis right =
        new Diagnosis(cause, shaft, Way.of(off), amount(setting, quantity, shaft, solution));
    return new Truth(
        state, right, shafts(solver, state, shaft), quantity, margin, solution, ifRight);
  }

  private static Cause cause(State state) {
    if (!state.reseats().isEmpty()) {
      return Cause.WRONG_TOOTH;
    }
    return state.stretchPercent().isEmpty() ? Cause.NOTHING : Cause.WORN_CHAIN;
  }

  private static String shaft(Cause cause, State state, Solution solution) {
    return switch (cause) {
      case WRONG_TOOTH -> state.reseats().keySet().iterator().next().shaft();
      case WORN_CHAIN -> furthestOff(solution).shaft();
      default -> Diagnosis.NO_SHAFT;
    };
  }

  static ShaftTiming furthestOff(Solution solution) {
    return solution.shafts().stream()
        .max(Comparator.comparingDouble(t -> Math.abs(t.crankDegrees())))
        .orElseThrow();
  }

  private static double amount(
      Setting setting, Quantity quantity, String shaft, Solution solution) {
    return switch (quantity) {
      case CRANK_DEGREES ->
          Math.abs(solution.shaft(shaft).map(ShaftTiming::crankDegrees).orElse(0.0));
      case SHAFT_DEGREES ->
          Math.abs(solution.shaft(shaft).map(ShaftTiming::shaftDegrees).orElse(0.0));
      case CRANK_TURNS -> solution.chains().get(0).realignCrankTurns().doubleValue();
      case COMPRESSION -> timed(setting, solution).squeeze().closed().orElseThrow();
    };
  }

  /** The engine of a lesson with its camshafts as they stand in a solution. */
  static TimedEngine timed(Setting setting, Solution solution) {
    Map<String, Double> advanced = new HashMap<>();
    solution.shafts().forEach(t -> advanced.put(t.shaft(), t.crankDegrees()));
    return new TimedEngine(setting.engine().orElseThrow(), advanced);
  }

  /** Single sprockets that explain the same links, all of them counted. */
  private static Set<String> shafts(Solver solver, State state, String shaft) {
    Set<String> names = new HashSet<>(Set.of(shaft));
    for (Seat seat : state.reseats().keySet()) {
      CountVerdict verdict = judged(solver, state, seat.chain(), Seen.BORESCOPE);
      if (verdict instanceof CountVerdict.Misplaced misplaced) {
        misplaced.simplest().stream()
            .filter(lay -> lay.moved().size() == 1)
            .map(lay -> lay.moved().get(0))
            .map(Lay.Moved::shaft)
            .forEach(names::add);
      }
    }
    return Set.copyOf(names);
  }

  /** What the counts of a chain say that can be made with some access. */
  static CountVerdict judged(Solver solver, State state, String chain, Seen access) {
    CountJudge judge = CountJudge.of(solver, chain);
    Map<String, Long> counted = new HashMap<>();
    for (Strand strand : solver.solve(state).chain(chain).orElseThrow().strands()) {
      if (CountJudge.countable(strand, access)) {
        counted.put(strand.from(), strand.links());
      }
    }
    return judge.judge(counted, access);
  }

  @Override
  public String toString() {
    return "sealed";
  }
}
