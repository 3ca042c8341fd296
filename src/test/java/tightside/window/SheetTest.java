package tightside.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeoutException;
import javafx.geometry.Rectangle2D;
import javafx.scene.Group;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.SnapshotParameters;
import javafx.scene.image.PixelReader;
import javafx.scene.image.WritableImage;
import javafx.scene.paint.Color;
import javafx.scene.transform.Scale;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.testfx.api.FxToolkit;
import tightside.picture.DrivePicture;
import tightside.picture.Picture;
import tightside.picture.PictureOptions;
import tightside.picture.Shape;
import tightside.picture.Styles;
import tightside.raster.Cuts;
import tightside.raster.Raster;
import tightside.session.SessionView;
import tightside.session.Turns;

/** What the sheet shows on the screen, beside the pixels that were drawn for it. */
class SheetTest {

  private static final int WIDTH = 400;
  private static final int HEIGHT = 300;

  @BeforeAll
  static void aScreen() throws TimeoutException {
    FxToolkit.registerPrimaryStage();
  }

  private static Picture turned(double degrees) {
    SessionView view = SessionView.of(Turns.to(Models.opened("v-six-two-stages"), degrees).after());
    return DrivePicture.of(
        view.solution(), PictureOptions.labelled(Optional.empty(), 1).withoutWords());
  }

  private static int[] drawn(List<List<Shape>> frames, Fit fit, double density) {
    int[] pixels = new int[(int) (WIDTH * HEIGHT * density * density)];
    Raster raster = new Raster(pixels, (int) (WIDTH * density), new Cuts());
    for (List<Shape> shapes : frames) {
      raster.lay(fit.left() * density, fit.top() * density, fit.scale() * density, density);
      raster.paint(Styles.PAPER, shapes);
    }
    return pixels;
  }

  @ParameterizedTest
  @CsvSource({"1, 1", "2, 1", "1, 0.3", "1.5, 1"})
  void everythingDrawnIsShownAndNothingOfTheFrameBefore(double density, double smaller) {
    Picture first = turned(0);
    Picture second = turned(41.3);
    Fit whole = Fit.of(first.bounds(), WIDTH, HEIGHT);
    Fit fit = new Fit(whole.left(), whole.top(), whole.scale() * smaller);
    List<List<Shape>> frames = List.of(first.shapes(), second.shapes());
    int[] expected = drawn(frames, fit, density);
    WritableImage shown = Screen.on(() -> shown(frames, fit, density));
    PixelReader reader = shown.getPixelReader();
    int worst = 0;
    int row = (int) (WIDTH * density);
    for (int i = 0; i < expected.length; i++) {
      int rgb = reader.getArgb(i % row, i / row);
      for (int shift = 0; shift < 24; shift += 8) {
        worst = Math.max(worst, Math.abs((rgb >> shift & 255) - (expected[i] >> shift & 255)));
      }
    }
    assertThat(worst).isLessThanOrEqualTo(2);
  }

  @ParameterizedTest
  @CsvSource({"1, true", "1.5, false"})
  void partsLieSideBySideOnlyWhereTheirEdgesAreWholePixels(double density, boolean parts) {
    Picture picture = turned(0);
    Fit fit = Fit.of(picture.bounds(), WIDTH, HEIGHT);
    long shown =
        Screen.on(
            () -> {
              Sheet sheet = new Sheet();
              sheet.draw(new Sheet.Place(3, 5, WIDTH, HEIGHT, density), fit, 1, picture.shapes());
              return sheet.getChildren().stream().filter(Node::isVisible).count();
            });
    assertThat(shown > 1).isEqualTo(parts);
  }

  private static WritableImage shown(List<List<Shape>> frames, Fit fit, double density) {
    Sheet sheet = new Sheet();
    Scene scene = new Scene(new Group(sheet), WIDTH, HEIGHT);
    frames.forEach(
        shapes -> sheet.draw(new Sheet.Place(0, 0, WIDTH, HEIGHT, density), fit, 1, shapes));
    SnapshotParameters asOnScreen = new SnapshotParameters();
    asOnScreen.setTransform(new Scale(density, density));
    asOnScreen.setFill(Color.rgb(Styles.PAPER.red(), Styles.PAPER.green(), Styles.PAPER.blue()));
    asOnScreen.setViewport(new Rectangle2D(0, 0, WIDTH * density, HEIGHT * density));
    return scene.getRoot().snapshot(asOnScreen, null);
  }
}
