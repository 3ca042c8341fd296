package tightside.command;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import tightside.files.Model;
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
    return print(answer(reading.model().get()));
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
