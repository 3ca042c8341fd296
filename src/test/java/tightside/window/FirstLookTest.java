package tightside.window;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tightside.session.Edits;
import tightside.session.Turns;
import tightside.timing.Seat;

/** What a person stumbles over who has never seen the window: what moves, hides or is cut. */
class FirstLookTest {

  private static Screen screen;

  @BeforeAll
  static void open() {
    screen = new Screen(Models.opened("two-cams-arm"));
  }

  @BeforeEach
  void asOpened() {
    screen.size(1280, 800);
    screen.act(
        w -> {
          w.desk().open(Models.opened("two-cams-arm"));
          w.desk().look(look -> look.textSteps((100 - look.textPercent()) / 10));
          w.bench().turnTo(Bench.Card.COUNT);
          w.picture().requestFocus();
        });
  }

  private static Bounds at(Node node) {
    return Screen.on(() -> node.localToScene(node.getLayoutBounds()));
  }

  @Test
  void theGripGoesAlongTheRulerAsTheCrankTurns() {
    double ruler = at(styled("ruler")).getWidth();
    double before = at(styled("grip")).getCenterX();
    screen.act(w -> w.desk().act(now -> Turns.to(now, 360)));
    assertThat(at(styled("grip")).getCenterX() - before).isBetween(0.44 * ruler, 0.5 * ruler);
  }

  private static Node styled(String style) {
    return screen.all().stream()
        .filter(n -> n.getStyleClass().contains(style) && n.isVisible())
        .findFirst()
        .orElseThrow(() -> new AssertionError("nothing is styled " + style));
  }

  @ParameterizedTest
  @CsvSource({
    "-3, 3.0° before",
    "-700, 700.0° before",
    "725, after 2 turns",
    "1439, after 2 turns"
  })
  void theRulerSaysWhichTurnsItStandsForWhereTheGripLeavesItToBeRead(double angle, String words) {
    screen.act(w -> w.desk().act(now -> Turns.to(now, angle)));
    Label said =
        screen.all().stream()
            .filter(n -> n instanceof Label l && l.getText().startsWith(words))
            .map(Label.class::cast)
            .findFirst()
            .orElseThrow(() -> new AssertionError("the ruler does not say " + words));
    assertThat(at(styled("grip")).intersects(at(said))).isFalse();
    assertThat(screen.words()).doesNotContain("turns back");
  }

  @Test
  void theButtonsForTheTextSizeStayUnderTheMouse() {
    Bounds larger = at(screen.find("larger"));
    for (int i = 0; i < 6; i++) {
      screen.fire("larger");
      assertThat(at(screen.find("larger")).contains(larger.getCenterX(), larger.getCenterY()))
          .as("after %d presses", i + 1)
          .isTrue();
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"undo", "cover", "keys", "play", "two-turns"})
  void theFocusMovesNothing(String id) {
    screen.act(w -> w.desk().act(now -> Edits.stretch(now, "main", 0.1)));
    Fit before = screen.window().picture().fit();
    Bounds where = at(screen.find(id));
    screen.act(w -> screen.find(id).requestFocus());
    assertThat(screen.window().picture().fit()).isEqualTo(before);
    assertThat(at(screen.find(id)).getHeight()).isEqualTo(where.getHeight());
  }

  @ParameterizedTest
  @ValueSource(ints = {100, 150})
  void theDriveStaysWhereItIsAcrossWhateverIsShown(int percent) {
    screen.act(w -> w.desk().look(look -> look.textSteps((percent - 100) / 10)));
    double before = crankX();
    for (Bench.Card card : new Bench.Card[] {Bench.Card.WEAR, Bench.Card.SLACK, Bench.Card.TABLE}) {
      screen.act(w -> w.bench().turnTo(card));
      assertThat(crankX()).as("%s", card).isEqualTo(before, within(1.0));
    }
    screen.act(
        w -> {
          w.desk().act(now -> Edits.reseat(now, new Seat("main", "exhaust"), 2));
          w.desk().act(now -> Edits.stretch(now, "main", 1.2));
          w.desk().act(now -> Turns.by(now, -5));
        });
    assertThat(crankX()).isEqualTo(before, within(1.0));
  }

  /** Where the crankshaft stands, which lies at the origin. */
  private static double crankX() {
    return Screen.on(() -> screen.window().picture().fit().left());
  }

  @ParameterizedTest
  @CsvSource({"1280, 800, 100", "1280, 800, 150", "960, 640, 100"})
  void everyKeyOfTheListIsReadWhole(double width, double height, int percent) {
    screen.size(width, height);
    screen.act(w -> w.desk().look(look -> look.textSteps((percent - 100) / 10)));
    screen.press(KeyCode.F1);
    try {
      assertThat(Screen.on(() -> ForEveryoneTest.cutOff(screen))).isEmpty();
      Bounds card = at(styled("key-card"));
      assertThat(card.getMinX()).isNotNegative();
      assertThat(card.getMaxX()).isLessThanOrEqualTo(width);
      assertThat(card.getMinY()).isNotNegative();
      assertThat(card.getMaxY()).isLessThanOrEqualTo(height);
      assertThat(screen.words()).contains("Wheel down, up", "one degree on, back");
    } finally {
      screen.press(KeyCode.F1);
    }
  }

  @Test
  void aWindowTooSmallForItsTextIsScrolledAndALargerOneIsNot() {
    screen.size(900, 600);
    screen.act(w -> w.desk().look(look -> look.textSteps(15)));
    screen.act(w -> {});
    ScrollPane room = (ScrollPane) styled("least-room");
    assertThat(Screen.on(() -> room.getContent().getLayoutBounds().getWidth()))
        .isGreaterThan(room.getWidth());
    assertThat(screen.window().picture().getWidth()).isGreaterThan(300);
    screen.act(w -> w.desk().look(look -> look.textSteps(-15)));
    screen.size(1280, 800);
    assertThat(screen.all()).noneMatch(n -> n.getStyleClass().contains("least-room"));
  }

  @Test
  void inTheSmallestWindowNothingIsCutOff() {
    screen.size(BenchApp.LEAST_WIDTH, BenchApp.LEAST_HEIGHT);
    for (Bench.Card card : new Bench.Card[] {Bench.Card.BUILD, Bench.Card.VALVES, Bench.Card.WHY}) {
      screen.act(w -> w.bench().turnTo(card));
      assertThat(Screen.on(() -> ForEveryoneTest.cutOff(screen))).as("%s", card).isEmpty();
      assertThat(screen.all()).noneMatch(n -> n.getStyleClass().contains("least-room"));
    }
  }
}
