package tightside.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import tightside.picture.Ink;
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
    assertThat(screen.sentence()).isEqualTo("exhaust 10.0 cam degrees (20.0 crank) advanced.");
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
    assertThat(screen.words()).contains("Undo: Reseat left/left-idler by +1");
  }
}
