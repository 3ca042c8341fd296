package tightside.command;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import tightside.drive.Chain;
import tightside.drive.Drive;
import tightside.drive.Role;
import tightside.drive.Shaft;
import tightside.files.Model;
import tightside.reasoning.Cheap;
import tightside.reasoning.Condition;
import tightside.reasoning.Reading;
import tightside.timing.Solver;
import tightside.timing.State;
import tightside.words.Sentences;

/**
 * What the words of readings mean for a model.
 *
 * @param sigma spread of an angle, crank degrees
 */
record ReadingWords(Model model, double sigma) {

  /** A mark beside an edge, crank degrees; twice what the mistakes page takes of a camshaft. */
  private static final double MARK_DEGREES = 6;

  private static final double CALLIPER_MM = 0.05;
  private static final double COMPRESSION_PERCENT = 10;

  /** Half of what a plunger is read to by eye, mm; from memory. */
  private static final double PLUNGER_MM = 0.5;

  private Drive drive() {
    return model.drive();
  }

  private List<String> camshafts() {
    return drive().shafts().stream()
        .filter(s -> s.role() == Role.CAMSHAFT)
        .map(Shaft::name)
        .filter(this::timed)
        .toList();
  }

  private boolean timed(String shaft) {
    return drive().chainsOn(shaft).stream()
        .anyMatch(c -> c.sprocketOn(shaft).orElseThrow().marked());
  }

  String anExample() {
    return camshafts().isEmpty() ? "SHAFT" : camshafts().get(0);
  }

  private String camshaft(Given given) {
    if (camshafts().contains(given.name())) {
      return given.name();
    }
    throw new Refusal(
        (drive().shaft(given.name()).isPresent()
                ? "\"%s\" is no camshaft with a mark; those are %s"
                : "the drive has no shaft \"%s\"; its camshafts are %s")
            .formatted(given.name(), Sentences.list(camshafts(), "and")));
  }

  private Chain chain(Given given) {
    return drive()
        .chain(given.name())
        .orElseThrow(
            () ->
                new Refusal(
                    "the drive has no chain \"%s\"; its chains are %s"
                        .formatted(
                            given.name(),
                            drive().chains().stream()
                                .map(Chain::name)
                                .collect(Collectors.joining(", ")))));
  }

  private static double degrees(String option, String number) {
    return Given.number(option, number, -360, 360);
  }

  Reading angle(String word) {
    Given given = Given.of("--reading", word, "SHAFT=CRANKDEG, such as " + anExample() + "=-4.1");
    String[] parts = given.value().split("@", 2);
    Condition condition = Condition.HOT_IDLE;
    boolean learned = false;
    double spread = sigma;
    for (String how : parts.length < 2 ? new String[0] : parts[1].split(",")) {
      if (how.equals("learned")) {
        learned = true;
      } else if (how.startsWith("sd=")) {
        spread = Given.number("--reading sd", how.substring(3), 0.01, 45);
      } else {
        condition =
            Condition.of(how)
                .orElseThrow(
                    () ->
                        new Refusal(
                            "--reading: \"%s\" is no condition; write %s, learned or sd=DEG"
                                .formatted(
                                    how,
                                    Arrays.stream(Condition.values())
                                        .map(Condition::word)
                                        .collect(Collectors.joining(", ")))));
      }
    }
    return new Reading.CamAngle(
        camshaft(given), degrees("--reading", parts[0]), spread, condition, learned);
  }

  Reading edges(String word) {
    Given given = Given.of("--edges", word, "SHAFT=D,D,..., such as cam=-4.1,-3.9,-4.2");
    List<Double> degrees =
        Arrays.stream(given.value().split(",")).map(d -> degrees("--edges", d)).toList();
    if (degrees.size() < 2 || degrees.size() > 24) {
      throw new Refusal("--edges: a cam wheel has 2 to 24 edges, not " + degrees.size());
    }
    return new Reading.CamEdges(camshaft(given), degrees, sigma, Condition.HOT_IDLE);
  }

  Reading valveAngle(String word) {
    Given given = Given.of("--valve-angle", word, "SHAFT=CRANKDEG");
    return new Reading.ValveAngle(
        camshaft(given), degrees("--valve-angle", given.value()), 2 * sigma);
  }

  Reading mark(String word) {
    Given given = Given.of("--mark", word, "SHAFT=CRANKDEG");
    if (drive().shaft(given.name()).isEmpty()
        || !timed(given.name())
        || given.name().equals(drive().crankshaft().name())) {
      return new Reading.MarkStands(
          camshaft(given), degrees("--mark", given.value()), MARK_DEGREES);
    }
    return new Reading.MarkStands(given.name(), degrees("--mark", given.value()), MARK_DEGREES);
  }

