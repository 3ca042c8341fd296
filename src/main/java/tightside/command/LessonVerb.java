package tightside.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import tightside.drive.Seen;
import tightside.files.Demo;
import tightside.files.JobFolder;
import tightside.files.LessonMemory;
import tightside.files.Model;
import tightside.files.ModelReader;
import tightside.files.ModelReading;
import tightside.files.WholeFiles;
import tightside.lesson.Hunt;
import tightside.lesson.LessonSheet;
import tightside.lesson.ReadyLesson;
import tightside.lesson.Setting;
import tightside.print.Form;

@Command(
    name = "lesson",
    description = {
      "Writes a lesson on paper: a hand-out for the class and a key for the trainer.",
      "With no name it lists the lessons."
    })
final class LessonVerb implements Callable<Integer> {

  /** The name of the lesson whose fault is drawn from a seed. */
  private static final String HUNT = "hunt";

  private enum Cover {
    on(Seen.COVER_ON),
    off(Seen.COVER_OFF),
    borescope(Seen.BORESCOPE);

    private final Seen seen;

    Cover(Seen seen) {
      this.seen = seen;
    }
  }

  @Spec private CommandSpec spec;

  @Parameters(
      index = "0",
      arity = "0..1",
      paramLabel = "NAME",
      description = "A ready lesson, or hunt for five faults drawn from a seed.")
  private String name;

  @Option(
      names = {"-o", "--output"},
      paramLabel = "HANDOUT.pdf|HANDOUT.html",
      description = "The hand-out to write; replaced whole, or not at all.")
  private Path output;

  @Option(names = "--key", paramLabel = "KEY.pdf|KEY.html", description = "The key to write.")
  private Path key;

  @Option(names = "--seed", paramLabel = "N", description = "Of a hunt; 1 unless given.")
  private long seed = 1;

  @Option(
      names = "--model",
      paramLabel = "FILE",
      description = "The drive of a hunt; the first demo drive unless given.")
  private Path file;

  @Option(
      names = "--cover",
      paramLabel = "on|off|borescope",
      description = "How far the class of a hunt can look; borescope unless given.")
  private Cover cover = Cover.borescope;

  @Option(
      names = {"-h", "--help"},
      usageHelp = true,
      description = "Show this help and exit.")
  private boolean help;

  @Option(names = "--json", description = "Answer in JSON, on one line, for programs.")
  private boolean json;

  @Override
  public Integer call() {
    if (name == null) {
      return list();
    }
    Optional<List<LessonSheet>> sheets = sheets();
    if (sheets.isEmpty()) {
      return Answer.INPUT_UNUSABLE;
    }
    if (output == null && key == null) {
      throw new Refusal("say where to write: -o HANDOUT.pdf for the class, --key KEY.pdf for you");
    }
    List<String> written = new ArrayList<>();
    LessonMemory memory =
        LessonMemory.in(
            JobFolder.ofUser(
                System.getenv(), System.getProperty("user.home"), System.getProperty("os.name")));
    Predicate<LessonSheet> before = sheet -> memory.holds(sheet.memoryName());
    if (output != null) {
      write(output, LessonPaper.handout(sheets.get(), before));
      written.add("Wrote the hand-out to " + output + ".");
    }
    if (key != null) {
      write(key, LessonPaper.key(sheets.get(), before));
      written.add("Wrote the key to " + key + ".");
    }
    print(written, sheets.get().stream().filter(before).map(LessonSheet::title).toList());
    return Answer.ANSWERED;
  }

  private void print(List<String> lines, List<String> takenBefore) {
    PrintWriter out = spec.commandLine().getOut();
    if (json) {
      out.println(
          Json.line(
              Json.object(
                  "lesson",
                  name,
                  "handout",
                  output == null ? null : output.toString(),
                  "key",
                  key == null ? null : key.toString(),
                  "takenBefore",
                  takenBefore)));
    } else {
      lines.forEach(out::println);
    }
  }

  private int list() {
    PrintWriter out = spec.commandLine().getOut();
    if (json) {
      out.println(
          Json.line(
              Json.object(
                  "lessons",
                  Arrays.stream(ReadyLesson.values())
                      .map(l -> Json.object("name", l.id(), "title", l.title()))
                      .toList())));
      return Answer.ANSWERED;
    }
    for (ReadyLesson lesson : ReadyLesson.values()) {
      out.println("%-14s %s".formatted(lesson.id(), lesson.title()));
    }
    out.println("%-14s %s".formatted(HUNT, "Five faults of one difficulty, drawn from --seed"));
    return Answer.ANSWERED;
  }

  /** Nothing where the model can't be used; what is wrong with it is said by then. */
  private Optional<List<LessonSheet>> sheets() {
    if (!name.equals(HUNT)) {
      ReadyLesson lesson = ReadyLesson.named(name).orElseThrow(this::unknown);
      return Optional.of(List.of(lesson.on(setting(Demo.named(lesson.model())))));
    }
    return model().map(LessonVerb::setting).map(this::hunt);
  }

  private Refusal unknown() {
    return new Refusal(
        "there is no lesson \"%s\"; the lessons are %s and %s"
            .formatted(
                name,
                String.join(
                    ", ", Arrays.stream(ReadyLesson.values()).map(ReadyLesson::id).toList()),
                HUNT));
  }

  private Optional<Model> model() {
    if (file == null) {
      return Optional.of(Demo.model());
    }
    ModelReading reading = ModelReader.read(file);
    PrintWriter err = spec.commandLine().getErr();
    Problems.lines(file, reading).forEach(err::println);
    err.flush();
    return reading.model();
  }

  private static Setting setting(Model model) {
    return new Setting(model.drive(), model.engine());
  }

  private List<LessonSheet> hunt(Setting setting) {
    Hunt hunt =
        Hunt.drawn(setting, cover.seen, seed)
            .orElseThrow(() -> new Refusal(Hunt.tooLittle(cover.seen)));
    return IntStream.rangeClosed(1, Hunt.VARIANTS).mapToObj(hunt::sheet).toList();
  }

  private static void write(Path to, String html) {
    Form form =
        Form.of(to)
            .orElseThrow(
                () ->
                    new Refusal(
                        "paper is written as PDF or HTML; give a name that ends in .pdf or .html,"
                            + " not "
                            + to));
    try {
      WholeFiles.replace(to, form.bytes(html));
    } catch (IOException e) {
      throw new Refusal(e.getMessage());
    }
  }
}
