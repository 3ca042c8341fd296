package tightside.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import tightside.lesson.Cause;
import tightside.lesson.Diagnosis;
import tightside.lesson.Draft;
import tightside.lesson.LessonRun;
import tightside.lesson.LessonSheet;
import tightside.lesson.Opened;
import tightside.lesson.Stage;
import tightside.lesson.Way;
import tightside.session.Sentence.Topic;
import tightside.timing.State;

/**
 * The steps of a lesson. The names of those that write a prediction say which part was written and
 * not what it says; nothing here looks behind the seal before the engine may be turned.
 */
public final class LessonEdits {

  private static final String AMOUNT = "predict amount";

  private LessonEdits() {}

  /**
   * The snapshot with which a lesson begins: the drive as it belongs, with the lesson's access.
   *
   * @param opened the lesson's drive as it is opened
   * @param look of the session before, for its size of text
   */
  public static Snapshot begun(Snapshot opened, LessonSheet sheet, Look look) {
    Look usual = Look.usual();
    return opened
        .with(sheet.access())
        .with(new Look(usual.selected(), usual.counting(), look.textPercent()))
        .with(LessonRun.begun(sheet));
  }

  /** The same of a lesson that was taken before. */
  public static Snapshot begunAgain(Snapshot opened, LessonSheet sheet, Look look) {
    Snapshot begun = begun(opened, sheet, look);
    return begun.with(run(begun).again());
  }

  public static Edit cause(Snapshot now, Cause cause) {
    return drafted(now, "cause", draft -> draft.with(cause));
  }

  /**
   * @param shaft {@link Diagnosis#NO_SHAFT} for none
   */
  public static Edit shaft(Snapshot now, String shaft) {
    return drafted(now, "sprocket", draft -> draft.shaft(shaft));
  }

  public static Edit way(Snapshot now, Way way) {
    return drafted(now, "direction", draft -> draft.with(way));
  }

  public static Edit amount(Snapshot now, String typed) {
    Edit edit = drafted(now, "amount", draft -> draft.amount(typed));
    return Edit.partOf(AMOUNT, edit.name(), edit.after());
  }

  private static Edit drafted(Snapshot now, String part, UnaryOperator<Draft> change) {
    LessonRun run = run(now);
    return Edit.single("Predict the " + part, now.with(run.drafted(change.apply(run.draft()))));
  }

  private static LessonRun run(Snapshot now) {
    return now.lesson().orElseThrow(() -> new IllegalStateException("no lesson is under way"));
  }

  /** What a prediction still lacks, in sentences; none where it can be committed. */
  public static List<String> missing(LessonRun run) {
    List<String> sentences = new ArrayList<>();
    Draft draft = run.draft();
    if (draft.cause().isEmpty()) {
      sentences.add("Choose what is wrong.");
    }
    if (draft.shaft().isEmpty()) {
      sentences.add("Choose a sprocket, or none.");
    }
    if (draft.way().isEmpty()) {
      sentences.add("Choose a direction, or neither.");
    }
    if (draft.amount().isBlank()) {
      sentences.add("Write an amount; 0 where nothing stands off.");
    } else {
      amount(run).refusal().ifPresent(sentences::add);
    }
    return sentences;
  }

  private static Typed amount(LessonRun run) {
    return Decimals.within(run.draft().amount(), "The amount", run.sheet().quantity().limits());
  }

  /** Commits the prediction; no step where it lacks something. */
  public static Edit commit(Snapshot now) {
    LessonRun run = run(now);
    Optional<Diagnosis> written = written(run);
    return Edit.single(
        "Commit the prediction", written.map(w -> now.with(run.commit(w))).orElse(now));
  }

  private static Optional<Diagnosis> written(LessonRun run) {
    Draft draft = run.draft();
    return missing(run).isEmpty() && amount(run) instanceof Typed.Number number
        ? Optional.of(
            new Diagnosis(
                draft.cause().orElseThrow(),
                draft.shaft().orElseThrow(),
                draft.way().orElseThrow(),
                number.value()))
        : Optional.empty();
  }

  /** Breaks the seal: from here on the drive is as it is. No step before a prediction. */
  public static Edit turn(Snapshot now) {
    LessonRun run = run(now).turn();
    Snapshot after = run.opened().map(Opened::state).map(state -> asItIs(now, state)).orElse(now);
    return Edit.single("Turn the engine", after.with(run));
  }

  private static Snapshot asItIs(Snapshot now, State state) {
    return now.with(state).with(Crank.REFERENCE);
  }

  public static Edit explain(Snapshot now) {
    return Edit.single("Explain", now.with(run(now).explain()));
  }

  /**
   * @param option of the closing question, from 0
   */
  public static Edit state(Snapshot now, int option) {
    return Edit.single("State a belief", now.with(run(now).state(option)));
  }

  /**
   * Whether a step is allowed: while a lesson hides what is wrong, only its own steps and looking
   * are.
   */
  static boolean allowed(Snapshot now, Snapshot after) {
    if (!now.sealed()) {
      return true;
    }
    Optional<LessonRun> lesson = after.lesson();
    return lesson.isPresent()
        && (lesson.get().stage() == Stage.TURNED
            ? now.lesson().orElseThrow().committed().isPresent()
            : after.equals(now.with(after.look()).with(lesson.get())));
  }

  /** Whether a step leads past a point to which no undo may lead back. */
  static boolean closesBehind(Snapshot now, Snapshot after) {
    return now.sealed()
        && !now.lesson().map(LessonRun::stage).equals(after.lesson().map(LessonRun::stage));
  }

  /** What is said while nothing else may be. */
  static Sentence sealed(Snapshot now) {
    boolean committed = now.lesson().flatMap(LessonRun::committed).isPresent();
    return new Sentence(
        Topic.COUNTS,
        committed
            ? "Your prediction is committed. Turn the engine on the card Lesson, and see."
            : "A lesson is on: nothing moves and nothing is told before a prediction is committed on"
                + " the card Lesson.");
  }
}
