package tightside.window;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.Consumer;
import javafx.application.Application;
import javafx.geometry.Rectangle2D;
import javafx.stage.FileChooser;
import javafx.stage.Screen;
import javafx.stage.Stage;
import tightside.files.Demo;
import tightside.session.SessionView;
import tightside.session.Snapshot;

/** The window as a program of its own. */
public final class BenchApp extends Application {

  private final ExecutorService worker =
      Executors.newSingleThreadExecutor(
          work -> {
            Thread thread = new Thread(work, "reader");
            thread.setDaemon(true);
            return thread;
          });

  private static Consumer<Stage> whenShown = stage -> {};

  /** Read and solved on another core while the toolkit starts. */
  private static final CompletableFuture<Snapshot> FIRST =
      CompletableFuture.supplyAsync(BenchApp::demo);

  /** Opens the window and returns when it is closed. */
  public static void open() {
    launch(BenchApp.class);
  }

  /**
   * Opens the window.
   *
   * @param shown is told of the window once it is shown
   */
  public static void open(Consumer<Stage> shown) {
    whenShown = shown;
    open();
  }

  private static Snapshot demo() {
    Snapshot demo = Opening.opened(Demo.model(), "the demo");
    Captions.of(SessionView.of(demo).solution(), Optional.empty(), 1);
    return demo;
  }

  @Override
  public void start(Stage stage) {
    BenchWindow window = new BenchWindow(FIRST.join(), worker, () -> choose(stage));
    stage.setTitle("Tightside");
    stage.setScene(window.sceneOf());
    Rectangle2D screen = Screen.getPrimary().getVisualBounds();
    stage.setX(screen.getMinX());
    stage.setY(screen.getMinY());
    stage.setWidth(screen.getWidth());
    stage.setHeight(screen.getHeight());
    stage.show();
    whenShown.accept(stage);
  }

  private static Optional<Path> choose(Stage stage) {
    FileChooser chooser = new FileChooser();
    chooser.setTitle("Open a model file");
    chooser.getExtensionFilters().add(new FileChooser.ExtensionFilter("Models", "*.yaml", "*.yml"));
    return Optional.ofNullable(chooser.showOpenDialog(stage)).map(java.io.File::toPath);
  }

  @Override
  public void stop() {
    worker.shutdownNow();
  }
}
