package tightside.window;

import java.nio.file.Path;
import java.time.Clock;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import javafx.application.Application;
import javafx.geometry.Rectangle2D;
import javafx.stage.FileChooser;
import javafx.stage.Screen;
import javafx.stage.Stage;
import tightside.files.Demo;
import tightside.files.JobFolder;
import tightside.picture.PictureOptions;
import tightside.session.SessionView;
import tightside.session.Snapshot;

/** The window as a program of its own. */
public final class BenchApp extends Application {

  private static final int LAST_WRITE_SECONDS = 5;

  /** In a window so large all can be used at the usual size of text; larger text is scrolled. */
  static final double LEAST_WIDTH = 960;

  static final double LEAST_HEIGHT = 640;

  private final ExecutorService worker = thread("reader");

  /** A thread of its own, so that no long work keeps an entry from the disk. */
  private final ExecutorService saver = thread("saver");

  private boolean warned;
  private Runnable leave = () -> {};

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
    Captions.of(SessionView.of(demo).solution(), PictureOptions.labelled(Optional.empty(), 1));
    return demo;
  }

  @Override
  public void start(Stage stage) {
    JobSetting jobs =
        new JobSetting(Clock.systemDefaultZone(), jobFolder(), saver, new JobChooser(stage));
    BenchWindow window = new BenchWindow(FIRST.join(), worker, () -> choose(stage), jobs);
    stage.setOnCloseRequest(
        e -> {
          if (!window.jobIsSafe() && !warned) {
            warned = true;
            window.tellOfUnsavedJob();
            e.consume();
          }
        });
    leave = window::leave;
    stage.setTitle("Tightside");
    stage.setScene(window.sceneOf());
    Rectangle2D screen = Screen.getPrimary().getVisualBounds();
    stage.setX(screen.getMinX());
    stage.setY(screen.getMinY());
    stage.setWidth(screen.getWidth());
    stage.setHeight(screen.getHeight());
    stage.setMinWidth(LEAST_WIDTH);
    stage.setMinHeight(LEAST_HEIGHT);
    stage.show();
    whenShown.accept(stage);
  }

  private static ExecutorService thread(String name) {
    return Executors.newSingleThreadExecutor(
        work -> {
          Thread thread = new Thread(work, name);
          thread.setDaemon(true);
          return thread;
        });
  }

  private static JobFolder jobFolder() {
    return JobFolder.ofUser(
        System.getenv(), System.getProperty("user.home"), System.getProperty("os.name"));
  }

  private static Optional<Path> choose(Stage stage) {
    FileChooser chooser = new FileChooser();
    chooser.setTitle("Open a model file");
    chooser.getExtensionFilters().add(new FileChooser.ExtensionFilter("Models", "*.yaml", "*.yml"));
    return Optional.ofNullable(chooser.showOpenDialog(stage)).map(java.io.File::toPath);
  }

  @Override
  public void stop() throws InterruptedException {
    worker.shutdownNow();
    leave.run();
    saver.shutdown();
    saver.awaitTermination(LAST_WRITE_SECONDS, TimeUnit.SECONDS);
  }
}
