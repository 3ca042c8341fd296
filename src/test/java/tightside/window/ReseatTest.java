package tightside.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.Optional;
import javafx.event.EventType;
import javafx.geometry.Bounds;
import javafx.geometry.Point2D;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.input.KeyCode;
import javafx.scene.input.MouseEvent;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import tightside.geometry.Bearing;
import tightside.picture.Ink;
import tightside.session.Snapshot;
import tightside.timing.Seat;

/** Sprockets set over: one tooth of 36 is 10 degrees of the cam, 20 of the crank. */
class ReseatTest {

  private static final Seat EXHAUST = new Seat("main", "exhaust");

  private static Screen screen;

  @BeforeAll
  static void open() {
    screen = new Screen(Models.opened("two-cams-arm"));
  }

  @BeforeEach
  void everythingRight() {
    screen.act(
        w -> {
          w.desk().open(Models.opened("two-cams-arm"));
          w.bench().turnTo(Bench.Card.RESEAT);
        });
    screen.press(KeyCode.ESCAPE);
  }

  private static Map<Seat, Integer> reseats() {
    return screen.now().reseats();
  }

  @Test
  void numberAndPlusSetASprocketAhead() {
    screen.press(KeyCode.DIGIT3);
    screen.press(KeyCode.PLUS);
    assertThat(reseats()).containsExactly(Map.entry(EXHAUST, 1));
    assertThat(screen.words()).contains("exhaust: +10.00° cam, +20.00° crank, advanced");
    assertThat(screen.sentence())
        .isEqualTo("The exhaust shaft stands 10.0 cam degrees (20.0 crank) advanced.");
  }

  @Test
  void buttonsSetASprocketBehindNoFurtherThanThreeTeeth() {
    for (int i = 0; i < 5; i++) {
      screen.fire("behind-main-intake");
    }
    assertThat(reseats()).containsExactly(Map.entry(new Seat("main", "intake"), -3));
    assertThat(screen.find("behind-main-intake").isDisabled()).isTrue();
  }

  @Test
  void draggingASprocketRoundItsCentreSnapsToTeeth() {
    screen.drag("exhaust", 30, 0, 23);
    assertThat(reseats()).containsExactly(Map.entry(EXHAUST, 2));
    screen.drag("exhaust", 30, 0, -18);
    assertThat(reseats()).isEmpty();
  }

  /** The labels of what goes off need more room; the hand must not lose what it holds for them. */
  @Test
  void thePictureStaysUnderTheHandThatCarriesASprocketAndOneStepUndoesItAll() {
    Snapshot before = screen.now();
    PictureCanvas picture = screen.window().picture();
    Fit held = picture.fit();
    Vector2D centre = screen.now().drive().shaft("exhaust").orElseThrow().at();
    carry(MouseEvent.MOUSE_PRESSED, held, centre, 0);
    for (int degrees = 1; degrees <= 33; degrees++) {
      carry(MouseEvent.MOUSE_DRAGGED, held, centre, degrees);
      assertThat(picture.fit()).as("at %d degrees", degrees).isEqualTo(held);
    }
    carry(MouseEvent.MOUSE_RELEASED, held, centre, 33);
    assertThat(reseats()).containsExactly(Map.entry(EXHAUST, 3));
    assertThat(undoName()).contains("Reseat exhaust by +3");
    screen.control(KeyCode.Z);
    assertThat(screen.now().with(before.look())).isEqualTo(before);
    assertThat(undoName()).isEmpty();
  }

  private static Optional<String> undoName() {
    return Screen.on(() -> screen.window().desk().history().undoName());
  }

  /** A hand knows pixels: where the drive lay when it took hold. */
  private static void carry(EventType<MouseEvent> type, Fit held, Vector2D centre, double degrees) {
    Vector2D point = centre.add(new Bearing(degrees).direction().multiply(30));
    Point2D pixel = new Point2D(held.x(point), held.y(point));
    screen.act(w -> Mouse.fire(w.picture(), type, pixel));
  }

  @Test
  void aSprocketCarriedBackToWhereItWasIsNoStep() {
    screen.drag("exhaust", 30, 0, 10);
    screen.fire("ahead-main-intake");
    PictureCanvas picture = screen.window().picture();
    Fit held = picture.fit();
    Vector2D centre = screen.now().drive().shaft("exhaust").orElseThrow().at();
    carry(MouseEvent.MOUSE_PRESSED, held, centre, 0);
    carry(MouseEvent.MOUSE_DRAGGED, held, centre, 20);
    carry(MouseEvent.MOUSE_DRAGGED, held, centre, 0);
    carry(MouseEvent.MOUSE_RELEASED, held, centre, 0);
    assertThat(undoName()).contains("Reseat intake by +1");
  }

  @Test
  void aSprocketOffItsPlaceIsDrawnWithItsError() {
    assertThat(inks(Ink.GHOST)).isZero();
    screen.fire("ahead-main-exhaust");
    assertThat(inks(Ink.GHOST)).isEqualTo(1);
    assertThat(inks(Ink.ERROR)).isEqualTo(1);
  }

  private static long inks(Ink ink) {
    return screen.window().picture().picture().orElseThrow().shapes().stream()
        .filter(s -> s.tag().ink() == ink)
        .count();
  }

  @Test
  void theBarAboveThePictureStaysAsItIsWhateverCanBeUndone() {
    Bounds before = larger();
    screen.fire("ahead-main-exhaust");
    assertThat(larger()).isEqualTo(before);
    screen.fire("undo");
    assertThat(larger()).isEqualTo(before);
  }

  private static Bounds larger() {
    return Screen.on(
        () -> {
          Node button = screen.find("larger");
          return button.localToScene(button.getLayoutBounds());
        });
  }

  @Test
  void everySprocketIsPutRightAtOnce() {
    screen.fire("ahead-main-exhaust");
    screen.fire("behind-main-intake");
    screen.fire("put-all-right");
    assertThat(reseats()).isEmpty();
  }

  /** A chain that carries a shaft to another stage is named with it. */
  @Test
  void ofTwoSprocketsOnOneShaftEachHasItsOwnButtons() {
    screen.act(w -> w.desk().open(Models.opened("v-six-two-stages")));
    screen.fire("ahead-left-left-idler");
    assertThat(reseats()).containsExactly(Map.entry(new Seat("left", "left-idler"), 1));
    assertThat(screen.find("undo").getAccessibleText())
        .isEqualTo("Undo: Reseat left/left-idler by +1");
    assertThat(((Button) screen.find("undo")).getTooltip().getText())
        .isEqualTo("Undo: Reseat left/left-idler by +1");
  }
}
