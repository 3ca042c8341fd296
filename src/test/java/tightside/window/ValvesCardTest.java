package tightside.window;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.control.Labeled;
import javafx.scene.input.KeyCode;
import javafx.scene.text.Text;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tightside.session.Edits;
import tightside.timing.Seat;

/**
 * Valves in the window, by keys. The engine is that of the model whose exhaust camshaft touches one
 * tooth behind; its second cylinder comes to top dead centre of gas exchange first, at 180 degrees.
 */
class ValvesCardTest {

  private static final Seat EXHAUST = new Seat("main", "exhaust");
  private static final double STOPS = 167.9;

  private static Screen screen;

  @BeforeAll
  static void open() {
    screen = new Screen(Models.withEngine("one-tooth-touches"));
  }

  @BeforeEach
  void right() {
    show("one-tooth-touches");
  }

  private static void show(String model) {
    screen.size(1280, 800);
    screen.act(
        w -> {
          w.desk().look(look -> look.textSteps((100 - look.textPercent()) / 10));
          w.desk().open(Models.withEngine(model));
          w.bench().turnTo(Bench.Card.VALVES);
          w.picture().requestFocus();
        });
  }

  private static void twoTurnsOn() {
    screen.press(KeyCode.T);
    screen.act(w -> w.player().finish());
  }

  private static void behind() {
    screen.act(w -> w.desk().act(now -> Edits.reseat(now, EXHAUST, -1)));
  }

  private static double crank() {
    return screen.now().crank().degrees();
  }

  private static Labeled styled(String style) {
    return screen.all().stream()
        .filter(n -> n.getStyleClass().contains(style))
        .map(Labeled.class::cast)
        .findFirst()
        .orElseThrow();
  }

  @Test
  void theRoomStandsLargeAndMovesWithTheCrank() {
    assertThat(styled("where").getText()).startsWith("intake valve to piston of cylinder 1");
    screen.act(w -> w.desk().act(now -> tightside.session.Turns.by(now, 360)));
    assertThat(styled("huge").getText()).isEqualTo("1.6 mm");
    assertThat(screen.words()).contains("cranked, about 19 bar by gauge (an estimate");
  }

  @Test
  void atFirstTouchTheTurnEndsAndSaysWhatToDo() {
    behind();
    twoTurnsOn();
    assertThat(crank()).isCloseTo(STOPS, within(0.05));
    assertThat(screen.sentence())
        .startsWith("STOP at 167.9 (12.1 before top dead centre at gas exchange)")
        .contains("never run the starter");
    assertThat(styled("where").getText())
        .as("turned to the one that touches")
        .startsWith("exhaust valve to piston of cylinder 2, 12.1 before");
    assertThat(styled("huge").getText()).isEqualTo("0.0 mm");
    assertThat(screen.words())
        .contains("Shown is the valve that touches.")
        .contains("Valve against valve is not reckoned.");
    screen.press(KeyCode.C);
    assertThat(screen.words()).contains("Not the one that touches: that is the exhaust valve");
    double there = crank();
    screen.press(KeyCode.RIGHT);
    assertThat(styled("where").getText()).contains("cylinder 2");
    screen.control(KeyCode.RIGHT);
    assertThat(crank()).isEqualTo(there);
    screen.press(KeyCode.LEFT);
    assertThat(crank()).isCloseTo(STOPS - 1, within(0.05));
  }

  @Test
  void aTypedAngleADragAndPlayEndThereToo() {
    behind();
    screen.enter("angle", "400");
    assertThat(crank()).isCloseTo(STOPS, within(0.05));
    screen.press(KeyCode.HOME);
    for (int i = 0; i < 4; i++) {
      screen.drag("crank", 40, 0, 90);
    }
    assertThat(crank()).isCloseTo(STOPS, within(0.05));
    screen.press(KeyCode.HOME);
    boolean runs =
        Screen.on(
            () -> {
              Player player = new Player(screen.window().desk());
              player.toggle();
              player.tick(1);
              player.tick(1 + 10_000_000_000L);
              return player.running();
            });
    assertThat(runs).isFalse();
    assertThat(crank()).isCloseTo(STOPS, within(0.05));
  }

  @Test
  void asADrawingOnlyItGoesOn() {
    behind();
    twoTurnsOn();
    screen.press(KeyCode.G);
    screen.press(KeyCode.RIGHT);
    assertThat(crank()).isCloseTo(STOPS + 1, within(0.05));
    assertThat(screen.sentence()).startsWith("A drawing only, which no engine follows");
    screen.press(KeyCode.G);
    double there = crank();
    screen.press(KeyCode.RIGHT);
    assertThat(crank()).isEqualTo(there);
  }

