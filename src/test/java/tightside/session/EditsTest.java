package tightside.session;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import tightside.drive.Heat;
import tightside.drive.Seen;
import tightside.timing.Drives;
import tightside.timing.Seat;
import tightside.timing.State;

class EditsTest {

  private static final Seat EXHAUST = new Seat("main", "exhaust");
  private static final StrandId TO_INTAKE = new StrandId("main", "crank", "intake");

  private static final Snapshot OPENED = Snapshot.opened(Drives.answered(), "demo");

  /** Worn, turned, reseated, held and counted, so that everything can be undone. */
  private static Snapshot busy() {
    Snapshot snapshot = Turns.to(OPENED, 33).after();
    snapshot = Edits.reseat(snapshot, EXHAUST, 2).after();
    snapshot = Edits.stretch(snapshot, "main", 0.3).after();
    snapshot = Edits.hold(snapshot, "main", 3).after();
    return Edits.count(snapshot, TO_INTAKE, "51").after();
  }

  private static Arguments edit(String name, Function<Snapshot, Edit> edit) {
    return Arguments.of(name, edit);
  }

  static Stream<Arguments> edits() {
    return Stream.of(
        edit("Reseat exhaust by +1", s -> Edits.reseat(s, EXHAUST, 1)),
        edit("Reseat exhaust by -4", s -> Edits.reseat(s, EXHAUST, -4)),
        edit("Put exhaust right", s -> Edits.putRight(s, EXHAUST)),
        edit("Put every sprocket right", Edits::putAllRight),
        edit("Stretch main to 0.25 %", s -> Edits.stretch(s, "main", 0.25)),
        edit("Fit main new", s -> Edits.stretch(s, "main", 0)),
        edit("Hold the plunger of main at 12.0 mm", s -> Edits.hold(s, "main", 12)),
        edit("Let the plunger of main go", s -> Edits.release(s, "main")),
        edit("Count crank to intake", s -> Edits.count(s, TO_INTAKE, "50")),
        edit("Count crank to intake", s -> Edits.count(s, TO_INTAKE, " ")),
        edit("Set the engagement to 12.5 mm", s -> SlackEdits.engagement(s, 12.5)),
        edit(
            "Set the locking tools' play to 2 degrees",
            s -> SlackEdits.play(s, OptionalDouble.of(2))),
        edit(
            "Set the heat to 90 degrees, block 11.0",
            s -> SlackEdits.heat(s, Heat.castIronBlock())),
        edit("Clear the counts", Edits::clearCounts),
        edit("Put the cover on", s -> Edits.cover(s, Seen.COVER_ON)),
        edit("Look with a borescope", s -> Edits.cover(s, Seen.BORESCOPE)),
        edit("Turn the crank to 90.0 degrees", s -> Turns.to(s, 90)),
        edit("Turn the crank to 32.0 degrees", s -> Turns.by(s, -1)),
        edit("Turn the crank to 53.0 degrees", s -> Turns.byTeeth(s, 1)),
        edit("Turn the crank to 753.0 degrees", Turns::byTwoTurns),
        edit("Jump to the reference position", Turns::toReference));
  }

  @ParameterizedTest
  @MethodSource("edits")
  void done_undone_equals_redone_equals(String name, Function<Snapshot, Edit> make) {
    Snapshot before = busy();
    Edit edit = make.apply(before);
    assertThat(edit.name()).isEqualTo(name);
    assertThat(edit.after()).isNotEqualTo(before);
    History done = History.opened(before).step(edit);
    assertThat(done.now()).isEqualTo(edit.after());
    assertThat(done.undo().now()).isEqualTo(before);
    assertThat(done.undo().redo()).isEqualTo(done);
  }

  @Test
  void coverOff_isNamed() {
    assertThat(Edits.cover(OPENED, Seen.COVER_OFF).name()).isEqualTo("Take the cover off");
  }

