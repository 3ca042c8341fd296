package tightside.command;

import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import tightside.files.Model;
import tightside.timing.State;

@Command(
    name = "stretch",
    description = "Says what a worn chain does to the camshafts and to the tensioner.")
final class StretchVerb extends ModelVerb {

  @Parameters(
      index = "1..*",
      arity = "1..*",
      paramLabel = "PERCENT",
      description = "Stretch of every chain; or CHAIN=PERCENT for one, the others being new.")
  private List<String> stretch;

  @Option(
      names = "--reseat",
      paramLabel = "SHAFT=K",
      description = "A sprocket that is some teeth over on top of it.")
  private List<String> reseats = List.of();

  @Override
  Answer answer(Model model) {
    State state = Words.stretched(model.drive(), State.reference(), stretch);
    return WhatIf.of(model, Words.reseated(model.drive(), state, reseats));
  }
}
