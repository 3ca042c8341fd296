package tightside.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import tightside.drive.Drive;
import tightside.files.ModelReader;

/**
 * A drive of one's own entered with keys alone. The numbers are those of the answered example of
 * the model format: 118 links, 51, 17 and 50 of them between the marks.
 */
class OwnCardTest {

  private final FxRobot keys = new FxRobot();
  private final Screen screen = new Screen(Models.opened("two-cams-arm"));
  private int strokes;

  @TempDir private Path folder;

  private void turnToForm() {
    screen.control(KeyCode.N);
    strokes++;
  }

  private void write(String text) {
    keys.write(text, 0);
    strokes += text.length();
    screen.act(w -> {});
  }

  private void enter() {
    keys.push(KeyCode.ENTER);
    strokes++;
    screen.act(w -> {});
  }

  private String focused() {
    return Screen.on(() -> screen.window().sceneOf().getFocusOwner().getId());
  }

  private void writeExample() {
    turnToForm();
    for (String number : new String[] {"118", "18", "51", "36", "17", "36", "50"}) {
      write(number);
      enter();
    }
  }

  @Test
  void aDriveFromNothingTakesKeysAlone() {
    turnToForm();
    assertThat(focused()).isEqualTo("own-links");
    strokes = 0;
    writeExample();
    Drive drive = screen.now().drive();
    assertThat(drive.countedOnly()).isTrue();
    assertThat(drive.chains().get(0).counts().orElseThrow()).containsExactly(51, 17, 50);
    assertThat(screen.words())
        .contains("The counts add up to 118 links: the whole chain.")
        .contains("One tooth ahead: intake: 10.00 cam degrees advanced (20.00 crank degrees).")
        .contains("51 links from mark to mark = 50 plain links between them");
    assertThat(strokes).as("keys pressed").isLessThanOrEqualTo(25);
  }

  @Test
  void tabGoesThroughTheFormInItsOrder() {
    turnToForm();
    keys.push(KeyCode.TAB);
    assertThat(focused()).isEqualTo("own-teeth-0");
    keys.push(KeyCode.TAB);
    assertThat(focused()).isEqualTo("own-shaft-0");
    for (int i = 0; i < 4 && !focused().equals("own-count-0"); i++) {
      keys.push(KeyCode.TAB);
    }
    assertThat(focused()).isEqualTo("own-count-0");
  }

  @Test
  void everyEntryIsJudgedAtOnceAndUndone() {
    turnToForm();
    write("118");
    enter();
    write("18");
    enter();
    enter();
    write("35");
    assertThat(screen.words()).contains("with 18 teeth there it needs 36, not 35");
    screen.control(KeyCode.Z);
    assertThat(screen.words()).doesNotContain("it needs 36");
    assertThat(screen.now().own().links()).isEqualTo("118");
    screen.control(KeyCode.Z);
    assertThat(screen.now().own().rows().get(0).teeth()).isEmpty();
  }

  @Test
  void whatWasEnteredIsSavedAndReadsBackTheSame() {
    Path file = folder.resolve("own.yaml");
    screen.act(w -> w.bench().saveAs(name -> Optional.of(file)));
    writeExample();
    screen.fire("own-save");
    screen.work();
    assertThat(ModelReader.read(file).problems()).isEmpty();
    assertThat(ModelReader.read(file).model().orElseThrow().drive())
        .isEqualTo(screen.now().drive());
  }

  @Test
  void everyTargetIsLarge() {
    turnToForm();
    for (Node node : screen.all()) {
      if (node.getId() != null && node.getId().startsWith("own-") && node.isFocusTraversable()) {
        assertThat(node.getLayoutBounds().getHeight()).as(node.getId()).isGreaterThanOrEqualTo(24);
      }
    }
  }
}
