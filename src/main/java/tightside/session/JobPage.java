package tightside.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tightside.job.Job;
import tightside.record.Answer;
import tightside.record.Progress;
import tightside.record.Verdict;
import tightside.sheet.Field;
import tightside.sheet.JobSheet;
import tightside.sheet.Part;
import tightside.sheet.Section;
import tightside.sheet.Step;
import tightside.sheet.Work;

/**
 * The steps of a job, one after the other as they are walked through, and how far they are.
 *
 * @param walk all steps in the order of the work, without the stop cards
 * @param stops the stop cards
 */
public record JobPage(JobSheet sheet, List<Step> walk, List<Step> stops) {

  public JobPage {
    walk = List.copyOf(walk);
    stops = List.copyOf(stops);
  }

  /** What a page is made of: where it is equal, so is the page. */
  public static Object inputs(Snapshot now) {
    return work(now);
  }

  /** Makes the page; a few tenths of a second where wrong lays are gone through. */
  public static JobPage of(Snapshot now) {
    JobSheet sheet = JobSheet.of(work(now));
    List<Step> walk = new ArrayList<>();
    for (Section section : sheet.sections()) {
      if (section.part() != Part.STOP) {
        walk.addAll(section.steps());
      }
    }
    return new JobPage(sheet, walk, sheet.section(Part.STOP).steps());
  }

  /** What the sheet of the job now on the desk is made of. */
  public static Work work(Snapshot now) {
    Job noted = now.job().job();
    Job job =
        new Job(
            now.slack().playDegrees(), noted.note(), noted.figures(), noted.order(), noted.bolts());
    return new Work(now.drive(), now.engine(), now.phasers(), job, now.cover());
  }

  public static boolean takesEntry(Step step) {
    return !(step.field() instanceof Field.Nothing);
  }

  /** The part of the work that a step belongs to. */
  public Section section(Step step) {
    return sheet.sections().stream()
        .filter(s -> s.steps().contains(step))
        .findFirst()
        .orElseThrow();
  }

  public Optional<Step> stop(String id) {
    return stops.stream().filter(step -> step.id().equals(id)).findFirst();
  }

  /** Steps that take an entry and have none. */
  public List<Step> open(Progress progress) {
    return walk.stream()
        .filter(JobPage::takesEntry)
        .filter(step -> progress.answer(step.id()).isEmpty())
        .toList();
  }

  /** Steps whose entry speaks against the drive or the work. */
  public List<Step> wrong(Progress progress) {
    return walk.stream()
        .filter(step -> progress.answer(step.id()).map(Answer::verdict).equals(WRONG))
        .toList();
  }

  private static final Optional<Verdict> WRONG = Optional.of(Verdict.WRONG);

  /**
   * Place in the walk of the step where something is typed and not entered, or of the first that is
   * to be done; the last one if none is.
   */
  public int firstOpen(Progress progress) {
    for (int i = 0; i < walk.size(); i++) {
      if (progress.typed().containsKey(walk.get(i).id())) {
        return i;
      }
    }
    List<Step> open = open(progress);
    if (progress.answers().isEmpty()) {
      return 0;
    }
    return open.isEmpty() ? walk.size() - 1 : walk.indexOf(open.get(0));
  }

  /** "12 of 41 answers entered, 1 of them wrong": of the steps that ask for one. */
  public String done(Progress progress) {
    int all = (int) walk.stream().filter(JobPage::takesEntry).count();
    int wrong = wrong(progress).size();
    int done = all - open(progress).size();
    return "%d of %d answers entered%s"
        .formatted(done, all, wrong == 0 ? "" : ", %d of them wrong".formatted(wrong));
  }

  /** The same of one part of the work, and how many steps it has, some of them only to read. */
  public String done(Section section, Progress progress) {
    List<Step> steps = section.steps().stream().filter(JobPage::takesEntry).toList();
    long done = steps.stream().filter(s -> progress.answer(s.id()).isPresent()).count();
    long wrong = section.steps().stream().filter(wrong(progress)::contains).count();
    String all = Words.number(section.steps().size(), "step", "steps");
    return steps.isEmpty()
        ? all + " to read"
        : "%s, %d of %s entered%s"
            .formatted(
                all,
                done,
                Words.number(steps.size(), "answer", "answers"),
                wrong == 0 ? "" : ", %d wrong".formatted(wrong));
  }
}
