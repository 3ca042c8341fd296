package tightside.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import tightside.drive.Chain;
import tightside.drive.Seen;
import tightside.readings.Bench;
import tightside.readings.LayTable;
import tightside.readings.Situation;
import tightside.timing.HoldBack;
import tightside.timing.SlackByExtension;
import tightside.timing.Solver;
import tightside.timing.State;
import tightside.words.Sentences;

/**
 * What can go wrong while the chain is slack, chain by chain. It is worked out apart from the view,
 * for the table of wrong lays takes too long for every frame.
 */
public record SlackPage(List<ChainPage> chains) {

  /** Steps of the plunger's travel in the diagram. */
  private static final int STEPS = 28;

  /**
   * One chain.
   *
   * @param line slack of the loop as the plunger goes back; empty without a tensioner
   * @param sections what there is to read, in order
   */
  public record ChainPage(String chain, List<Point> line, List<Section> sections) {
    public ChainPage {
      line = List.copyOf(line);
      sections = List.copyOf(sections);
    }
  }

  /** The plunger so far out, and the loop's slack then, mm. */
  public record Point(double extensionMm, double slackMm) {}

  /**
   * Sentences under a title.
   *
   * @param rule whether they are a rule for this drive, to be read large
   */
  public record Section(String title, List<String> sentences, boolean rule) {
    public Section {
      sentences = List.copyOf(sentences);
    }

    Section(String title, List<String> sentences) {
      this(title, sentences, false);
    }
  }

  /** All of a snapshot that the page depends on; while this stays, so does the page. */
  public static Object inputs(Snapshot now) {
    return List.of(
        System.identityHashCode(now.drive()),
        now.stretchPercent(),
        now.heldMm(),
        now.slack(),
        now.cover());
  }

  public SlackPage {
    chains = List.copyOf(chains);
  }

  /** Works the page out; up to a few tenths of a second. */
  public static SlackPage of(Snapshot now) {
    if (now.drive().countedOnly()) {
      return new SlackPage(
          now.drive().chains().stream().map(chain -> countedOnly(chain.name())).toList());
    }
    Bench bench = Bench.coverOff().with(now.slack().play()).seeing(access(now.cover()));
    Situation right = Situation.of(Solver.of(now.drive()), laidRight(now), bench);
    List<ChainPage> pages = new ArrayList<>();
    for (Chain chain : now.drive().chains()) {
      pages.add(
          LayTable.of(right, chain)
              .map(table -> page(now, table))
              .orElseGet(() -> nothing(chain.name())));
    }
    return new SlackPage(pages);
  }

  /** Worn and held as it is, at the reference position, every sprocket where it belongs. */
  private static State laidRight(Snapshot now) {
    State reference = State.reference();
    return new State(
        reference.crankDegrees(),
        reference.arrived(),
        reference.reseats(),
        now.stretchPercent(),
        now.heldMm());
  }

  static Set<Seen> access(Seen cover) {
    return switch (cover) {
      case COVER_ON -> Set.of(Seen.COVER_ON);
      case BORESCOPE -> Set.of(Seen.COVER_ON, Seen.COVER_OFF, Seen.BORESCOPE);
      default -> Set.of(Seen.COVER_ON, Seen.COVER_OFF);
    };
  }

  private static ChainPage page(Snapshot now, LayTable table) {
    SlackSections sections = new SlackSections(now, table);
    return new ChainPage(table.hold().chain().name(), line(now, table.hold()), sections.all());
  }

  private static List<Point> line(Snapshot now, HoldBack hold) {
    double travel = hold.chain().tensioner().map(t -> t.plunger().travelMm()).orElse(0.0);
    if (travel == 0) {
      return List.of();
    }
    return SlackByExtension.of(
            now.drive(), hold.chain(), now.state().stretchOf(hold.chain().name()))
        .stream()
        .flatMap(
            slack ->
                IntStream.rangeClosed(0, STEPS)
                    .mapToDouble(i -> travel * i / STEPS)
                    .mapToObj(e -> new Point(e, slack.loopMm(e))))
        .filter(point -> Double.isFinite(point.slackMm()))
        .toList();
  }

  private static ChainPage countedOnly(String chain) {
    return new ChainPage(
        chain,
        List.of(),
        List.of(
            new Section(
                "Counted only: no geometry",
                List.of("Nothing can be said of slack: " + Sentences.holdBackNeeds() + "."))));
  }

  private static ChainPage nothing(String chain) {
    return new ChainPage(
        chain,
        List.of(),
        List.of(
            new Section(
                "Held so",
                List.of("Nothing can be said of " + chain + ": its new chain does not fit."),
                true)));
  }
}
