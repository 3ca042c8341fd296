package tightside.print;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import tightside.sheet.Band;
import tightside.sheet.Field;
import tightside.sheet.Part;
import tightside.sheet.Step;
import tightside.sheet.Verdict;
import tightside.words.Numbers;

/** Steps as rows of the page: a box, what to do, and where to write. */
final class SheetRows {

  /** So many bands are told one by one beside a blank. */
  private static final int BANDS = 4;

  private SheetRows() {}

  static Map<String, Object> row(Part part, Step step, Set<String> said) {
    Map<String, Object> row = new HashMap<>();
    row.put("text", step.text());
    row.put("notes", notes(step).stream().filter(said::add).toList());
    boolean bolt = part == Part.TIGHTEN && step.field() instanceof Field.Maker;
    row.put("tick", bolt || step.field() instanceof Field.Tick);
    row.put("bullet", step.field() instanceof Field.Nothing);
    row.put("lines", step.field() instanceof Field.Note);
    row.put("yesNo", step.field() instanceof Field.YesNo);
    Object blank = blank(step.field());
    row.put("blank", blank);
    row.put("entry", blank != Boolean.FALSE || step.field() instanceof Field.YesNo);
    return row;
  }

  /** What paper can't judge, it says beforehand. */
  private static List<String> notes(Step step) {
    List<String> notes = new ArrayList<>(step.notes());
    if (step.field() instanceof Field.YesNo question) {
      notes.add("If no: " + question.no().words());
    } else if (step.field() instanceof Field.Reading reading && step.notes().isEmpty()) {
      bands(reading, notes);
    }
    return notes;
  }

  private static void bands(Field.Reading reading, List<String> notes) {
    if (reading.bands().isEmpty()) {
      notes.add(reading.otherwise());
    } else if (reading.bands().size() <= BANDS && reading.unit() == Field.Unit.MM) {
      reading.bands().stream()
          .filter(band -> band.says().verdict() != Verdict.RIGHT)
          .map(band -> told(reading, band))
          .forEach(notes::add);
    }
  }

  private static String told(Field.Reading reading, Band band) {
    boolean last = band == reading.bands().get(reading.bands().size() - 1);
    String range =
        last
            ? "From %s mm".formatted(Numbers.fixed(band.from(), 1))
            : "%s to %s mm".formatted(Numbers.fixed(band.from(), 1), Numbers.fixed(band.to(), 1));
    return range + ": " + band.says().words();
  }

  private static Object blank(Field field) {
    if (field instanceof Field.Links links) {
      return Map.of(
          "wide",
          false,
          "unit",
          "links",
          "hint",
          "right: %d (%d plain between)".formatted(links.right(), links.between()));
    }
    if (field instanceof Field.Reading reading) {
      return Map.of("wide", false, "unit", reading.unit().sign(), "hint", reading.expected());
    }
    return field instanceof Field.Maker maker
        ? Map.of("wide", true, "unit", maker.unit(), "hint", maker.what())
        : Boolean.FALSE;
  }
}
