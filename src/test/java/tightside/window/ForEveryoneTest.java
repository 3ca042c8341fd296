package tightside.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.control.Control;
import javafx.scene.control.Label;
import javafx.scene.control.Labeled;
import javafx.scene.control.ScrollBar;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.KeyCode;
import javafx.scene.text.Text;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tightside.session.Turns;

/** What the window owes to everyone: names for what can't be seen, and nothing cut off. */
class ForEveryoneTest {

  /** Pixels: text is laid out on whole ones. */
  private static final double PIXEL = 1.0;

  private static Screen screen;

  @BeforeAll
  static void open() {
    screen = new Screen(Models.opened("two-cams-arm"));
  }

  private static void show(String model, Bench.Card card, int percent) {
    open(model, percent);
    turnTo(card);
  }

  private static void open(String model, int percent) {
    screen.act(
        w -> {
          w.desk().open(Models.opened(model));
          w.desk().look(look -> look.textSteps((percent - look.textPercent()) / 10));
        });
  }

  private static void turnTo(Bench.Card card) {
    screen.act(w -> w.bench().turnTo(card));
    screen.work();
  }

  @Test
  void everyControlHasANameThatCanBeSpoken() {
    open("v-six-two-stages", 100);
    for (Bench.Card card : Bench.Card.values()) {
      turnTo(card);
      for (Node node : screen.all()) {
        if (node.isFocusTraversable() && !(node instanceof ScrollBar)) {
          assertThat(node.getAccessibleText()).as("%s on %s", node, card).isNotBlank();
        }
      }
    }
  }

  @ParameterizedTest
  @CsvSource({
    "two-cams-arm, 100, 1280, 800",
    "two-cams-arm, 150, 1280, 800",
    "v-six-two-stages, 100, 1280, 800",
    "v-six-two-stages, 150, 1280, 800",
    "counterclockwise-balancers, 150, 1280, 800",
    "v-six-two-stages, 150, 1920, 1080"
  })
  void nothingIsCutOff(String model, int percent, double width, double height) {
    screen.size(width, height);
    open(model, percent);
    for (Bench.Card card : Bench.Card.values()) {
      turnTo(card);
      List<String> cut = Screen.on(() -> cutOff(screen));
      assertThat(cut).as("%s at %d %% on %s", model, percent, card).isEmpty();
      assertThat(screen.window().picture().getHeight()).as("picture").isGreaterThan(0.3 * height);
    }
  }

  @ParameterizedTest
  @CsvSource({"100", "150"})
  void theWholeWarningIsReadWhenTheEngineWasTurnedBack(int percent) {
    screen.size(1280, 800);
    open("counterclockwise-balancers", percent);
    screen.act(w -> w.desk().act(now -> Turns.by(now, -12.5)));
    for (Bench.Card card : Bench.Card.values()) {
      turnTo(card);
      assertThat(Screen.on(() -> cutOff(screen))).as("%s", card).isEmpty();
    }
  }

  /** What is cut or lies outside of the window, of all that is there to be read. */
  static List<String> cutOff(Screen screen) {
    BenchWindow window = screen.window();
    List<String> cut = new ArrayList<>();
    double width = window.sceneOf().getWidth();
    double height = window.sceneOf().getHeight();
    for (Node node : screen.all()) {
      Bounds at = node.localToScene(node.getLayoutBounds());
      boolean across = at.getMinX() < -PIXEL || at.getMaxX() > width + PIXEL;
      boolean down = at.getMinY() < -PIXEL || at.getMaxY() > height + PIXEL;
      if (node instanceof Control && (across || down && !scrolled(node))) {
        cut.add("outside: " + node);
      }
      if (node instanceof Labeled labeled && truncated(labeled)) {
        cut.add("truncated: " + labeled.getText());
      }
    }
    return cut;
  }

  private static boolean scrolled(Node node) {
    for (Node up = node.getParent(); up != null; up = up.getParent()) {
      if (up instanceof ScrollPane) {
        return true;
      }
    }
    return false;
  }

  /** A label that had no room shows other words than it was given; one is meant to. */
  private static boolean truncated(Labeled labeled) {
    return !labeled.getStyleClass().contains("in-brief") && showsLess(labeled);
  }

  private static boolean showsLess(Labeled labeled) {
    return labeled.getChildrenUnmodifiable().stream()
        .filter(Text.class::isInstance)
        .map(n -> ((Text) n).getText().replace("\n", ""))
        .anyMatch(shown -> !shown.equals(labeled.getText().replace("\n", "")));
  }

  @Test
  void theKeysAreListedAndPutAwayByTheSameKey() {
    screen.press(KeyCode.F1);
    assertThat(screen.words()).contains("jump to the reference position", "one tooth on");
    screen.press(KeyCode.F1);
    assertThat(screen.words()).doesNotContain("one tooth on");
  }

  @Test
  void escapePutsTheListOfKeysAway() {
    screen.press(KeyCode.F1);
    screen.press(KeyCode.ESCAPE);
    assertThat(screen.words()).doesNotContain("one tooth on");
  }

  @Test
  void aCardBeginsAtItsTop() {
    screen.size(1280, 800);
    open("v-six-two-stages", 100);
    turnTo(Bench.Card.COUNT);
    ScrollPane scroll = benchScroll();
    screen.act(w -> scroll.setVvalue(1));
    turnTo(Bench.Card.WEAR);
    assertThat(scroll.getVvalue()).isZero();
    screen.act(w -> scroll.setVvalue(1));
    turnTo(Bench.Card.WEAR);
    assertThat(scroll.getVvalue()).isEqualTo(1);
  }

  private static ScrollPane benchScroll() {
    return (ScrollPane)
        Screen.on(
            () ->
                screen.window().bench().getChildrenUnmodifiable().stream()
                    .filter(ScrollPane.class::isInstance)
                    .findFirst()
                    .orElseThrow());
  }

  @Test
  void cardsAndTextSizeHaveKeys() {
    show("two-cams-arm", Bench.Card.COUNT, 100);
    screen.control(KeyCode.DIGIT4);
    assertThat(screen.words()).contains("The drive in figures");
    screen.control(KeyCode.PLUS);
    assertThat(screen.now().look().textPercent()).isEqualTo(110);
    screen.control(KeyCode.MINUS);
    assertThat(screen.now().look().textPercent()).isEqualTo(100);
  }

  @Test
  void theTableSaysWhatThePictureShows() {
    show("two-cams-arm", Bench.Card.TABLE, 100);
    screen.act(w -> w.desk().act(now -> tightside.session.Edits.stretch(now, "main", 0.5)));
    assertThat(screen.words())
        .contains("crank to intake", "slack side, held tight by the tensioner")
        .contains("\u22122.53".replace('\u2212', '-'), "-1.88", "retarded");
    assertThat(spoken()).anyMatch(s -> s.startsWith("crank to intake: 51 links, 50 between"));
  }

  private static List<String> spoken() {
    return screen.all().stream()
        .filter(n -> n instanceof Label && n.isFocusTraversable())
        .map(Node::getAccessibleText)
        .toList();
  }

  @Test
  void largerTextMakesTheWordsInThePictureLargerToo() {
    screen.size(1920, 1080);
    show("two-cams-arm", Bench.Card.COUNT, 100);
    double before = screen.window().picture().emPixels();
    show("two-cams-arm", Bench.Card.COUNT, 150);
    assertThat(screen.window().picture().emPixels()).isGreaterThan(1.3 * before);
  }
}