  @Test
  void cylinderAndValveAreChosen() {
    screen.choose("3");
    screen.choose("Exhaust");
    assertThat(styled("where").getText()).startsWith("exhaust valve to piston of cylinder 3");
    screen.act(w -> w.picture().requestFocus());
    screen.press(KeyCode.V);
    screen.press(KeyCode.C);
    assertThat(styled("where").getText()).startsWith("intake valve to piston of cylinder 4");
    screen.press(KeyCode.C);
    assertThat(styled("where").getText()).startsWith("intake valve to piston of cylinder 1");
    screen.choose("Two turns");
    assertThat(screen.now().look().valves().twoTurns()).isTrue();
  }

  @Test
  void everyToothIsARowThatCanBeHeard() {
    assertThat(
            screen.all().stream()
                .filter(n -> n.getStyleClass().contains("row-head"))
                .map(Node::getAccessibleText))
        .hasSize(18)
        .anyMatch(s -> s.startsWith("1 tooth behind: TOUCHES THE PISTON, 0.2 mm too little room"));
  }

  @Test
  void withoutAnEngineItSaysWhatIsMissing() {
    show("v-six-two-stages");
    assertThat(screen.words()).contains("add a section \"engine\" with bore");
    show("one-tooth-touches");
    assertThat(screen.words()).contains("on another tooth");
  }

  @Test
  void aStateIsKeptAndComparedByKeys() {
    screen.press(KeyCode.A);
    behind();
    screen.act(w -> w.bench().turnTo(Bench.Card.COMPARE));
    assertThat(
            screen.all().stream()
                .filter(n -> n.getStyleClass().contains("row-head"))
                .map(Node::getAccessibleText))
        .contains("exhaust, crank degrees: A 0.00, B -20.00")
        .contains("intake to exhaust, links: A 17, B 16")
        .contains("Exhaust valve, least room, mm: A 1.3, B touches, 0.2");
    screen.press(KeyCode.O);
    assertThat(letters()).containsExactly("A", "B");
    screen.press(KeyCode.O);
    assertThat(letters()).isEmpty();
    screen.control(KeyCode.Z);
    assertThat(screen.now().kept()).isPresent();
    screen.control(KeyCode.Z);
    assertThat(screen.words()).contains("Nothing is kept yet.");
  }

  private static List<String> letters() {
    return screen.all().stream()
        .filter(n -> n.getStyleClass().contains("letter"))
        .map(n -> ((Labeled) n).getText())
        .toList();
  }

  @Test
  void largeFromTheValvesItShowsTheValve() {
    screen.size(1280, 720);
    screen.choose("Exhaust");
    screen.act(w -> w.picture().requestFocus());
    screen.press(KeyCode.F11);
    assertThat(styled("question").getText())
        .isEqualTo("How near is the exhaust valve to its piston?");
    assertThat(styled("giant").getText()).endsWith(" mm");
    screen.press(KeyCode.V);
    assertThat(styled("question").getText())
        .isEqualTo("How near is the intake valve to its piston?");
    screen.press(KeyCode.C);
    assertThat(screen.words()).contains("cylinder 2, ");
    screen.press(KeyCode.F11);
    assertThat(styled("where").getText()).startsWith("intake valve to piston of cylinder 2");
  }

  @Test
  void largeForAClassAndBack() {
    screen.size(1280, 720);
    screen.act(w -> w.bench().turnTo(Bench.Card.COUNT));
    screen.press(KeyCode.F11);
    assertThat(styled("question").getText()).isEqualTo("How many links lie from crank to intake?");
    assertThat(styled("giant").getText()).isEqualTo("51");
    screen.press(KeyCode.Q);
    assertThat(screen.words()).doesNotContain("51").contains("say your number first");
    screen.press(KeyCode.N, false, true);
    assertThat(styled("question").getText())
        .isEqualTo("How near is the exhaust valve to its piston?");
    screen.press(KeyCode.Q);
    String before = styled("giant").getText();
    screen.press(KeyCode.PAGE_UP);
    assertThat(crank()).isEqualTo(20);
    assertThat(styled("giant").getText()).isNotEqualTo(before).endsWith(" mm");
    screen.press(KeyCode.N);
    assertThat(styled("giant").getText()).isEqualTo("51");
    screen.press(KeyCode.F11);
    assertThat(screen.find("angle").isVisible()).isTrue();
    screen.press(KeyCode.RIGHT);
    assertThat(crank()).isEqualTo(21);
  }

  @Test
  void theNumberThatIsAskedForIsNotSpokenEither() {
    screen.act(w -> w.bench().turnTo(Bench.Card.COUNT));
    screen.press(KeyCode.F11);
    screen.press(KeyCode.Q);
    assertThat(
            screen.all().stream()
                .filter(ValvesCardTest::inSight)
                .map(Node::getAccessibleText)
                .filter(s -> s != null))
        .noneMatch(s -> s.contains("51"));
  }

  private static boolean inSight(Node node) {
    for (Node up = node; up != null; up = up.getParent()) {
      if (!up.isVisible()) {
        return false;
      }
    }
    return true;
  }