  Reading plunger(String word) {
    Given given = Given.of("--extension", word, "CHAIN=MM, or CHAIN=MM..MM");
    Chain chain = chain(given);
    if (chain.tensioner().isEmpty()) {
      throw new Refusal("chain \"" + chain.name() + "\" has no tensioner to be read");
    }
    String[] ends = given.value().split("\\.\\.", 2);
    double travel = chain.tensioner().get().plunger().travelMm();
    double low = Given.number("--extension", ends[0], 0, travel + 1);
    if (ends.length == 1) {
      return new Reading.PlungerStands(chain.name(), low - PLUNGER_MM, low + PLUNGER_MM);
    }
    double high = Given.number("--extension", ends[1], low, travel + 1);
    return new Reading.PlungerStands(chain.name(), low, high);
  }

  Reading count(String word) {
    Given given = Given.of("--count", word, "FROM..TO=LINKS, such as crank..intake=51");
    int slash = given.name().indexOf('/');
    String run = given.name().substring(slash + 1);
    List<Reading.Counted> runs =
        Solver.solve(drive(), State.reference()).chains().stream()
            .filter(c -> slash < 0 || c.chain().name().equals(given.name().substring(0, slash)))
            .flatMap(
                c ->
                    c.strands().stream()
                        .filter(s -> run.equals(s.from() + ".." + s.to()))
                        .map(
                            s ->
                                new Reading.Counted(
                                    c.chain().name(),
                                    s.from(),
                                    s.to(),
                                    (long) links(given.value()))))
            .toList();
    if (runs.isEmpty()) {
      throw new Refusal(
          "no run leads from mark to mark as \"%s\"; the runs are %s"
              .formatted(given.name(), Sentences.list(runs(), "and")));
    }
    if (runs.size() > 1) {
      throw new Refusal("several chains have the run " + run + "; write CHAIN/" + run + "=LINKS");
    }
    return runs.get(0);
  }

  private static double links(String number) {
    double links = Given.number("--count", number, 1, 2000);
    if (links != Math.rint(links)) {
      throw new Refusal("--count: links are whole, not " + number);
    }
    return links;
  }

  private List<String> runs() {
    return Solver.solve(drive(), State.reference()).chains().stream()
        .flatMap(c -> c.strands().stream())
        .map(s -> s.from() + ".." + s.to())
        .toList();
  }

  Reading calliper(String word) {
    Given given = Given.of("--calliper", word, "CHAIN=PITCHES:MM, such as main=10:80.2");
    Chain chain = chain(given);
    String[] parts = given.value().split(":", 2);
    if (parts.length < 2) {
      throw new Refusal("--calliper: write CHAIN=PITCHES:MM, such as " + given.name() + "=10:80.2");
    }
    double pitches = Given.number("--calliper pitches", parts[0], 2, chain.links());
    double newMm = pitches * chain.pitchMm();
    if (pitches % 2 != 0) {
      throw new Refusal(
          "--calliper: wear grows alternate pitches, so measure over an even number of them, not "
              + parts[0]);
    }
    double length = Given.number("--calliper length", parts[1], 0.99 * newMm, 1.1 * newMm);
    return new Reading.Calliper(chain.name(), (int) pitches, length, CALLIPER_MM);
  }

  Reading tool(String word) {
    Given given = Given.of("--tool", word, "SHAFT=yes or SHAFT=no");
    if (!given.value().matches("yes|no")) {
      throw new Refusal("--tool: \"%s\" is neither yes nor no".formatted(given.value()));
    }
    OptionalDouble play =
        model.job().isEmpty() ? OptionalDouble.empty() : model.job().get().lockingToolPlayDegrees();
    return new Reading.LockingTool(camshaft(given), given.value().equals("yes"), play);
  }

  Reading looked(String word) {
    Given given = Given.of("--looked", word, "oil=good, oil=bad, wiring=good or wiring=bad");
    if (Cheap.of(given.name()).isEmpty() || !given.value().matches("good|bad")) {
      throw new Refusal(
          "--looked: write oil=good, oil=bad, wiring=good or wiring=bad, not " + word);
    }
    return new Reading.Looked(Cheap.of(given.name()).get(), given.value().equals("bad"));
  }

  Reading compression(String word) {
    if (model.engine().isEmpty()) {
      throw new Refusal(
          "--compression needs the model's section \"engine\", with bore, stroke, rod,"
              + " compression-ratio and valves");
    }
    return new Reading.Compression(
        Given.number("--compression", word, 0, 300), COMPRESSION_PERCENT);
  }
}
