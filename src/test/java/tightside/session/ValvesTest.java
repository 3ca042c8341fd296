package tightside.session;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import tightside.engine.CrankGear;
import tightside.engine.Engine;
import tightside.files.Model;
import tightside.files.ModelReader;
import tightside.timing.Seat;

/**
 * Turning an engine by hand whose valves touch. The engine of the model: a four whose first piston
 * stands at top dead centre of firing at the reference position (at-reference 360); its exhaust
 * camshaft one tooth, 20 crank degrees, behind touches, as the models' own page says.
 */
class ValvesTest {

  private static final Seat EXHAUST = new Seat("main", "exhaust");
  private static final Snapshot RIGHT = opened("one-tooth-touches");
  private static final SessionView VIEW = SessionView.of(RIGHT);
  private static final Snapshot BEHIND = Edits.reseat(RIGHT, EXHAUST, -1).after();

  static Snapshot opened(String name) {
    Model model = ModelReader.read(Path.of("models", name + ".yaml")).model().orElseThrow();
    return Snapshot.opened(
        model.drive(),
        name,
        SlackSetup.of(OptionalDouble.empty(), model.engine(), model.phasers()));
  }

  private static Snapshot turned(Snapshot now, double degrees) {
    return VIEW.stopped(now, Turns.by(now, degrees)).after();
  }

  private static List<String> cautions(Snapshot now) {
    return VIEW.next(now).sentences().stream()
        .filter(s -> s.topic() == Sentence.Topic.CAUTION)
        .map(Sentence::text)
        .toList();
  }

  @Test
  void standingRightItTurnsForEver() {
    assertThat(turned(RIGHT, 7200).crank().degrees()).isEqualTo(7200);
    assertThat(turned(RIGHT, -7200).crank().degrees()).isEqualTo(-7200);
  }

  /**
   * The room written out again: the exhaust valve 20 degrees late, lift 9.8, half its duration 124,
   * full lift at -108 + 20, tilt 17, gap 1.5; crank throw 44, rod 140.
   */
  private static double room(double degrees) {
    double u = 1 - Math.abs(degrees + 88) / 124;
    double lift = u > 0 ? 9.8 * u * u * u * (10 - 15 * u + 6 * u * u) : 0;
    double drop = new CrankGear(88, 140).dropMm(degrees);
    return 1.5 + drop - lift * Math.cos(Math.toRadians(17));
  }

  /**
   * The pistons pass top dead centre every 180 degrees, in the order 1-3-4-2 from firing; at gas
   * exchange it is the fourth's first, then the second's.
   */
  @Test
  void itStopsAtTheFirstTouchOfAnyCylinder() {
    double touch = -40;
    while (room(touch + 1e-4) > 0) {
      touch += 1e-4;
    }
    double first = turned(BEHIND, 720).crank().degrees();
    assertThat(first).isCloseTo(180 + touch, within(2e-4));
    Valves.Touch met =
        VIEW.next(turned(BEHIND, 720)).valves().orElseThrow().touch(first).orElseThrow();
    assertThat(met.cylinder()).isEqualTo(1);
    assertThat(met.degrees()).isCloseTo(touch, within(2e-4));
  }

  @Test
  void itSaysWhereAndWhatAHandShouldDo() {
    Snapshot stopped = turned(BEHIND, 720);
    assertThat(cautions(stopped).get(0))
        .startsWith("STOP at 16")
        .contains("before top dead centre at gas exchange")
        .contains("the exhaust valve of cylinder 2 meets its piston")
        .contains("Do not force the wrench, and never run the starter. Turn back only until");
    assertThat(cautions(BEHIND)).isEmpty();
  }

