package tightside.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import javafx.scene.input.KeyCode;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tightside.drive.Plan;
import tightside.drive.Sprocket;
import tightside.files.Demo;
import tightside.files.ModelReader;
import tightside.session.Edits;
import tightside.session.Snapshot;
import tightside.session.Turns;
import tightside.timing.Seat;

/** A drive drawn in the window, by its fields and keys. */
class BuildCardTest {

  private Screen screen;

  @BeforeEach
  void open() {
    screen = new Screen(Snapshot.opened(Demo.model().drive(), "the demo"));
    screen.act(w -> w.bench().turnTo(Bench.Card.BUILD));
  }

  private Plan plan() {
    return screen.now().plan();
  }

  @Test
  void aShaftIsMovedByItsFieldAndUndone() {
    Snapshot before = screen.now();
    screen.fire("part-intake");
    screen.type("build-y", "302,5");
    assertThat(plan().shaft("intake").orElseThrow().at()).isEqualTo(Vector2D.of(-52, 302.5));
    screen.control(KeyCode.Z);
    assertThat(screen.now().plan()).isEqualTo(before.plan());
  }

  @Test
  void whatIsSaidIsSaidOfWhatIsDrawn() {
    screen.act(
        w -> {
          w.desk().act(now -> Edits.reseat(now, new Seat("main", "exhaust"), 1));
          w.desk().act(now -> Turns.by(now, -5));
        });
    assertThat(screen.sentence())
        .startsWith("Drawn here: the drive new, every sprocket right, at the reference position")
        .endsWith("The other cards go on where they were.");
    assertThat(screen.all()).noneMatch(n -> n instanceof TurnRuler);
    screen.act(w -> w.bench().turnTo(Bench.Card.COUNT));
    assertThat(screen.sentence()).startsWith("The engine was turned back");
    assertThat(screen.all()).anyMatch(n -> n instanceof TurnRuler);
  }

  /** As large as in the picture of the drive, however large that text is: 12.5 pixels at 100 %. */
  @ParameterizedTest
  @ValueSource(ints = {100, 150})
  void theWordsOnTheBoardAreAsLargeAsElsewhere(int percent) {
    screen.act(w -> w.desk().look(look -> look.textSteps((percent - 100) / 10)));
    PlanBoard board = (PlanBoard) screen.find("plan-board");
    assertThat(Screen.on(board::emPixels))
        .isBetween(0.125 * percent * 0.93, 0.125 * percent * 1.07);
  }

  @Test
  void aPointIsChosenAndMovedByKeys() {
    screen.act(w -> screen.find("plan-board").requestFocus());
    screen.press(KeyCode.N);
    screen.press(KeyCode.RIGHT);
    screen.press(KeyCode.UP, false, true);
    assertThat(plan().shaft("intake").orElseThrow().at()).isEqualTo(Vector2D.of(-51, 301.5));
    assertThat(screen.find("plan-board").getAccessibleText()).contains("intake at -51.0, 301.5");
  }

  @Test
  void whatIsTypedWrongIsRefusedInOneSentence() {
    screen.fire("part-main-2");
    screen.type("build-teeth", "36.5");
    assertThat(screen.words()).contains("Teeth is a whole number, not 36.5.");
    assertThat(((Sprocket) plan().chain("main").orElseThrow().route().get(2)).teeth())
        .isEqualTo(36);
  }

  @Test
  void aProblemStandsAtItsPartUntilItIsMended() {
    screen.fire("add-pump");
    assertThat(screen.words()).contains("It makes no drive yet", "pump: no chain drives");
    assertThat(screen.sentence()).contains("makes no drive yet");
    screen.fire("part-pump");
    screen.fire("delete");
    assertThat(screen.words()).contains("It makes a drive; the other cards show it.");
    assertThat(screen.now().unfinished()).isEmpty();
  }

  @Test
  void aNameTakenAlreadyIsRefused() {
    screen.fire("part-intake");
    screen.enter("build-name", "exhaust");
    assertThat(screen.words()).contains("Another part is called exhaust already.");
    screen.enter("build-name", "inlet");
    assertThat(plan().shaft("inlet")).isPresent();
  }

  @Test
  void aFaceIsPutOnRetypedAndTakenOff() {
    screen.fire("part-main-4");
    screen.choose("shoe");
    assertThat(plan().chain("main").orElseThrow().route()).hasSize(5);
    screen.fire("delete");
    assertThat(plan().chain("main").orElseThrow().route()).hasSize(4);
    screen.control(KeyCode.Z);
    screen.control(KeyCode.Z);
    assertThat(plan()).isEqualTo(Plan.of(Demo.model().drive()));
  }

  @Test
  void whatIsDrawnIsSavedAndReadBackEqual(@TempDir Path folder) {
    Path file = folder.resolve("drawn.yaml");
    screen.act(w -> w.bench().saveAs(name -> Optional.of(file)));
    screen.fire("part-exhaust");
    screen.type("build-x", "52.3");
    screen.fire("build-save");
    screen.work();
    assertThat(ModelReader.read(file).model().orElseThrow().drive())
        .isEqualTo(screen.now().drive());
    assertThat(screen.words()).contains("Saved as drawn.yaml.");
  }

  @Test
  void whatMakesNoDriveYetIsSavedAllTheSame(@TempDir Path folder) throws IOException {
    Path file = folder.resolve("unfinished.yaml");
    screen.act(w -> w.bench().saveAs(name -> Optional.of(file)));
    screen.fire("build-new");
    screen.fire("build-save");
    screen.work();
    assertThat(Files.readString(file)).contains("crank");
    assertThat(ModelReader.read(file).problems()).isNotEmpty();
  }

  @Test
  void whatWasSavedUnfinishedIsOpenedAndMended(@TempDir Path folder) {
    Path file = folder.resolve("unfinished.yaml");
    screen.act(w -> w.bench().saveAs(name -> Optional.of(file)));
    screen.fire("add-pump");
    Plan unfinished = plan();
    screen.fire("build-save");
    screen.work();
    screen.control(KeyCode.Z);
    screen.choose(file);
    screen.control(KeyCode.O);
    screen.work();
    assertThat(plan()).isEqualTo(unfinished);
    assertThat(screen.words()).contains("can be mended on the card Build");
    screen.fire("part-pump");
    screen.fire("delete");
    assertThat(screen.now().unfinished()).isEmpty();
  }

  @Test
  void valvesFollowTheirCamshaftsName(@TempDir Path folder) {
    Path file = folder.resolve("renamed.yaml");
    screen = new Screen(Models.withEngine("one-tooth-touches"));
    screen.act(w -> w.bench().turnTo(Bench.Card.BUILD));
    screen.act(w -> w.bench().saveAs(name -> Optional.of(file)));
    screen.fire("part-intake");
    screen.enter("build-name", "inlet");
    screen.fire("build-save");
    screen.work();
    assertThat(ModelReader.read(file).model().orElseThrow().engine().orElseThrow().camshafts())
        .contains("inlet")
        .doesNotContain("intake");
    assertThat(screen.now().engine()).isPresent();
  }
}
