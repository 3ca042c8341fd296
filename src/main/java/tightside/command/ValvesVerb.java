package tightside.command;

import java.util.List;
import java.util.Map;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import tightside.engine.Engine;
import tightside.engine.TimedEngine;
import tightside.files.Model;

@Command(
    name = "valves",
    description = {
      "Says when the valves open, how near they come to the pistons, what is left of",
      "compression, and what every tooth of a camshaft would do to them.",
      "The exit code is 1 where a valve touches its piston, as the camshafts stand or",
      "anywhere in the travel of a cam phaser."
    })
final class ValvesVerb extends ModelVerb {

  @Parameters(
      index = "1..*",
      arity = "0..*",
      paramLabel = "SHAFT=CRANKDEG",
      description = {
        "A camshaft that stands off, in crank degrees: + for advanced, its valves opening earlier."
      })
  private List<String> advances = List.of();

  @Override
  Answer answer(Model model) {
    Engine engine = EngineAsDrawn.engine(model);
    Map<String, Double> advanced = Advances.of(model.drive(), engine, advances);
    ValvesAnswer answer = ValvesAnswer.of(model, new TimedEngine(engine, advanced));
    return new Answer(
        answer.contact() ? Answer.DRIVE_WRONG : Answer.ANSWERED,
        () -> ValvesJson.of(model, answer),
        () -> ValvesText.of(model.drive(), answer));
  }
}
