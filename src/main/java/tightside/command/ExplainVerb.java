package tightside.command;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import tightside.drive.Seen;
import tightside.files.Model;
import tightside.files.WholeFiles;
import tightside.reasoning.CheckPlan;
import tightside.reasoning.Evidence;
import tightside.reasoning.Priors;
import tightside.reasoning.Reading;
import tightside.reasoning.Reasoner;
import tightside.reasoning.Spreads;
import tightside.reasoning.Subject;
import tightside.why.WhyPage;

@Command(
    name = "explain",
    sortOptions = false,
    description = {
      "Weighs what could explain readings: worn, jumped, stuck or only measured; says how sure",
      "that is, and which check would decide most for its time.",
      "The exit code is 1 where the answer is decided and says that the drive is wrong; 0 where",
      "nothing is, where only a sensor is, and where it is undecided."
    })
final class ExplainVerb extends ModelVerb {

  /** How much of the engine is open. */
  enum Cover {
    on,
    off,
    borescope
  }

  @Option(
      names = "--reading",
      paramLabel = "SHAFT=CRANKDEG[@HOW]",
      description = {
        "A camshaft as its sensor reads it, crank degrees off its place, + for advanced.",
        "HOW, after commas: cold-idle, hot-idle (the rule), raised-speed, phaser-unplugged,",
        "at-stop; learned: against a learned value; sd=DEG: its own spread."
      })
  private List<String> angles = List.of();

  @Option(
      names = "--edges",
      paramLabel = "SHAFT=D,D,...",
      description = "Every edge of a cam wheel, crank degrees off its place.")
  private List<String> edges = List.of();

  @Option(
      names = "--valve-angle",
      paramLabel = "SHAFT=CRANKDEG",
      description = "Valve timing seen in a cylinder's pressure, + for earlier.")
  private List<String> valveAngles = List.of();

  @Option(
      names = "--mark",
      paramLabel = "SHAFT=CRANKDEG",
      description = "A mark after two turns by hand, crank degrees off its place.")
  private List<String> marks = List.of();

  @Option(
      names = "--extension",
      paramLabel = "CHAIN=MM[..MM]",
      description = "How far a plunger stands out, or between what.")
  private List<String> extensions = List.of();

  @Option(
      names = "--count",
      paramLabel = "FROM..TO=LINKS",
      description = "Links counted from mark to mark; CHAIN/FROM..TO where two chains have it.")
  private List<String> counts = List.of();

  @Option(
      names = "--calliper",
      paramLabel = "CHAIN=PITCHES:MM",
      description = "Length over so many pitches, roller centre to roller centre.")
  private List<String> callipers = List.of();

  @Option(
      names = "--tool",
      paramLabel = "SHAFT=yes|no",
      description = "Whether the locking tool goes in, the crankshaft locked.")
  private List<String> tools = List.of();

  @Option(
      names = "--compression",
      paramLabel = "PERCENT",
      description = "Compression, all cylinders alike, percent of what it should be.")
  private String compression;

  @Option(
      names = "--looked",
      paramLabel = "oil|wiring=good|bad",
      description = "A cheap cause that was looked at.")
  private List<String> looked = List.of();

  @Option(
      names = "--sigma",
      paramLabel = "DEG",
      description = "Spread of an angle reading, crank degrees; 1 unless given.")
  private String sigma = "1";

  @Option(
      names = "--sensor-spread",
      paramLabel = "DEG",
      description = "What all readings of one sensor have in common; 0.5 unless given.")
  private String sensorSpread = "0.5";

  @Option(
      names = "--prior",
      paramLabel = "CAUSE=WEIGHT",
      description = "How often a cause is met, beside the others; 0 leaves it out.")
  private List<String> priors = List.of();

  @Option(
      names = "--minutes",
      paramLabel = "CHECK=MIN",
      description = "What a check takes you; never leaves it out.")
  private List<String> minutes = List.of();

