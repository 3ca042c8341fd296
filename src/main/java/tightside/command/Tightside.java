package tightside.command;

import java.io.PrintWriter;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import picocli.CommandLine.UnmatchedArgumentException;
import tightside.files.Demo;
import tightside.words.Sentences;

/** The command itself and its verbs. */
@Command(
    name = "tightside",
    mixinStandardHelpOptions = true,
    version = "tightside 0.1.0",
    description = {
      "Links, teeth and degrees of chain-driven camshaft timing.",
      "With no words at all it opens the window."
    },
    footer = {
      "",
      "Exit codes: 0 answered; 1 the answer is that something is wrong with the drive;",
      "2 the input can't be used.",
      "For practice and cross-checking: the maker's procedure and a qualified hand decide."
    })
public final class Tightside implements Callable<Integer> {

  @Spec private CommandSpec spec;

  /** What each verb is called and how it is made. */
  private static final Map<String, Supplier<Callable<Integer>>> VERBS = verbs();

  private static Map<String, Supplier<Callable<Integer>>> verbs() {
    Map<String, Supplier<Callable<Integer>>> verbs = new LinkedHashMap<>();
    verbs.put("counts", CountsVerb::new);
    verbs.put("reseat", ReseatVerb::new);
    verbs.put("stretch", StretchVerb::new);
    verbs.put("hold-back", HoldBackVerb::new);
    verbs.put("valves", ValvesVerb::new);
    verbs.put("explain", ExplainVerb::new);
    verbs.put("measure", MeasureVerb::new);
    verbs.put("check", CheckVerb::new);
    verbs.put("picture", PictureVerb::new);
    verbs.put("lesson", LessonVerb::new);
    verbs.put("sheet", SheetVerb::new);
    return verbs;
  }

  /** Runs one command line and gives its exit code. */
  public static int run(String[] words, PrintWriter out, PrintWriter err) {
    boolean verb = words.length > 0 && VERBS.containsKey(words[0]);
    CommandLine line = verb ? verb(words) : all();
    line.setOut(out).setErr(err);
    line.setParameterExceptionHandler(
        (problem, wrong) -> {
          String usage = problem.getCommandLine().getCommandSpec().qualifiedName();
          err.println(usage + ": " + message(problem) + " (see " + usage + " --help)");
          return Answer.INPUT_UNUSABLE;
        });
    line.setExecutionExceptionHandler(
        (problem, command, parsed) -> {
          if (problem instanceof Refusal) {
            err.println(command.getCommandSpec().qualifiedName() + ": " + problem.getMessage());
            return Answer.INPUT_UNUSABLE;
          }
          err.println("tightside: a fault of the program itself, please report it: " + problem);
          return Answer.INPUT_UNUSABLE;
        });
    return line.execute(verb ? Arrays.copyOfRange(words, 1, words.length) : words);
  }

  /** The verb that is called, alone: reading the options of all would take longer than its work. */
  private static CommandLine verb(String[] words) {
    Callable<Integer> verb = VERBS.get(words[0]).get();
    if (verb instanceof ModelVerb reader) {
      reader.reading(ReadAhead.of(words));
    }
    return new CommandLine(verb).setCommandName("tightside " + words[0]);
  }

  /** The command with all its verbs, for those who ask what there is. */
  private static CommandLine all() {
    CommandLine line = new CommandLine(new Tightside());
    VERBS.values().forEach(verb -> line.addSubcommand(verb.get()));
    return line;
  }

  private static String message(ParameterException problem) {
    if (problem instanceof UnmatchedArgumentException unmatched) {
      String word = unmatched.getUnmatched().get(0);
      if (!word.startsWith("-")
          && !(unmatched.getCommandLine().getCommand() instanceof Tightside)) {
        return "\"" + word + "\" is one word too many";
      }
      if (word.endsWith(".yaml") || word.endsWith(".yml")) {
        return "a verb comes before the file, as in: tightside counts "
            + word
            + "; with no words at all the window opens, and Open in it shows a file";
      }
      List<String> near = unmatched.getSuggestions();
      return "there is no "
          + (word.startsWith("-") ? "option " : "verb ")
          + word
          + (near.isEmpty() ? "" : "; did you mean " + Sentences.list(near, "or") + "?");
    }
    return problem.getMessage();
  }

  @Override
  public Integer call() {
    PrintWriter out = spec.commandLine().getOut();
    out.println("Demo drive (give a verb and a model file for your own; --help lists the verbs):");
    out.println();
    CountsVerb.of(Demo.model()).text().get().forEach(out::println);
    return Answer.ANSWERED;
  }
}