  /** Where a model does not say how the engine stands, the angle is only assumed. */
  @Test
  void whatIsAssumedIsSaidToBe() {
    Engine known = RIGHT.engine().orElseThrow();
    Engine unknown =
        new Engine(
            known.boreMm(),
            known.strokeMm(),
            known.rodMm(),
            known.compressionRatio(),
            known.valves(),
            known.phasesDegrees(),
            OptionalDouble.empty());
    Snapshot opened =
        Snapshot.opened(
            RIGHT.drive(),
            "no at-reference",
            SlackSetup.of(OptionalDouble.empty(), Optional.of(unknown), Map.of()));
    Snapshot behind = Edits.reseat(opened, EXHAUST, -1).after();
    Snapshot stopped = SessionView.of(behind).stopped(behind, Turns.by(behind, 720)).after();
    SessionView view = SessionView.of(stopped);
    assertThat(view.sentences())
        .extracting(Sentence::text)
        .anyMatch(
            s ->
                s.startsWith("STOP at ")
                    && s.contains("at gas exchange; assumed, for the model has no at-reference)"));
    assertThat(ValveReading.of(view).orElseThrow().where()).endsWith(" (assumed)");
    assertThat(ValvePage.of(stopped, view.valves().orElseThrow()).summary().get(0))
        .startsWith("Assumed: cylinder 1 stands at top dead centre of gas exchange");
    assertThat(cautions(turned(BEHIND, 720)).get(0)).doesNotContain("assumed");
    SessionView right = VIEW.next(RIGHT);
    assertThat(ValvePage.of(RIGHT, right.valves().orElseThrow()).summary().get(0))
        .doesNotContain("Assumed");
  }

  /** The first piston stands at firing at the reference position, and a turn later at exchange. */
  @Test
  void bothDeadCentresHaveTheirNames() {
    assertThat(ValveReading.of(VIEW.next(RIGHT)).orElseThrow().where())
        .isEqualTo("intake valve to piston of cylinder 1, at top dead centre of firing");
    assertThat(ValveReading.of(VIEW.next(turned(RIGHT, 360))).orElseThrow().where())
        .endsWith("cylinder 1, at top dead centre of gas exchange");
    assertThat(ValveReading.of(VIEW.next(turned(RIGHT, 345))).orElseThrow().where())
        .endsWith("cylinder 1, 15.0 before top dead centre");
  }

  @Test
  void theLookTurnsToWhatTouchesUnlessItIsDrawnPast() {
    SessionView stopped = VIEW.next(turned(BEHIND, 720));
    assertThat(ValveReading.of(stopped).orElseThrow().touching())
        .contains("Not the one that touches: that is the exhaust valve of cylinder 2.");
    Look look = Looking.atTouch(stopped);
    assertThat(look.valves().cylinder()).isEqualTo(1);
    assertThat(look.valves().valve()).isEqualTo(1);
    SessionView turned = VIEW.next(stopped.snapshot().with(look));
    assertThat(ValveReading.of(turned).orElseThrow().touching())
        .contains("Shown is the valve that touches.");
    assertThat(ValveReading.of(turned).orElseThrow().roomMm()).isCloseTo(0, within(1e-6));
    Snapshot past = stopped.snapshot().with(Look.usual().with(ValveLook.first().past(true)));
    assertThat(Looking.atTouch(VIEW.next(past))).isEqualTo(past.look());
    assertThat(Looking.atTouch(VIEW.next(RIGHT))).isEqualTo(RIGHT.look());
  }

  @Test
  void largeItOpensOnWhatWasLookedAt() {
    SessionView view =
        VIEW.next(RIGHT.with(Look.usual().with(ValveLook.first().cylinder(2).valve(1))));
    Look large = Looking.large(view, true);
    ShowItem shown = ShowItem.shown(VIEW.next(RIGHT.with(large))).orElseThrow();
    assertThat(shown.question()).isEqualTo("How near is the exhaust valve to its piston?");
    assertThat(shown.number()).endsWith(" mm");
    assertThat(shown.unit()).startsWith("cylinder 3, ");
    Look selecting =
        Look.usual().selecting(Optional.of(new Look.Selection("main", Optional.of("exhaust"))));
    Look strand = Looking.large(VIEW.next(RIGHT.with(selecting)), false);
    assertThat(ShowItem.shown(VIEW.next(RIGHT.with(strand))).orElseThrow().question())
        .isEqualTo("How many links lie from intake to exhaust?");
    Look next = Looking.next(VIEW.next(RIGHT.with(large)), -1);
    assertThat(next.valves().valve()).as("the bench turns with it").isZero();
  }

