package tightside.lesson;

import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import tightside.timing.Seat;

/**
 * A lesson that is under way.
 *
 * @param draft the prediction as it is being written
 * @param committed the prediction as it was written; nothing before
 * @param answer to the closing question, from 0
 * @param takenBefore whether the same was taken before, so that its answer may be known
 */
public record LessonRun(
    LessonSheet sheet,
    Draft draft,
    Stage stage,
    Optional<Diagnosis> committed,
    OptionalInt answer,
    boolean takenBefore) {

  public LessonRun {
    if (stage == Stage.PREDICT == committed.isPresent()) {
      throw new IllegalArgumentException("a prediction is written once, before anything moves");
    }
    if (answer.isPresent() && stage != Stage.EXPLAINED) {
      throw new IllegalArgumentException("a belief is stated at the end");
    }
  }

  public static LessonRun begun(LessonSheet sheet) {
    return new LessonRun(
        sheet, Draft.empty(), Stage.PREDICT, Optional.empty(), OptionalInt.empty(), false);
  }

  /** The same, which was taken before. */
  public LessonRun again() {
    return new LessonRun(sheet, draft, stage, committed, answer, true);
  }

  /** The same while it is still being written. */
  public LessonRun drafted(Draft other) {
    return stage == Stage.PREDICT
        ? new LessonRun(sheet, other, stage, committed, answer, takenBefore)
        : this;
  }

  /** Writes the prediction down for good; it is written once. */
  public LessonRun commit(Diagnosis prediction) {
    return stage == Stage.PREDICT
        ? new LessonRun(sheet, draft, Stage.COMMITTED, Optional.of(prediction), answer, takenBefore)
        : this;
  }

  /** Lets the engine be turned, once a prediction is committed. */
  public LessonRun turn() {
    return stage == Stage.COMMITTED
        ? new LessonRun(sheet, draft, Stage.TURNED, committed, answer, takenBefore)
        : this;
  }

  public LessonRun explain() {
    return stage == Stage.TURNED
        ? new LessonRun(sheet, draft, Stage.EXPLAINED, committed, answer, takenBefore)
        : this;
  }

  /** States a belief; another may be stated until it is the right one. */
  public LessonRun state(int option) {
    return stage == Stage.EXPLAINED && !done()
        ? new LessonRun(sheet, draft, stage, committed, OptionalInt.of(option), takenBefore)
        : this;
  }

  /** Whether the right belief is stated, or none is asked for. */
  public boolean done() {
    return stage == Stage.EXPLAINED
        && (sheet.closing().isEmpty() || answer.isPresent() && sheet.states(answer.getAsInt()));
  }

  /**
   * Teeth by which sprockets sat off when the links under their marks were painted; nothing as long
   * as that has to stay hidden.
   */
  public Map<Seat, Integer> painted() {
    return stage.hides() ? Map.of() : sheet.painted();
  }

  /** What was sealed; nothing as long as it has to stay so. */
  public Optional<Opened> opened() {
    return stage.hides() ? Optional.empty() : committed.map(sheet::open);
  }
}
