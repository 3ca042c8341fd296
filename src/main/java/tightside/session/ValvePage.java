package tightside.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import tightside.drive.Drive;
import tightside.engine.Phaser;
import tightside.engine.PhaserTravel;
import tightside.engine.TimedEngine;
import tightside.engine.ToothTable;
import tightside.words.Numbers;
import tightside.words.ValveWords;

/**
 * What every tooth of a camshaft does to valves and compression, as rows of text, and what else is
 * to be said of the valves as the camshafts stand.
 *
 * @param summary what is assumed, valves, overlap, compression and phasers, a sentence each
 * @param tables one for every camshaft that a chain drives
 * @param notes what it leaves out, and what is not known
 */
public record ValvePage(List<String> summary, List<Table> tables, List<String> notes) {

  /** Lays of one camshaft, counted from how it stands. */
  public record Table(String shaft, String perTooth, List<Row> rows) {
    public Table {
      rows = List.copyOf(rows);
    }
  }

  /**
   * One lay.
   *
   * @param room in mm, or how deep it touches
   * @param touches whether a valve meets its piston
   * @param spoken the whole row in a sentence
   */
  public record Row(
      String teeth,
      String room,
      String at,
      String compression,
      String overlap,
      boolean touches,
      String spoken) {}

  public ValvePage {
    summary = List.copyOf(summary);
    tables = List.copyOf(tables);
    notes = List.copyOf(notes);
  }

  /** What is missing where a model says nothing of its engine. */
  public static String missing() {
    return "The model says nothing of its engine: add a section \"engine\" with bore, stroke, rod,"
        + " compression-ratio and valves, measured on the engine in hand.";
  }

  public static ValvePage of(Snapshot now, Valves valves) {
    TimedEngine timed = valves.timed();
    List<String> summary = new ArrayList<>();
    if (!valves.referenceKnown()) {
      summary.add(ValveWords.assumed());
    }
    timed.clearances().forEach(c -> summary.add(ValveWords.valve(c)));
    timed.overlapDegrees().ifPresent(o -> summary.add(ValveWords.overlap(o)));
    summary.add(ValveWords.compression(timed.squeeze()));
    travels(now, timed).forEach(t -> summary.add(ValveWords.phaser(t)));
    List<Table> tables =
        timed.engine().camshafts().stream()
            .map(shaft -> ToothTable.of(now.drive(), timed, shaft))
            .flatMap(Optional::stream)
            .map(ValvePage::table)
            .toList();
    return new ValvePage(summary, tables, List.of(ValveWords.caution()));
  }

  private static List<PhaserTravel> travels(Snapshot now, TimedEngine timed) {
    Drive drive = now.drive();
    List<PhaserTravel> travels = new ArrayList<>();
    for (String shaft : timed.engine().camshafts()) {
      Phaser phaser = now.phasers().get(shaft);
      if (phaser != null && drive.gearing().drivenBy(shaft).isPresent()) {
        travels.add(PhaserTravel.of(timed, shaft, phaser, ToothTable.crankTurns(drive, shaft)));
      }
    }
    return travels;
  }

  private static Table table(ToothTable table) {
    return new Table(
        table.shaft(),
        "%s crank degrees a tooth".formatted(Numbers.fixed(table.degreesPerTooth(), 1)),
        table.rows().stream().map(ValvePage::row).toList());
  }

  private static Row row(ToothTable.Row row) {
    double mm = row.nearest().clearanceMm();
    boolean touches = row.nearest().contact();
    return new Row(
        row.teeth() == 0 ? "now" : "%+d".formatted(row.teeth()),
        touches ? "touches " + Numbers.fixed(-mm, 1) : Numbers.fixed(mm, 1),
        ValveWords.angle(row.nearest().atDegrees()),
        shown(row.closed(), 1),
        shown(row.overlapDegrees(), 0),
        touches,
        ValveWords.lay(row));
  }

  private static String shown(OptionalDouble number, int decimals) {
    return number.isPresent()
        ? Numbers.fixed(Math.max(0, number.getAsDouble()), decimals)
        : "\u2013";
  }
}
