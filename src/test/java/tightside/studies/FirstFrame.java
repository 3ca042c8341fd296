package tightside.studies;

import com.sun.javafx.tk.RenderJob;
import com.sun.javafx.tk.Toolkit;
import javafx.application.Application;
import javafx.application.Platform;
import javafx.scene.Scene;
import javafx.scene.layout.StackPane;
import javafx.stage.Stage;
import tightside.window.BenchApp;

/** Opens a window, prints a word as soon as its first frame is drawn, and ends. */
public final class FirstFrame {

  private FirstFrame() {}

  /**
   * @param words "empty" for a window with nothing in it, "drive" for the one with the drive in it,
   *     any other for all of it
   */
  public static void main(String[] words) {
    Headless.screen(1920, 1080);
    if (words[0].equals("empty")) {
      Application.launch(Empty.class);
    } else if (words[0].equals("drive")) {
      BenchApp.open(FirstFrame::whenDrawn, whole -> {});
    } else {
      BenchApp.open(seen -> {}, FirstFrame::whenDrawn);
    }
  }

  private static void whenDrawn(Stage stage) {
    stage
        .getScene()
        .addPostLayoutPulseListener(
            () ->
                Platform.runLater(
                    () -> Toolkit.getToolkit().addRenderJob(new RenderJob(FirstFrame::drawn))));
  }

  private static void drawn() {
    System.out.println("drawn");
    System.out.flush();
    Runtime.getRuntime().halt(0);
  }

  /** A window with nothing in it. */
  public static final class Empty extends Application {
    @Override
    public void start(Stage stage) {
      stage.setScene(new Scene(new StackPane(), 1280, 800));
      whenDrawn(stage);
      stage.show();
    }
  }
}
