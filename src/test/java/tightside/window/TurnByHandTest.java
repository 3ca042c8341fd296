package tightside.window;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import javafx.scene.input.KeyCode;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tightside.picture.Ink;
import tightside.picture.Shape;
import tightside.session.Turns;

/** The engine turned in every way that the window knows, read from state and picture. */
class TurnByHandTest {

  /** Degrees: far finer than a hand, far coarser than rounding. */
  private static final double CLOSE = 1e-6;

  private static Screen screen;

  @BeforeAll
  static void open() {
    screen = new Screen(Models.opened("two-cams-arm"));
  }

  @BeforeEach
  void atTheReferencePosition() {
    screen.act(w -> w.desk().open(Models.opened("two-cams-arm")));
    screen.press(KeyCode.ESCAPE);
  }

  /** What is left of a turn that is made to be watched. */
  private static void finish() {
    screen.act(w -> w.player().finish());
  }

  private static double crank() {
    return screen.now().crank().degrees();
  }

  /** 18 teeth at the crank: one tooth is 20 degrees. */
  @ParameterizedTest
  @CsvSource({
    "RIGHT, false, 1",
    "UP, false, 1",
    "LEFT, false, -1",
    "DOWN, false, -1",
    "PAGE_UP, false, 20",
    "PAGE_DOWN, false, -20",
    "RIGHT, true, 20",
    "LEFT, true, -20",
    "T, false, 720"
  })
  void keysTurn(KeyCode code, boolean control, double degrees) {
    screen.press(code, control, false);
    finish();
    assertThat(crank()).isEqualTo(degrees, within(CLOSE));
  }

  @ParameterizedTest
  @CsvSource({
    "degree-on, 1",
    "degree-back, -1",
    "tooth-on, 20",
    "tooth-back, -20",
    "two-turns, 720"
  })
  void buttonsTurn(String id, double degrees) {
    screen.fire(id);
    finish();
    assertThat(crank()).isEqualTo(degrees, within(CLOSE));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {"12.5;12.5", "12,5;12.5", "-3;-3", "1234,5;1234.5"})
  void typedAnglesTakePointAndComma(String typed, double degrees) {
    screen.enter("angle", typed);
    assertThat(crank()).isEqualTo(degrees, within(CLOSE));
  }

  @Test
  void whatIsNoAngleIsRefusedInASentenceAndTurnsNothing() {
    screen.enter("angle", "ten");
    assertThat(crank()).isZero();
    assertThat(screen.words()).contains("\"ten\" is no number");
  }

  @Test
  void draggingRoundTheCrankTurnsItByTheAngleOfTheHand() {
    screen.drag("crank", 60, 90, 150);
    assertThat(crank()).isEqualTo(60, within(0.5));
  }

  @Test
  void draggingRoundTheCrankAgainstItsRunTurnsItBackAndWarns() {
    screen.drag("crank", 60, 150, 120);
    assertThat(crank()).isEqualTo(-30, within(0.5));
    assertThat(screen.sentence()).startsWith("The engine was turned back");
  }

  @Test
  void draggingTheGripTurnsToWhereItIsLetGo() {
    TurnRuler ruler =
        (TurnRuler)
            screen.all().stream().filter(TurnRuler.class::isInstance).findFirst().orElseThrow();
    screen.act(w -> Mouse.press(ruler, ruler.getWidth() / 2, 10));
    assertThat(crank()).isEqualTo(360, within(1.0));
  }

  @Test
  void thePictureTurnsWithTheCrank() {
    Vector2D before = mark();
    screen.enter("angle", "90");
    Vector2D after = mark();
    assertThat(before.getY()).isNegative();
    assertThat(after.getX()).isLessThan(-5);
    assertThat(after.getY()).isEqualTo(0, within(1e-6));
  }

  /** The tip of the crank's mark; the crank stands at the origin. */
  private static Vector2D mark() {
    return Stream.of(screen.window().picture().picture().orElseThrow())
        .flatMap(p -> p.shapes().stream())
        .filter(s -> s.tag().ink() == Ink.MARK)
        .map(s -> ((Shape.Run) s).curves().get(0).from())
        .filter(tip -> tip.norm() < 40)
        .findFirst()
        .orElseThrow();
  }

  @Test
  void afterTwoTurnsItSaysThatThePaintHasMovedOnAndWhenItMeetsAgain() {
    screen.fire("two-turns");
    finish();
    assertThat(screen.sentence())
        .startsWith("After 2 turns the painted links of main stand")
        .contains("118 turns");
  }

