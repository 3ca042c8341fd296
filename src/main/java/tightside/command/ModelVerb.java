package tightside.command;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import tightside.files.Model;
import tightside.files.ModelReader;
import tightside.files.ModelReading;

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

  /** The answer of a model that can be used. */
  abstract Answer answer(Model model);

  @Override
  public Integer call() {
    ModelReading reading = ModelReader.read(file);
    report(reading);
    if (reading.model().isEmpty()) {
      return Answer.INPUT_UNUSABLE;
    }
    return print(answer(reading.model().get()));
  }

  /** Names the problems of the file on standard error, before anything is answered. */
  final void report(ModelReading reading) {
    PrintWriter err = spec.commandLine().getErr();
    Problems.lines(file, reading).forEach(err::println);
    err.flush();
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
