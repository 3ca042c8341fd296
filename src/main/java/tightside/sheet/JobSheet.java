package tightside.sheet;

import java.util.List;
import java.util.Optional;
import tightside.drive.Seen;

/**
 * The job sheet as content: the same drive, access and job always give the same sheet, with the
 * same ids. Whoever shows it lays it out; whoever keeps it adds the day.
 *
 * @param drive its name
 * @param about what it is, in its owner's words
 * @param note what the user noted for the job
 * @param sections in the order of the work
 */
public record JobSheet(
    String drive, String about, Optional<String> note, Seen cover, List<Section> sections) {

  public JobSheet {
    sections = List.copyOf(sections);
    long ids = sections.stream().flatMap(s -> s.steps().stream()).map(Step::id).distinct().count();
    if (ids != sections.stream().mapToLong(s -> s.steps().size()).sum()) {
      throw new IllegalArgumentException("two steps have the same id");
    }
  }

  /** Makes the sheet; up to a few tenths of a second, for the wrong lays are gone through. */
  public static JobSheet of(Work work) {
    return of(Facts.of(work));
  }

  static JobSheet of(Facts facts) {
    return new JobSheet(
        facts.drive().name(),
        facts.drive().about(),
        facts.work().job().note(),
        facts.cover(),
        List.of(
            BeforePart.cautions(),
            BeforePart.before(facts),
            BeforePart.paint(facts),
            HoldPart.lock(facts),
            HoldPart.compare(facts),
            HoldPart.plug(),
            HoldPart.holdBack(facts),
            SwapPart.hang(facts),
            SwapPart.off(facts),
            SwapPart.on(facts),
            LetOutPart.of(facts),
            TightenPart.of(facts),
            ProvePart.prove(facts),
            ProvePart.again(facts),
            UnprovedPart.of(facts),
            StopPart.of(facts)));
  }

  public Section section(Part part) {
    return sections.stream().filter(s -> s.part() == part).findFirst().orElseThrow();
  }

  /** Every step that takes an entry, in order. */
  public List<Step> toEnter() {
    return sections.stream()
        .flatMap(s -> s.steps().stream())
        .filter(s -> !(s.field() instanceof Field.Nothing))
        .toList();
  }

  public Optional<Step> step(String id) {
    return sections.stream()
        .flatMap(s -> s.steps().stream())
        .filter(s -> s.id().equals(id))
        .findFirst();
  }
}
