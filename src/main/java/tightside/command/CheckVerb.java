package tightside.command;

import java.util.List;
import java.util.Map;
import picocli.CommandLine.Command;
import tightside.drive.Finding.Severity;
import tightside.files.Model;
import tightside.files.ModelReading;
import tightside.words.Numbers;

@Command(
    name = "check",
    description = "Names every problem of a model file, with its line and column.")
final class CheckVerb extends ModelVerb {

  @Override
  public Integer call() {
    ModelReading reading = read();
    List<Map<String, Object>> problems = Problems.json(reading, Severity.ERROR);
    List<Map<String, Object>> warnings = Problems.json(reading, Severity.WARNING);
    boolean valid = reading.model().isPresent();
    return print(
        new Answer(
            valid ? Answer.ANSWERED : Answer.INPUT_UNUSABLE,
            () -> Json.object("valid", valid, "problems", problems, "warnings", warnings),
            () -> List.of(file() + text(valid, valid ? warnings.size() : problems.size()))));
  }

  private static String text(boolean valid, int count) {
    return valid
        ? ": can be used, " + Numbers.count(count, "warning") + "."
        : ": can't be used, "
            + Numbers.count(count, "problem")
            + "; each is named with its line and column.";
  }

  @Override
  Answer answer(Model model) {
    throw new IllegalStateException("check answers for the file, not for its model");
  }
}
