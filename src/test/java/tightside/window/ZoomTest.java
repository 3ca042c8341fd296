package tightside.window;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Text as large and a window as small as they go: the drive is drawn all the same. */
class ZoomTest {

  @ParameterizedTest
  @CsvSource({"210, 1280, 800", "300, 1280, 800", "100, 700, 480", "150, 640, 480"})
  void theDriveIsDrawnHoweverLittleRoomThereIs(int percent, double width, double height) {
    Screen screen = new Screen(Models.opened("two-cams-arm"));
    screen.size(width, height);
    screen.act(w -> w.desk().look(look -> look.textSteps((percent - look.textPercent()) / 10)));
    screen.act(w -> {});
    assertThat(screen.window().picture().picture()).isPresent();
    screen.size(1280, 800);
    screen.act(w -> w.desk().look(look -> look.textSteps((100 - look.textPercent()) / 10)));
    assertThat(screen.window().picture().picture()).isPresent();
  }

  @ParameterizedTest
  @CsvSource({"100, 1280, 800, 8.5", "150, 1280, 800, 8.5", "150, 900, 700, 6.5"})
  void theWordsInThePictureCanBeReadHoweverLittleRoomTheyLeaveTheDrive(
      int percent, double width, double height, double least) {
    Screen screen = new Screen(Models.opened("v-six-two-stages"));
    screen.size(width, height);
    screen.act(w -> w.desk().look(look -> look.textSteps((percent - look.textPercent()) / 10)));
    screen.act(w -> {});
    assertThat(Screen.<Double>on(() -> screen.window().picture().emPixels()))
        .isGreaterThanOrEqualTo(least);
    screen.size(1280, 800);
  }
}