  @Test
  void afterTwoTurnsTheRulerSaysThatItBeginsAgain() {
    screen.fire("two-turns");
    finish();
    assertThat(screen.words()).contains("after 2 turns\n");
    assertThat(screen.all()).anyMatch(n -> n.getStyleClass().contains("other-grip"));
    screen.fire("degree-on");
    assertThat(screen.words()).contains("after 2 turns\n");
    assertThat(screen.all()).noneMatch(n -> n.getStyleClass().contains("other-grip"));
    screen.press(KeyCode.HOME);
    assertThat(screen.words()).doesNotContain("after 2 turns\n");
  }

  @Test
  void afterAsManyTurnsAsThePaintNeedsItMeetsTheMarksAgain() {
    screen.enter("angle", Integer.toString(118 * 360));
    assertThat(screen.sentence())
        .isEqualTo("After 118 turns the painted links of main meet the marks again.");
  }

  @Test
  void homeGoesBackToTheReferencePositionWithoutTurningBack() {
    screen.enter("angle", "100");
    screen.press(KeyCode.HOME);
    assertThat(crank()).isZero();
    assertThat(screen.sentence()).isEqualTo("Every timed shaft stands where it belongs.");
  }

  @Test
  void playTurnsAtItsSpeedUntilItIsPaused() {
    screen.act(
        w -> {
          Player player = new Player(w.desk());
          player.speed(90);
          player.tick(1_000_000_000L);
          player.tick(3_000_000_000L);
        });
    assertThat(crank()).isEqualTo(180, within(CLOSE));
    screen.fire("play");
    assertThat(screen.words()).contains("Pause");
    screen.fire("play");
    assertThat(screen.words()).contains("Play");
  }

  @Test
  void thePictureStaysWhereItIsWhileAHandTurnsIt() {
    Fit before = screen.window().picture().fit();
    for (String angle : new String[] {"1", "117.5", "1234.5"}) {
      screen.enter("angle", angle);
      assertThat(screen.window().picture().fit()).isEqualTo(before);
    }
  }

  @Test
  void turnsThatFollowEachOtherAreUndoneAsOne() {
    screen.press(KeyCode.RIGHT);
    screen.press(KeyCode.RIGHT);
    screen.control(KeyCode.Z);
    assertThat(crank()).isZero();
  }

  @Test
  void twoTurnsAreMadeToBeWatchedStopByThemselvesAndAreUndoneAsOne() {
    long second = 1_000_000_000L;
    screen.act(
        w -> {
          Player player = new Player(w.desk());
          player.sweep(720);
          player.tick(second);
          player.tick(2 * second);
          assertThat(w.desk().now().crank().degrees()).isEqualTo(Player.SWEEP, within(CLOSE));
          assertThat(player.running()).isTrue();
          player.tick(9 * second);
          assertThat(player.running()).isFalse();
        });
    assertThat(crank()).isEqualTo(720, within(CLOSE));
    screen.control(KeyCode.Z);
    assertThat(crank()).isZero();
  }

  @Test
  void whatElseTurnsTheEngineEndsTwoTurns() {
    long second = 1_000_000_000L;
    screen.act(
        w -> {
          Player player = new Player(w.desk());
          player.sweep(720);
          player.tick(second);
          player.tick(2 * second);
          w.desk().act(now -> Turns.to(now, 400));
          player.tick(3 * second);
          assertThat(player.running()).isFalse();
        });
    assertThat(crank()).isEqualTo(400, within(CLOSE));
  }

  @Test
  void askedAgainOnTheWayTwoTurnsAddUp() {
    screen.fire("two-turns");
    screen.fire("two-turns");
    finish();
    assertThat(crank()).isEqualTo(1440, within(CLOSE));
    assertThat(screen.words()).contains("Play").doesNotContain("Pause");
  }

  /**
   * By how much a real wheel scrolls differs from desktop to desktop; the way it goes does not:
   * rolled down, the amount is negative, and that turns the engine on.
   */
  @ParameterizedTest
  @CsvSource({"-40, false, 1", "3, false, -1", "-120, true, 20", "120, true, -20", "0, false, 0"})
  void theWheelTurnsByADegreeAndWithControlByATooth(double delta, boolean control, double turned) {
    screen.act(w -> Mouse.scroll(w.picture(), delta, control));
    assertThat(crank()).isEqualTo(turned, within(CLOSE));
  }

  @Test
  void turnedBackThePictureSaysThatNothingIsKnownOfTiming() {
    assertThat(inThePicture()).contains("timing right");
    screen.press(KeyCode.LEFT);
    assertThat(inThePicture()).contains("timing not known").doesNotContain("timing right");
    assertThat(screen.window().picture().getAccessibleText())
        .contains("Nothing is known of timing until turned forward.");
    screen.enter("angle", "60");
    assertThat(inThePicture()).contains("timing right").doesNotContain("timing not known");
  }

  private static List<String> inThePicture() {
    return screen.window().picture().picture().orElseThrow().shapes().stream()
        .filter(Shape.Text.class::isInstance)
        .map(s -> ((Shape.Text) s).words())
        .toList();
  }
}
