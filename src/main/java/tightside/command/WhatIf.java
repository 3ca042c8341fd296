package tightside.command;

import java.util.ArrayList;
import java.util.List;
import tightside.files.Model;
import tightside.timing.Solution;
import tightside.timing.Solver;
import tightside.timing.State;

/** The answer to what a state does to a drive: the shafts first, then the chains. */
final class WhatIf {

  private WhatIf() {}

  static Answer of(Model model, State state) {
    Solver solver = Solver.of(model.drive());
    Solution solution = solver.solve(state);
    return new Answer(
        Verdict.of(solution),
        () ->
            Json.object(
                "model", model.drive().name(),
                "shafts", SolutionJson.shafts(solution),
                "chains", SolutionJson.chains(solution),
                "unknown", SolutionJson.unknown(solution)),
        () -> text(new SolutionText(solver, solution), solver.solve(State.reference())));
  }

  private static List<String> text(SolutionText text, Solution right) {
    List<String> lines = new ArrayList<>(text.title());
    lines.addAll(text.shafts());
    lines.addAll(text.chainsAgainst(right));
    lines.addAll(text.end());
    return lines;
  }
}
