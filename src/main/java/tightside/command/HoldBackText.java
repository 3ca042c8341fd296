package tightside.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import tightside.drive.Drive;
import tightside.drive.Joint;
import tightside.drive.Seen;
import tightside.drive.Sprocket;
import tightside.readings.Bench;
import tightside.readings.LayRow;
import tightside.readings.LayTable;
import tightside.readings.Situation;
import tightside.timing.DowelRule;
import tightside.timing.HoldBack;
import tightside.timing.Solver;
import tightside.timing.State;
import tightside.words.HoldBackWords;
import tightside.words.LayWords;
import tightside.words.Numbers;
import tightside.words.Sentences;

/** What can go wrong while the chain is slack, as a technician reads it. */
final class HoldBackText {

  /** Rows of the table that are worth a page; the rest are less dangerous still. */
  private static final int ROWS = 8;

  private HoldBackText() {}

  static List<String> of(Drive drive, List<HoldBack> holds, Bench bench, Map<String, Double> held) {
    List<String> lines = new ArrayList<>(List.of(drive.name(), drive.about(), ""));
    State state = State.reference();
    for (Map.Entry<String, Double> chain : held.entrySet()) {
      state = state.held(chain.getKey(), chain.getValue());
    }
    lines.add("What can be seen: " + access(bench) + ".");
    lines.add(
        "The commonest error is no tooth: a phaser that is not at rest when it is fitted puts its"
            + " camshaft off with every link right. Look that it is at rest and locked before it goes"
            + " on; afterwards only the locking tool, or the engine's own timing, shows it.");
    lines.add("");
    Situation right = Situation.of(Solver.of(drive), state, bench);
    for (HoldBack hold : holds) {
      lines.addAll(chain(hold));
      LayTable.of(right, hold.chain()).ifPresent(table -> lines.addAll(table(table)));
      lines.add("");
    }
    lines.add(Sentences.caution());
    return lines;
  }

  private static String access(Bench bench) {
    if (bench.access().contains(Seen.BORESCOPE)) {
      return "all that a borescope reaches, the cover off";
    }
    return bench.access().contains(Seen.COVER_OFF)
        ? "what shows with the cover off"
        : "what shows with the cover on";
  }

  private static List<String> chain(HoldBack hold) {
    List<String> lines = new ArrayList<>();
    lines.add("Chain " + hold.chain().name());
    lines.add("  " + HoldBackWords.slack(hold));
    hold.strands().forEach(s -> lines.add("    " + HoldBackWords.strand(s)));
    lines.add("  One sprocket wrong:");
    hold.reseats().forEach(lay -> lines.add("    " + HoldBackWords.judged(hold, lay)));
    for (Sprocket sprocket : hold.chain().sprockets()) {
      if (sprocket.marked() && sprocket != hold.chain().driver()) {
        lines.add("  " + rule(hold, sprocket));
      }
    }
    return lines;
  }

  private static String rule(HoldBack hold, Sprocket sprocket) {
    return sprocket.joint() == Joint.FRICTION
        ? "%s is held by its bolt's clamp alone: the lay of the links fixes nothing there; every mm of slack left in its tight run while tightening is %s degrees of error of its shaft."
            .formatted(sprocket.shaft(), Numbers.fixed(hold.degreesPerMm(sprocket.shaft()), 1))
        : HoldBackWords.rule(DowelRule.of(hold, sprocket.shaft()));
  }

  private static List<String> table(LayTable table) {
    List<String> lines = new ArrayList<>();
    lines.add(
        "  What could go wrong, most dangerous first (possible and hidden, then possible, then by the turn it takes):");
    for (LayRow row : table.rows().subList(0, Math.min(ROWS, table.rows().size()))) {
      lines.add("    " + LayWords.name(table.hold(), row) + ": " + LayWords.reason(row) + ".");
      lines.add("      Before turning: " + LayWords.spare(row) + ".");
      lines.add("      Then: " + LayWords.consequence(row) + ".");
      lines.add("      Shown soonest: " + LayWords.soonest(row) + ".");
    }
    lines.add("  " + LayWords.never(table));
    return lines;
  }
}
