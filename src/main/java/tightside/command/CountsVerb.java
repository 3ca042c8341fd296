package tightside.command;

import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Command;
import tightside.files.Model;
import tightside.timing.Solution;
import tightside.timing.Solver;
import tightside.timing.State;

@Command(
    name = "counts",
    description = {
      "Says how many links belong between the marks at the reference position, new chain."
    })
final class CountsVerb extends ModelVerb {

  @Override
  Answer answer(Model model) {
    return of(model);
  }

  static Answer of(Model model) {
    Solver solver = Solver.of(model.drive());
    Solution solution = solver.solve(State.reference());
    return new Answer(
        Verdict.of(solution),
        () ->
            Json.object(
                "model", model.drive().name(),
                "chains", SolutionJson.chains(solution),
                "unknown", SolutionJson.unknown(solution)),
        () -> text(model, new SolutionText(solver, solution)));
  }

  private static List<String> text(Model model, SolutionText text) {
    List<String> lines = new ArrayList<>(text.title());
    lines.addAll(text.chains());
    model.measured().ifPresent(m -> lines.addAll(SurveyText.counts(m.adjustment())));
    lines.addAll(text.end());
    return lines;
  }
}
