package tightside.window;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import javafx.geometry.Bounds;
import javafx.scene.Node;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tightside.session.SessionView;

/** The drive is seen before the controls are there, and does not move when they come. */
class FirstSightTest {

  @ParameterizedTest
  @CsvSource({"1280, 800", "1920, 1080"})
  void theDriveStaysWhereItWasFirstSeen(double width, double height) {
    Screen screen = new Screen(Models.opened("two-cams-arm"));
    screen.size(width, height);
    Bounds later = Screen.on(() -> inScene(screen.window().picture()));
    Fit fit = Screen.on(() -> screen.window().picture().fit());
    PictureCanvas first =
        Screen.on(
            () -> {
              FirstSight sight = new FirstSight();
              sight.show(SessionView.of(Models.opened("two-cams-arm")));
              Node root = screen.window().sceneOf().getRoot();
              sight.resize(root.getLayoutBounds().getWidth(), root.getLayoutBounds().getHeight());
              sight.layout();
              sight.layout();
              return sight.picture();
            });
    Bounds seen = Screen.on(() -> inScene(first));
    assertThat(seen.getMinX()).isEqualTo(later.getMinX(), within(1.5));
    assertThat(seen.getMinY()).isEqualTo(later.getMinY(), within(1.5));
    assertThat(seen.getMaxX()).isEqualTo(later.getMaxX(), within(1.5));
    assertThat(seen.getMaxY()).isEqualTo(later.getMaxY(), within(1.5));
    assertThat(first.picture()).isPresent();
    assertThat(first.fit().scale()).isEqualTo(fit.scale(), within(0.005 * fit.scale()));
  }

  private static Bounds inScene(Node node) {
    return node.localToScene(node.getLayoutBounds());
  }
}
