package tightside.session;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import tightside.drive.Seen;
import tightside.lesson.Cause;
import tightside.lesson.Diagnosis;
import tightside.lesson.LessonSheet;
import tightside.lesson.Lessons;
import tightside.lesson.ReadyLesson;
import tightside.lesson.Stage;
import tightside.lesson.Way;
import tightside.timing.Seat;

/** A session with a lesson on: what it holds, shows, and lets be done before and after. */
class LessonEditsTest {

  private static final LessonSheet SHEET = Lessons.sheet(ReadyLesson.PAINT);
  private static final Seat EXHAUST = new Seat("main", "exhaust");

  private static History begun(LessonSheet sheet) {
    Snapshot opened = Snapshot.opened(sheet.setting().drive(), "the lesson");
    return History.opened(LessonEdits.begun(opened, sheet, Look.usual()));
  }

  private static History written(History history) {
    History next = history.step(LessonEdits.cause(history.now(), Cause.WRONG_TOOTH));
    next = next.step(LessonEdits.shaft(next.now(), "exhaust"));
    next = next.step(LessonEdits.way(next.now(), Way.RETARDED));
    return next.step(LessonEdits.amount(next.now(), "20"));
  }

  private static History committed(History history) {
    History written = written(history);
    return written.step(LessonEdits.commit(written.now()));
  }

  private static History turned() {
    History committed = committed(begun(SHEET));
    return committed.step(LessonEdits.turn(committed.now()));
  }

  private static Stage stage(History history) {
    return history.now().lesson().orElseThrow().stage();
  }

  @ParameterizedTest
  @EnumSource(ReadyLesson.class)
  void beforeThePredictionASessionIsTheSameAsOfADriveThatIsRight(ReadyLesson lesson) {
    LessonSheet sheet = Lessons.sheet(lesson);
    Snapshot now = begun(sheet).now();
    Snapshot right = Snapshot.opened(sheet.setting().drive(), "the lesson").with(sheet.access());
    assertThat(now.state()).isEqualTo(right.state());
    assertThat(now.counts()).isEmpty();
    assertThat(now.kept()).isEmpty();
    assertThat(now.toString()).doesNotContain("Diagnosis[").doesNotContain("-1}");
    assertThat(SessionView.of(now).solution()).isEqualTo(SessionView.of(right).solution());
  }

  @Test
  void beforeThePredictionNothingIsSaidButWhy() {
    SessionView view = SessionView.of(begun(SHEET).now());
    assertThat(view.sentences())
        .extracting(Sentence::text)
        .singleElement()
        .asString()
        .startsWith("A lesson is on: nothing moves and nothing is told before a prediction");
    assertThat(view.strandRows("main")).isEmpty();
    assertThat(view.stands("main")).isEmpty();
    assertThat(view.countSentences("main")).isEmpty();
    assertThat(view.shaftRows())
        .allMatch(row -> !row.known())
        .extracting(ShaftRow::state)
        .containsOnly("not told before a prediction");
  }

  @Test
  void onceCommittedItIsNoLongerAskedFor() {
    assertThat(SessionView.of(committed(begun(SHEET)).now()).sentences())
        .extracting(Sentence::text)
        .containsExactly(
            "Your prediction is committed. Turn the engine on the card Lesson, and see.");
  }

  @Test
  void beforeThePredictionNothingMovesAndNothingIsTried() {
    for (History history : List.of(begun(SHEET), committed(begun(SHEET)))) {
      Snapshot now = history.now();
      StrandId strand = new StrandId("main", "crank", "intake");
      for (Edit edit :
          List.of(
              Turns.by(now, 10),
              Turns.byTwoTurns(now),
              Edits.reseat(now, EXHAUST, 1),
              Edits.stretch(now, "main", 0.2),
              Edits.hold(now, "main", 3),
              Edits.count(now, strand, "51"),
              Edits.cover(now, Seen.BORESCOPE),
              SlackEdits.engagement(now, 11))) {
        assertThat(history.step(edit)).as(edit.name()).isEqualTo(history);
      }
    }
  }

  @Test
  void noEditJumpsOverThePrediction() {
    History history = begun(SHEET);
    assertThat(history.step(LessonEdits.turn(history.now()))).isEqualTo(history);
    assertThat(history.step(LessonEdits.explain(history.now()))).isEqualTo(history);
    assertThat(history.step(LessonEdits.commit(history.now()))).isEqualTo(history);
    assertThat(history.step(LessonEdits.state(history.now(), 1))).isEqualTo(history);
  }

  @Test
  void aPredictionIsCommittedWhenAllFourPartsAreWritten() {
    History history = begun(SHEET);
    assertThat(LessonEdits.missing(history.now().lesson().orElseThrow())).hasSize(4);
    History amount = history.step(LessonEdits.amount(history.now(), "twenty"));
    assertThat(LessonEdits.missing(amount.now().lesson().orElseThrow()))
        .contains("\"twenty\" is no number: type one such as 12.5 or 12,5, without a unit.");
    assertThat(stage(committed(history))).isEqualTo(Stage.COMMITTED);
    assertThat(committed(history).now().lesson().orElseThrow().committed())
        .contains(new Diagnosis(Cause.WRONG_TOOTH, "exhaust", Way.RETARDED, 20));
  }

  @Test
  void whatIsWrittenIsUndoneStepByStepUnderNamesThatSayNoAnswer() {
    History history = written(begun(SHEET));
    assertThat(history.undoName()).contains("Predict the amount");
    assertThat(history.undo().undoName()).contains("Predict the direction");
    assertThat(history.steps())
        .extracting(Edit::name)
        .allMatch(name -> !name.contains("exhaust") && !name.contains("etard"));
    assertThat(history.undo().undo().undo().undo().undoName()).isEmpty();
  }

  @Test
  void noUndoLeadsBackBehindThePrediction() {
    History committed = committed(begun(SHEET));
    assertThat(committed.undoName()).isEmpty();
    assertThat(committed.redoName()).isEmpty();
    History turned = turned();
    assertThat(turned.undoName()).isEmpty();
    assertThat(turned.steps()).hasSize(1);
  }

  @Test
  void onceTurnedTheDriveIsAsItIsAndAllMayBeTried() {
    History turned = turned();
    assertThat(turned.now().reseats()).containsEntry(EXHAUST, -1);
    assertThat(SessionView.of(turned.now()).sentences())
        .anyMatch(
            s -> s.text().contains("exhaust shaft stands 10.0 cam degrees (20.0 crank) retarded"));
    History tried = turned.step(Edits.reseat(turned.now(), EXHAUST, 1));
    assertThat(tried.now().reseats()).isEmpty();
    assertThat(tried.undo()).isEqualTo(new History(tried.steps(), 0, turned.saved()));
  }
}
