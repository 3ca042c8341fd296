package tightside.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Models opened, right ones and wrong ones. */
class OpeningTest {

  private static Screen screen;

  @TempDir private Path folder;

  @BeforeAll
  static void open() {
    screen = new Screen(Models.opened("two-cams-arm"));
  }

  @BeforeEach
  void theDemo() {
    screen.act(w -> w.desk().open(Models.opened("two-cams-arm")));
  }

  @Test
  void theWindowWaitsForNothingWhileAFileIsRead() {
    screen.choose(Models.file("one-cam-no-tensioner"));
    screen.control(KeyCode.O);
    assertThat(screen.now().source()).isEqualTo("two-cams-arm.yaml");
    screen.work();
    assertThat(screen.now().source()).isEqualTo("one-cam-no-tensioner.yaml");
  }

  @Test
  void everyDemoDriveIsShownWithAllItsChains() {
    for (String name :
        new String[] {
          "v-six-two-stages", "one-cam-no-tensioner", "counterclockwise-balancers", "two-cams-arm"
        }) {
      screen.choose(Models.file(name));
      screen.fire("open");
      screen.work();
      screen.now().drive().chains().forEach(c -> assertThat(screen.words()).contains(c.name()));
      assertThat(screen.words()).contains(screen.now().drive().name());
    }
  }

  @Test
  void problemsAreListedWithTheirPlacesAndTheDriveStays() throws IOException {
    Path wrong = folder.resolve("wrong.yaml");
    String right = Files.readString(Models.file("two-cams-arm"));
    Files.writeString(wrong, right.replace("pitch: 8.0", "pitch: many"));
    screen.choose(wrong);
    screen.fire("open");
    screen.work();
    assertThat(screen.now().source()).isEqualTo("two-cams-arm.yaml");
    assertThat(screen.words())
        .contains("wrong.yaml can't be opened as it is.")
        .containsPattern("Line \\d+, column \\d+: .*pitch")
        .doesNotContain("Exception");
    screen.fire("close-problems");
    assertThat(screen.words()).doesNotContain("can't be opened");
  }

  @Test
  void aFileThatIsNotThereIsAProblemToo() {
    screen.choose(folder.resolve("none.yaml"));
    screen.fire("open");
    screen.work();
    assertThat(screen.words()).contains("none.yaml can't be opened as it is.", "Line 1, column 1:");
  }
}