  @Test
  void reseats_addUp_andStopAtThreeTeeth() {
    Snapshot two = Edits.reseat(Edits.reseat(OPENED, EXHAUST, 1).after(), EXHAUST, 1).after();
    assertThat(two.reseats()).isEqualTo(Map.of(EXHAUST, 2));
    Edit beyond = Edits.reseat(two, EXHAUST, 5);
    assertThat(beyond.name()).isEqualTo("Reseat exhaust by +1");
    assertThat(beyond.after().reseats()).isEqualTo(Map.of(EXHAUST, 3));
  }

  @Test
  void reseatsThatCancel_leaveNothing() {
    Snapshot there = Edits.reseat(OPENED, EXHAUST, 1).after();
    assertThat(Edits.reseat(there, EXHAUST, -1).after()).isEqualTo(OPENED);
  }

  @Test
  void shaftOfTwoChains_namedWithItsChain() {
    Snapshot stages = Snapshot.opened(TwoStages.drive(), "stages");
    assertThat(Edits.reseat(stages, new Seat("upper", "idler"), 1).name())
        .isEqualTo("Reseat upper/idler by +1");
    assertThat(Edits.reseat(stages, new Seat("upper", "cam"), 1).name())
        .isEqualTo("Reseat cam by +1");
  }

  @Test
  void newChain_isNotNoted() {
    Snapshot worn = Edits.stretch(OPENED, "main", 0.3).after();
    assertThat(Edits.stretch(worn, "main", 0).after()).isEqualTo(OPENED);
  }

  @Test
  void count_keepsTheWayItWasTyped() {
    Snapshot between = OPENED.with(Look.usual().counting(CountingWay.BETWEEN));
    Snapshot counted = Edits.count(between, TO_INTAKE, "50").after().with(Look.usual());
    assertThat(counted.counts().get(TO_INTAKE)).isEqualTo(new Count("50", CountingWay.BETWEEN));
  }

  @Test
  void eighteenTeeth_onceRound() {
    Snapshot snapshot = OPENED;
    for (int i = 0; i < 18; i++) {
      snapshot = Turns.byTeeth(snapshot, 1).after();
    }
    assertThat(snapshot.crank().degrees()).isCloseTo(360, within(1e-9));
    assertThat(Turns.byTeeth(OPENED, 1).after().crank().degrees()).isEqualTo(20);
  }

  @Test
  void teethOfTheCrankOnTheSelectedChain_elseOfItsFirst() {
    Snapshot stages = Snapshot.opened(TwoStages.drive(), "stages");
    Look upper =
        stages.look().selecting(Optional.of(new Look.Selection("upper", Optional.empty())));
    assertThat(Turns.byTeeth(stages.with(upper), 1).after().crank().degrees()).isEqualTo(18);
  }

  @Test
  void turnedBeyondTheEnd_stopsThere() {
    assertThat(Turns.to(OPENED, 1e12).after().crank().degrees()).isEqualTo(Crank.ANGLE.most());
  }

  @Test
  void reference_isSetNotTurnedBackTo() {
    Snapshot back = Turns.by(OPENED, -10).after();
    assertThat(back.state().arrived()).isEqualTo(State.Arrived.BACKWARD);
    assertThat(Turns.toReference(back).after()).isEqualTo(OPENED);
  }

  @Test
  void nonsense_refused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Edits.reseat(OPENED, new Seat("main", "pump"), 1));
    assertThatIllegalArgumentException().isThrownBy(() -> Edits.stretch(OPENED, "main", -1));
    assertThatIllegalArgumentException().isThrownBy(() -> Edits.stretch(OPENED, "other", 1));
    assertThatIllegalArgumentException().isThrownBy(() -> Edits.hold(OPENED, "main", 28.1));
    assertThatIllegalArgumentException().isThrownBy(() -> Edits.cover(OPENED, Seen.NEVER));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Edits.count(OPENED, new StrandId("other", "a", "b"), "1"));
  }
}