  @ParameterizedTest
  @CsvSource({"1280, 800, 100", "1280, 800, 150", "1920, 1080, 150"})
  void nothingIsCutOff(double width, double height, int percent) {
    screen.size(width, height);
    behind();
    twoTurnsOn();
    screen.press(KeyCode.A);
    screen.act(w -> w.desk().look(look -> look.textSteps((percent - 100) / 10)));
    for (Bench.Card card : new Bench.Card[] {Bench.Card.VALVES, Bench.Card.COMPARE}) {
      screen.act(w -> w.bench().turnTo(card));
      screen.act(w -> {});
      assertThat(Screen.on(ValvesCardTest::cut)).as("%s", card).isEmpty();
    }
    screen.act(w -> w.desk().look(look -> look.with(look.show().sideBySide(true))));
    screen.act(w -> {});
    assertThat(Screen.on(ValvesCardTest::cut)).as("side by side").isEmpty();
  }

  @ParameterizedTest
  @CsvSource({"1280, 720, 100", "1280, 720, 150", "1920, 1080, 200"})
  void largeForAClassNothingIsCutOffAtAnySizeOfText(double width, double height, int percent) {
    screen.size(width, height);
    behind();
    twoTurnsOn();
    screen.act(w -> w.desk().look(look -> look.textSteps((percent - 100) / 10)));
    screen.act(w -> w.picture().requestFocus());
    screen.press(KeyCode.F11);
    screen.act(w -> {});
    screen.act(w -> {});
    double high = screen.window().sceneOf().getHeight();
    assertThat(styled("giant").getText()).isEqualTo("0.0 mm");
    Bounds giant = Screen.on(() -> styled("giant").localToScene(styled("giant").getLayoutBounds()));
    Bounds note =
        Screen.on(() -> styled("giant-note").localToScene(styled("giant-note").getLayoutBounds()));
    Bounds said =
        Screen.on(() -> styled("sentence").localToScene(styled("sentence").getLayoutBounds()));
    assertThat(giant.getHeight())
        .as("a line, an eighth of the height")
        .isBetween(high / 9, high / 4);
    assertThat(note.getMaxY()).isLessThanOrEqualTo(said.getMinY() + 1);
    assertThat(said.getMaxY()).isLessThanOrEqualTo(high);
    assertThat(inSight(GapView.class, width / 3, height / 4)).isTrue();
  }

  /** However large the text and small the window: both, or each by one key. */
  @ParameterizedTest
  @CsvSource({
    "1280, 800, 100, true",
    "1280, 800, 130, true",
    "1024, 768, 100, true",
    "1280, 800, 150, false",
    "1280, 720, 150, false"
  })
  void engineAndDriveAreBothToBeSeen(double width, double height, int percent, boolean both) {
    screen.size(width, height);
    behind();
    screen.act(w -> w.desk().look(look -> look.textSteps((percent - 100) / 10)));
    screen.act(w -> w.bench().turnTo(Bench.Card.VALVES));
    screen.act(w -> {});
    double em = 14 * percent / 100.0;
    assertThat(inSight(GapView.class, 11 * em, 8 * em)).as("chart").isTrue();
    assertThat(inSight(CylinderView.class, 4 * em, 4 * em)).as("engine").isTrue();
    assertThat(inSight(PictureCanvas.class, 10 * em, 10 * em)).as("drive").isEqualTo(both);
    if (!both) {
      screen.act(w -> w.picture().requestFocus());
      screen.press(KeyCode.D);
      assertThat(inSight(PictureCanvas.class, 10 * em, 10 * em)).as("drive").isTrue();
      assertThat(inSight(GapView.class, 1, 1)).isFalse();
      assertThat(screen.words()).contains("mm, intake valve to piston of cylinder 1, at top dead");
      screen.choose("Valves large");
      assertThat(inSight(GapView.class, 11 * em, 8 * em)).isTrue();
    }
  }

  private static boolean inSight(Class<?> kind, double width, double height) {
    double right = screen.window().sceneOf().getWidth();
    return screen.all().stream()
        .filter(n -> kind.isInstance(n) && n.getScene() != null)
        .map(n -> n.localToScene(n.getLayoutBounds()))
        .anyMatch(
            b -> b.getWidth() >= width && b.getHeight() >= height && b.getMaxX() <= right + 1);
  }

  private static List<String> cut() {
    List<String> cut = new ArrayList<>();
    double width = screen.window().sceneOf().getWidth();
    for (Node node : screen.all()) {
      Bounds at = node.localToScene(node.getLayoutBounds());
      if (node instanceof Labeled label && (at.getMaxX() > width + 1 || truncated(label))) {
        cut.add(label.getText());
      }
    }
    return cut;
  }

  private static boolean truncated(Labeled labeled) {
    return labeled.getChildrenUnmodifiable().stream()
        .filter(Text.class::isInstance)
        .map(n -> ((Text) n).getText().replace("\n", ""))
        .anyMatch(shown -> !shown.equals(labeled.getText().replace("\n", "")));
  }
}