  @Option(
      names = "--opening",
      paramLabel = "cover-off|borescope=MIN",
      description = "What it takes you to get that access; never rules it out.")
  private List<String> openings = List.of();

  @Option(
      names = "--cover",
      paramLabel = "on|off|borescope",
      description = "What can be seen now; on unless given.")
  private Cover cover = Cover.on;

  @Option(
      names = "--turned-by-hand",
      description = "The engine was turned two turns by hand and felt free.")
  private boolean turned;

  @Option(
      names = {"-o", "--output"},
      paramLabel = "OUT.pdf|OUT.html",
      description = "Also write the page that says why, for a reader who was not there.")
  private Path output;

  @Override
  Answer answer(Model model) {
    if (output != null && !output.toString().matches("(?i).*\\.(pdf|html?)")) {
      throw new Refusal("the page is written as .pdf or .html, not as " + output.getFileName());
    }
    Subject subject = new Subject(model.drive(), model.phasers(), model.engine());
    Reasoner reasoner = Reasoner.of(subject);
    ReadingWords words = new ReadingWords(model, Given.number("--sigma", sigma, 0.01, 45));
    List<Reading> readings = new ArrayList<>();
    angles.forEach(w -> readings.add(words.angle(w)));
    edges.forEach(w -> readings.add(words.edges(w)));
    valveAngles.forEach(w -> readings.add(words.valveAngle(w)));
    marks.forEach(w -> readings.add(words.mark(w)));
    extensions.forEach(w -> readings.add(words.plunger(w)));
    counts.forEach(w -> readings.add(words.count(w)));
    callipers.forEach(w -> readings.add(words.calliper(w)));
    tools.forEach(w -> readings.add(words.tool(w)));
    looked.forEach(w -> readings.add(words.looked(w)));
    if (compression != null) {
      readings.add(words.compression(compression));
    }
    if (readings.isEmpty()) {
      throw new Refusal(
          "nothing was read; give at least one reading, such as --reading "
              + words.anExample()
              + "=-4");
    }
    double sensor = Given.number("--sensor-spread", sensorSpread, 0.01, 45);
    Evidence evidence = new Evidence(readings, Spreads.usual().withSensor(sensor));
    Priors weights = PlanWords.priors(priors);
    var answer = reasoner.explain(evidence, weights, plan());
    if (output != null) {
      write(model, answer);
    }
    boolean wrong = answer.decided() && answer.leader().wrongWithDrive();
    return new Answer(
        wrong ? Answer.DRIVE_WRONG : Answer.ANSWERED,
        () -> ExplainJson.of(model, answer),
        () -> text(model, answer));
  }

  private List<String> text(Model model, tightside.reasoning.Answer answer) {
    List<String> lines = new ArrayList<>(ExplainText.of(model.drive(), answer));
    if (output != null) {
      lines.add("Wrote the page to " + output + ".");
    }
    return lines;
  }

  private void write(Model model, tightside.reasoning.Answer answer) {
    boolean pdf = output.toString().toLowerCase(Locale.ROOT).endsWith(".pdf");
    byte[] page =
        pdf
            ? WhyPage.pdf(model.drive(), answer)
            : WhyPage.html(model.drive(), answer).getBytes(StandardCharsets.UTF_8);
    try {
      WholeFiles.replace(output, page);
    } catch (IOException problem) {
      throw new Refusal(problem.getMessage());
    }
  }

  private CheckPlan plan() {
    EnumSet<Seen> seen =
        switch (cover) {
          case on -> EnumSet.of(Seen.COVER_ON);
          case off -> EnumSet.of(Seen.COVER_ON, Seen.COVER_OFF);
          case borescope -> EnumSet.of(Seen.COVER_ON, Seen.BORESCOPE);
        };
    return PlanWords.plan(minutes, openings).seeing(seen).turned(turned);
  }
}
