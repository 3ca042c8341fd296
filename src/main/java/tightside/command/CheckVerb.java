package tightside.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import picocli.CommandLine.Command;
import tightside.drive.Finding.Severity;
import tightside.files.Model;
import tightside.files.ModelReader;
import tightside.files.ModelReading;
import tightside.words.Numbers;

@Command(
    name = "check",
    description = "Names every problem of a model file, with its line and column.")
final class CheckVerb extends ModelVerb {

  @Override
  public Integer call() {
    ModelReading reading = ModelReader.read(file());
    Problems.lines(file(), reading).forEach(err()::println);
    List<Map<String, Object>> problems = Problems.json(reading, Severity.ERROR);
    List<Map<String, Object>> warnings = Problems.json(reading, Severity.WARNING);
    boolean valid = reading.model().isPresent();
    List<String> text = new ArrayList<>();
    text.add(
        valid
            ? file() + ": can be used, " + Numbers.count(warnings.size(), "warning") + "."
            : file()
                + ": can't be used, "
                + Numbers.count(problems.size(), "problem")
                + "; each is named above with its line and column.");
    return print(
        new Answer(
            valid ? Answer.ANSWERED : Answer.INPUT_UNUSABLE,
            Json.object("valid", valid, "problems", problems, "warnings", warnings),
            text));
  }

  @Override
  Answer answer(Model model) {
    throw new IllegalStateException("check answers for the file, not for its model");
  }
}
