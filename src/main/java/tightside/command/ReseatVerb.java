package tightside.command;

import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import tightside.files.Model;
import tightside.timing.State;

@Command(
    name = "reseat",
    description = {
      "Says what happens when sprockets go back on the chain some teeth over.",
      "+1 is one tooth further ahead in the direction of rotation, -1 one tooth behind."
    })
final class ReseatVerb extends ModelVerb {

  @Parameters(
      index = "1..*",
      arity = "1..*",
      paramLabel = "SHAFT=K",
      description =
          "Which sprocket, and by how many teeth; CHAIN/SHAFT=K where a shaft has several.")
  private List<String> reseats;

  @Option(
      names = "--stretch",
      paramLabel = "[CHAIN=]PERCENT",
      description = "Wear of the chain on top of it.")
  private List<String> stretch = List.of();

  @Override
  Answer answer(Model model) {
    State state = Words.reseated(model.drive(), State.reference(), reseats);
    return WhatIf.of(model, Words.stretched(model.drive(), state, stretch));
  }
}
