package tightside.session;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import tightside.timing.Drives;
import tightside.timing.Seat;

class HistoryTest {

  private static final Seat EXHAUST = new Seat("main", "exhaust");

  private final Snapshot opened = Snapshot.opened(Drives.answered(), "demo");
  private final History start = History.opened(opened);

  private static History reseat(History history, int teeth) {
    return history.step(Edits.reseat(history.now(), EXHAUST, teeth));
  }

  private static History turn(History history, double degrees) {
    return history.step(Turns.by(history.now(), degrees));
  }

  @Test
  void opened_nothingToUndo_nothingToSave() {
    assertThat(start.undoName()).isEmpty();
    assertThat(start.redoName()).isEmpty();
    assertThat(start.isSaved()).isTrue();
    assertThat(start.undo()).isEqualTo(start);
    assertThat(start.redo()).isEqualTo(start);
  }

  @Test
  void undoAndRedo_byName() {
    History history = reseat(reseat(start, 1), -2);
    assertThat(history.undoName()).contains("Reseat exhaust by -2");
    assertThat(history.undo().redoName()).contains("Reseat exhaust by -2");
    assertThat(history.undo().undoName()).contains("Reseat exhaust by +1");
    assertThat(history.undo().undo().now()).isEqualTo(opened);
    assertThat(history.undo().undo().redo().redo()).isEqualTo(history);
  }

  @Test
  void stepAfterUndo_forgetsWhatWasUndone() {
    History history = turn(reseat(start, 1).undo(), 10);
    assertThat(history.redoName()).isEmpty();
    assertThat(history.steps()).hasSize(2);
  }

  @Test
  void turnsThatFollowEachOther_undoneAsOne() {
    History history = turn(turn(turn(reseat(start, 1), 10), 10), 10);
    assertThat(history.now().crank().degrees()).isEqualTo(30);
    assertThat(history.undoName()).contains("Turn the crank to 30.0 degrees");
    assertThat(history.undo().now().crank()).isEqualTo(Crank.REFERENCE);
    assertThat(history.undo().undoName()).contains("Reseat exhaust by +1");
  }

  @Test
  void turnsWithSomethingBetween_undoneEach() {
    History history = turn(reseat(turn(start, 10), 1), 10);
    assertThat(history.undo().undo().now().crank().degrees()).isEqualTo(10);
  }

  @Test
  void reseatsThatFollowEachOther_undoneEach() {
    assertThat(reseat(reseat(start, 1), 1).undo().now()).isEqualTo(reseat(start, 1).now());
  }

  @Test
  void turnAfterSaving_isAStepOfItsOwn() {
    History saved = turn(start, 10).markSaved();
    History history = turn(saved, 10);
    assertThat(history.isSaved()).isFalse();
    assertThat(history.undo().now()).isEqualTo(saved.now());
    assertThat(history.undo().isSaved()).isTrue();
  }

  @Test
  void turnAfterUndo_doesNotSwallowTheTurnBefore() {
    History history = turn(reseat(turn(start, 10), 1).undo(), 5);
    assertThat(history.now().crank().degrees()).isEqualTo(15);
    assertThat(history.undo().now().crank().degrees()).isEqualTo(10);
  }

  @Test
  void savedStepThatIsForgotten_canNotBeReachedAgain() {
    History history = reseat(reseat(start, 1).markSaved().undo(), -1);
    assertThat(history.isSaved()).isFalse();
    assertThat(history.undo().isSaved()).isFalse();
    assertThat(history.saved()).isEmpty();
  }

  @Test
  void undoneToTheSavedStep_nothingToSave() {
    assertThat(reseat(start, 1).undo().isSaved()).isTrue();
    assertThat(reseat(start, 1).isSaved()).isFalse();
  }

  @Test
  void stepThatChangesNothing_isNone() {
    assertThat(reseat(start, 0)).isEqualTo(start);
    assertThat(turn(start, 0)).isEqualTo(start);
  }

  @Test
  void look_isNoStep_andStaysThroughUndo() {
    History larger = reseat(start, 1).look(Look.usual().textSteps(5));
    assertThat(larger.steps()).hasSize(2);
    assertThat(larger.undo().now().look().textPercent()).isEqualTo(150);
    assertThat(larger.undo().now().reseats()).isEmpty();
    assertThat(start.look(Look.usual().textSteps(5)).isSaved()).isTrue();
  }
}
