package tightside.window;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import javafx.animation.AnimationTimer;
import javafx.application.Application;
import javafx.geometry.Rectangle2D;
import javafx.scene.Scene;
import javafx.stage.FileChooser;
import javafx.stage.Screen;
import javafx.stage.Stage;
import tightside.files.Demo;
import tightside.files.JobFolder;
import tightside.session.SessionView;

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

  private static Consumer<Stage> whenSeen = stage -> {};
  private static Consumer<Stage> whenFurnished = stage -> {};

  /** Read and solved on another core while the toolkit starts. */
  private static final CompletableFuture<SessionView> FIRST =
      CompletableFuture.supplyAsync(BenchApp::demo);

  /**
   * To be called before the toolkit starts: by itself it draws no more than six parts of a frame
   * apart, and beyond that joins them over all that lies between.
   */
  public static void settings() {
    System.getProperties().putIfAbsent("prism.dirtyregioncount", "15");
  }

  /** Opens the window and returns when it is closed. */
  public static void open() {
    settings();
    launch(BenchApp.class);
  }

  /**
   * Opens the window.
   *
   * @param seen is told of the window once it is shown, with nothing but the drive in it
   * @param furnished is told of it once all is in it
   */
  public static void open(Consumer<Stage> seen, Consumer<Stage> furnished) {
    whenSeen = seen;
    whenFurnished = furnished;
    open();
  }

  private static SessionView demo() {
    return SessionView.of(Opening.opened(Demo.model(), "the demo"));
  }

  /** Shows the drive, and makes all that stands round it once it is seen. */
  @Override
  public void start(Stage stage) {
    Rectangle2D screen = Screen.getPrimary().getVisualBounds();
    // As large as it will be, or all would be drawn for another size first.
    Scene scene = BenchWindow.ground(screen.getWidth(), screen.getHeight());
    FirstSight sight = new FirstSight();
    scene.setRoot(sight);
    stage.setTitle("Tightside");
    stage.setScene(scene);
    stage.setX(screen.getMinX());
    stage.setY(screen.getMinY());
    stage.setWidth(screen.getWidth());
    stage.setHeight(screen.getHeight());
    stage.setMinWidth(LEAST_WIDTH);
    stage.setMinHeight(LEAST_HEIGHT);
    sight.show(FIRST.join());
    stage.show();
    whenSeen.accept(stage);
    new Soon(() -> furnish(stage, scene, sight.picture())).start();
  }

  private void furnish(Stage stage, Scene scene, PictureCanvas picture) {
    JobSetting jobs =
        new JobSetting(Clock.systemDefaultZone(), jobFolder(), saver, new JobChooser(stage));
    BenchWindow window =
        new BenchWindow(scene, picture, FIRST.join(), worker, () -> choose(stage), jobs);
    stage.setOnCloseRequest(
        e -> {
          if (!window.jobIsSafe() && !warned) {
            warned = true;
            window.tellOfUnsavedJob();
            e.consume();
          }
        });
    leave = window::leave;
    whenFurnished.accept(stage);
  }

  /** Runs what takes long, but not before what was shown is on the screen. */
  private static final class Soon extends AnimationTimer {

    /** A pulse waits until the frame of the last one is drawn; then its pixels are on their way. */
    private static final int PULSES = 3;

    private final Runnable action;
    private int pulses;

    Soon(Runnable action) {
      this.action = action;
    }

    @Override
    public void handle(long now) {
      pulses++;
      if (pulses == PULSES) {
        stop();
        action.run();
      }
    }
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
    Path here = Path.of("").toAbsolutePath();
    Path models = here.resolve("models");
    chooser.setInitialDirectory((Files.isDirectory(models) ? models : here).toFile());
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
