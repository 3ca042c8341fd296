package tightside.command;

import java.util.ArrayList;
import java.util.List;
import tightside.drive.Drive;
import tightside.engine.ToothTable;
import tightside.words.Numbers;
import tightside.words.Sentences;
import tightside.words.ValveWords;

/** What is said of an engine's valves, as a technician reads it. */
final class ValvesText {

  private ValvesText() {}

  static List<String> of(Drive drive, ValvesAnswer answer) {
    List<String> lines = new ArrayList<>(List.of(drive.name(), drive.about(), ""));
    lines.add("Valves, in crank degrees before and after top dead centre at gas exchange:");
    if (answer.timed().engine().atReferenceDegrees().isEmpty()) {
      lines.add("  " + ValveWords.assumed());
    }
    answer.valves().forEach(c -> lines.add("  " + ValveWords.valve(c)));
    answer.timed().overlapDegrees().ifPresent(o -> lines.add("  " + ValveWords.overlap(o)));
    lines.add("  " + ValveWords.compression(answer.timed().squeeze()));
    answer.phasers().forEach(p -> lines.add("  " + ValveWords.phaser(p)));
    for (ToothTable table : answer.teeth()) {
      lines.add("");
      lines.add(
          "%s on another tooth, %s crank degrees each:"
              .formatted(table.shaft(), Numbers.fixed(table.degreesPerTooth(), 1)));
      table.rows().forEach(row -> lines.add("  " + ValveWords.lay(row)));
    }
    lines.add("");
    if (answer.contact()) {
      lines.add(ValveWords.contactCaution());
    }
    lines.add(ValveWords.caution());
    lines.add(Sentences.caution());
    return lines;
  }
}
