package tightside.command;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import tightside.files.MeasuredDrive;
import tightside.files.Model;
import tightside.files.ModelReading;
import tightside.words.SurveyWords;

/** A verb that reads one model and answers one question of it. */
abstract class ModelVerb implements Callable<Integer> {

  @Spec private CommandSpec spec;

  @Parameters(index = "0", paramLabel = "FILE", description = "The model file to read.")
  private Path file;

  @Option(
      names = {"-h", "--help"},
      usageHelp = true,
      description = "Show this help and exit.")
  private boolean help;

  @Option(names = "--json", description = "Answer in JSON, on one line, for programs.")
  private boolean json;

  private Optional<ReadAhead> ahead = Optional.empty();

  /** This verb, with a file that is being read already. */
  final ModelVerb reading(Optional<ReadAhead> begun) {
    ahead = begun;
    return this;
  }

  /** The answer of a model that can be used. */
  abstract Answer answer(Model model);

  @Override
  public Integer call() {
    ModelReading reading = read();
    if (reading.model().isEmpty()) {
      return Answer.INPUT_UNUSABLE;
    }
    Model model = reading.model().get();
    return print(measured(model, answer(model.adjusted())));
  }

  /** The answer, with what has to be known of a drive that was measured. */
  private static Answer measured(Model model, Answer answer) {
    return model
        .measured()
        .map(MeasuredDrive::adjustment)
        .map(
            a ->
                new Answer(
                    answer.code(),
                    () -> SurveyJson.added(answer.json().get(), a),
                    () -> SurveyText.added(answer.text().get(), a)))
        .orElse(answer);
  }

  /** What a picture of a drive must say that is only measured. */
  static Optional<String> notProved(Model model) {
    return model.measured().map(MeasuredDrive::adjustment).flatMap(SurveyWords::notProved);
  }

  /** Reads the file and names its problems on standard error, before anything is answered. */
  final ModelReading read() {
    ModelReading reading = ReadAhead.read(ahead, file);
    PrintWriter err = spec.commandLine().getErr();
    Problems.lines(file, reading).forEach(err::println);
    err.flush();
    return reading;
  }

  final int print(Answer answer) {
    PrintWriter out = spec.commandLine().getOut();
    if (json) {
      out.println(Json.line(answer.json().get()));
    } else {
      answer.text().get().forEach(out::println);
    }
    return answer.code();
  }

  final Path file() {
    return file;
  }
}
