package tightside.lesson;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tightside.drive.Seen;
import tightside.timing.Seat;
import tightside.timing.State;

/** Each part has its own credit; nothing is handed out before a prediction. */
class MarkingTest {

  private static final LessonSheet SHEET = Lessons.sheet(ReadyLesson.PAINT);

  @ParameterizedTest
  @CsvSource({
    "WRONG_TOOTH, exhaust, RETARDED, 20,   4",
    "WRONG_TOOTH, exhaust, RETARDED, 20.5, 4",
    "WRONG_TOOTH, exhaust, RETARDED, 21,   3",
    "WRONG_TOOTH, exhaust, ADVANCED, 20,   3",
    "WRONG_TOOTH, intake,  RETARDED, 20,   3",
    "WORN_CHAIN,  exhaust, RETARDED, 20,   3",
    "WORN_CHAIN,  intake,  RETARDED, 10,   1",
    "NOTHING,     '',      NEITHER,  0,    0"
  })
  void everyPartIsMarkedOnItsOwn(Cause cause, String shaft, Way way, double amount, int points) {
    assertThat(SHEET.open(new Diagnosis(cause, shaft, way, amount)).marking().points())
        .isEqualTo(points);
  }

  /** One camshaft and the crankshaft: one a tooth behind is the other a tooth ahead. */
  @Test
  void twoNamesForTheSameLinksAreBothRight() {
    Setting setting = Lessons.setting("one-cam-no-tensioner");
    State behind = State.reference().reseated(new Seat("main", "cam"), -1);
    Truth truth = Truth.of(setting, behind, Quantity.CRANK_DEGREES, Margin.EXACT);
    assertThat(truth.shafts()).containsExactlyInAnyOrder("cam", "crank");
  }

  @Test
  void nothingComesOutBeforeAPredictionStands() {
    LessonRun begun = LessonRun.begun(SHEET);
    assertThat(begun.opened()).isEmpty();
    assertThat(begun.turn()).isEqualTo(begun);
    assertThat(begun.explain()).isEqualTo(begun);
    assertThat(begun.state(1)).isEqualTo(begun);
    LessonRun committed = begun.commit(new Diagnosis(Cause.NOTHING, "", Way.NEITHER, 0));
    assertThat(committed.opened()).isEmpty();
    assertThat(committed.turn().opened()).isPresent();
  }

  @Test
  void aPredictionIsWrittenOnce() {
    Diagnosis first = new Diagnosis(Cause.NOTHING, "", Way.NEITHER, 0);
    LessonRun committed = LessonRun.begun(SHEET).commit(first);
    Diagnosis second = new Diagnosis(Cause.WRONG_TOOTH, "exhaust", Way.RETARDED, 20);
    assertThat(committed.commit(second).committed()).contains(first);
    assertThat(committed.drafted(committed.draft().with(Way.ADVANCED))).isEqualTo(committed);
    assertThatThrownBy(
            () ->
                new LessonRun(
                    SHEET,
                    Draft.empty(),
                    Stage.TURNED,
                    Optional.empty(),
                    OptionalInt.empty(),
                    false))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void theLessonEndsWithTheRightBeliefStated() {
    LessonRun explained =
        LessonRun.begun(SHEET)
            .commit(new Diagnosis(Cause.NOTHING, "", Way.NEITHER, 0))
            .turn()
            .explain();
    assertThat(explained.done()).isFalse();
    assertThat(explained.state(0).done()).isFalse();
    assertThat(explained.state(0).state(1).done()).isTrue();
    assertThat(explained.state(1).state(0)).isEqualTo(explained.state(1));
  }

  @Test
  void whatTheMarginSaysIsTheSameWhateverIsRight() {
    assertThat(new Margin(0.5, 0.4).words()).isEqualTo("right within 40 %");
    assertThat(new Margin(0.5, 0).words()).isEqualTo("right within 0.5");
    assertThat(Margin.EXACT.words()).isEqualTo("right if exact");
    assertThat(SHEET.access()).isEqualTo(Seen.COVER_OFF);
  }
}