  @Test
  void goingOnIsRefusedAndGoingBackIsNot() {
    Snapshot stopped = turned(BEHIND, 720);
    assertThat(turned(stopped, 1)).isEqualTo(stopped);
    assertThat(turned(stopped, 7200)).isEqualTo(stopped);
    assertThat(turned(stopped, -3).crank().degrees()).isEqualTo(stopped.crank().degrees() - 3);
  }

  @Test
  void goneBackItIsStoppedOnTheOtherSide() {
    Snapshot back = turned(turned(BEHIND, 720), -720);
    assertThat(back.crank().degrees()).isBetween(-20.0, 10.0);
    assertThat(cautions(back).get(0)).startsWith("STOP at ");
  }

  @Test
  void stepsOfAnySizeStopAtTheSamePlace() {
    double atOnce = turned(BEHIND, 720).crank().degrees();
    for (double step : new double[] {1, 7.3, 20, 95}) {
      Snapshot now = BEHIND;
      for (int i = 0; i < 300 && now.crank().degrees() < 300; i++) {
        now = turned(now, step);
      }
      assertThat(now.crank().degrees()).as("by %s", step).isCloseTo(atOnce, within(1e-9));
    }
  }

  @Test
  void asADrawingOnlyItGoesPastAndSaysSo() {
    Snapshot past = BEHIND.with(BEHIND.look().with(ValveLook.first().past(true)));
    double touch = turned(BEHIND, 720).crank().degrees();
    assertThat(turned(past, 720).crank().degrees()).isEqualTo(720);
    Snapshot inside = turned(past, touch + 3);
    assertThat(cautions(inside).get(0))
        .startsWith("A drawing only, which no engine follows: at ")
        .contains("would stand 0.");
  }

  /** Put back at an angle where the valve would stand in the piston: said, and only out of it. */
  @Test
  void aReseatIntoThePistonIsSaidAndTurnedOutOf() {
    Snapshot deep = Edits.reseat(turned(RIGHT, 165), EXHAUST, -3).after();
    assertThat(cautions(deep).get(0)).contains("would stand ");
    assertThat(turned(deep, 1).crank().degrees()).isEqualTo(165);
    assertThat(turned(deep, -1).crank().degrees()).isEqualTo(164);
  }

  @Test
  void withoutAnEngineNothingStops() {
    Snapshot drive = Snapshot.opened(RIGHT.drive(), "no engine");
    SessionView view = SessionView.of(drive);
    Snapshot wrong = Edits.reseat(drive, EXHAUST, -4).after();
    assertThat(view.valves()).isEmpty();
    assertThat(view.stopped(wrong, Turns.by(wrong, 720)).after().crank().degrees()).isEqualTo(720);
  }

  @Test
  void settingItToTheReferencePositionIsNoTurn() {
    Snapshot stopped = turned(BEHIND, 720);
    assertThat(VIEW.stopped(stopped, Turns.toReference(stopped)).after().crank())
        .isEqualTo(Crank.REFERENCE);
  }

  @Test
  void valvesAreWorkedOutOnceWhileTheEngineTurns() {
    SessionView view = VIEW.next(BEHIND);
    SessionView turned = view.next(Turns.by(BEHIND, 5).after());
    assertThat(turned.valves().orElseThrow()).isSameAs(view.valves().orElseThrow());
    assertThat(view.valves()).isNotEqualTo(VIEW.valves());
  }

  @Test
  void whatIsKeptStaysUntilItIsForgottenOrUndone() {
    Snapshot kept = Comparing.keep(turned(BEHIND, 30)).after();
    Snapshot changed = Edits.reseat(kept, EXHAUST, 3).after();
    SessionView a = VIEW.next(changed).kept().orElseThrow();
    assertThat(a.snapshot().reseats()).isEqualTo(BEHIND.reseats());
    assertThat(a.snapshot().crank()).isEqualTo(changed.crank());
    History history = History.opened(RIGHT).step(Comparing.keep(RIGHT));
    assertThat(history.undoName()).hasValue("Keep this as A");
    assertThat(history.undo().now().kept()).isEmpty();
    assertThat(VIEW.next(Comparing.forget(changed).after()).kept()).isEmpty();
  }
}
