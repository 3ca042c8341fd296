package tightside.sheet;

import java.util.ArrayList;
import java.util.List;

/** Gathers the steps of one part. */
final class StepList {

  private final Part part;
  private final List<String> lead = new ArrayList<>();
  private final List<Step> steps = new ArrayList<>();

  StepList(Part part) {
    this.part = part;
  }

  /** Something to know before the steps. */
  StepList lead(String sentence) {
    lead.add(sentence);
    return this;
  }

  StepList tick(String id, String text, String... notes) {
    return add(id, text, new Field.Tick(), notes);
  }

  StepList note(String id, String text, String... notes) {
    return add(id, text, new Field.Note(), notes);
  }

  StepList know(String id, String text, String... notes) {
    return add(id, text, new Field.Nothing(), notes);
  }

  StepList maker(String id, String text, String what, String unit, String... notes) {
    return add(id, text, new Field.Maker(what, unit), notes);
  }

  StepList yesNo(String id, String text, String yes, String no, String... notes) {
    return add(id, text, new Field.YesNo(Judgement.right(yes), Judgement.wrong(no)), notes);
  }

  StepList add(String id, String text, Field field, String... notes) {
    return add(id, text, field, List.of(notes));
  }

  StepList add(String id, String text, Field field, List<String> notes) {
    steps.add(new Step(part.slug() + "/" + id, text, notes, field));
    return this;
  }

  Section section() {
    return new Section(part, lead, steps);
  }
}
