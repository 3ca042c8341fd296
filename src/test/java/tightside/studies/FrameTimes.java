package tightside.studies;

import com.sun.javafx.tk.RenderJob;
import com.sun.javafx.tk.Toolkit;
import java.io.BufferedReader;
import java.io.File;
import java.io.IOException;
import java.io.InputStreamReader;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadInfo;
import java.lang.management.ThreadMXBean;
import java.net.URI;
import java.net.URLClassLoader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javafx.application.Platform;
import javafx.stage.Stage;
import tightside.session.Turns;
import tightside.window.Bench;
import tightside.window.BenchApp;
import tightside.window.BenchWindow;

/**
 * How long it takes from an event to the finished frame, on the busiest model at 1920x1080 in
 * software rendering, one event after the other; and how long the window takes to appear, beside an
 * empty one of the same toolkit.
 *
 * <p>A frame is finished once its pixels have been handed to the screen. The time of the two
 * threads' own work stands beside it, for a machine that has other things to do makes every frame
 * later. Whatever goes wrong in a frame ends the study.
 */
public final class FrameTimes {

  /** Half a minute of turning: as long as the virtual machine goes on translating what it runs. */
  private static final int WARM_UP = 1500;

  private static final int EVENTS = 600;
  private static final int STARTS = 9;
  private static final List<String> THREADS = List.of("JavaFX Application", "QuantumRenderer");

  private FrameTimes() {}

  /**
   * @param words "starts" measures the starts alone; any other word leaves them out; "valves"
   *     measures the card of the valves, beside the drive of an engine that has some
   */
  public static void main(String[] words) throws Exception {
    if (List.of(words).contains("starts")) {
      starts();
      return;
    }
    System.setProperty("javafx.animation.fullspeed", "true");
    Headless.screen(1920, 1080);
    BenchApp.settings();
    CountDownLatch done = new CountDownLatch(1);
    Platform.startup(() -> new Run(done, List.of(words).contains("valves")).begin());
    done.await();
    if (words.length == 0) {
      starts();
    }
    System.exit(0);
  }

  /** One run of events; all of it but the last stamp happens on the window's thread. */
  private static final class Run {

    private final CountDownLatch done;
    private final List<Double> first = new ArrayList<>();
    private final List<Double> millis = new ArrayList<>();
    private final List<Double> work = new ArrayList<>();
    private final ThreadMXBean threads = ManagementFactory.getThreadMXBean();
    private long worked;
    private BenchWindow window;
    private int events;
    private long began;

    private final boolean valves;

    Run(CountDownLatch done, boolean valves) {
      this.done = done;
      this.valves = valves;
    }

    void begin() {
      Thread.currentThread()
          .setUncaughtExceptionHandler(
              (thread, wrong) -> {
                wrong.printStackTrace();
                System.exit(1);
              });
      window =
          new BenchWindow(
              Headless.opened(valves ? "two-cams-arm" : "v-six-two-stages"),
              Runnable::run,
              Optional::empty);
      if (valves) {
        window.bench().turnTo(Bench.Card.VALVES);
      }
      Stage stage = new Stage();
      stage.setScene(window.sceneOf());
      stage.setWidth(1920);
      stage.setHeight(1080);
      stage.show();
      window.sceneOf().addPostLayoutPulseListener(this::laidOut);
      Platform.runLater(this::turn);
    }

    private boolean waiting;

    private void turn() {
      worked = cpu();
      began = System.nanoTime();
      waiting = true;
      window.desk().act(now -> Turns.by(now, 1.7));
    }

    /**
     * The frame goes to the renderer when this pulse ends; what is queued there then follows it.
     */
    private void laidOut() {
      if (waiting) {
        waiting = false;
        Platform.runLater(() -> Toolkit.getToolkit().addRenderJob(new RenderJob(this::finished)));
      }
    }

    /** The pixels go to the screen on the window's thread, before what is queued there now. */
    private void finished() {
      Platform.runLater(
          () -> {
            double took = (System.nanoTime() - began) / 1e6;
            events++;
            if (events <= EVENTS) {
              first.add(took);
            }
            if (events > WARM_UP) {
              millis.add(took);
              work.add((cpu() - worked) / 1e6);
            }
            if (events < WARM_UP + EVENTS) {
              turn();
            } else {
              print("the first events to their frames, ms", first);
              print("later events to their frames, ms", millis);
              print("of that, work of the window's and the renderer's thread, ms", work);
              done.countDown();
            }
          });
    }

    private long cpu() {
      long sum = 0;
      for (ThreadInfo thread : threads.getThreadInfo(threads.getAllThreadIds())) {
        if (thread != null && THREADS.stream().anyMatch(thread.getThreadName()::startsWith)) {
          sum += threads.getThreadCpuTime(thread.getThreadId());
        }
      }
      return sum;
    }
  }

  private static double share(List<Double> values, double share) {
    List<Double> sorted = values.stream().sorted().toList();
    return sorted.get((int) Math.round(share * (sorted.size() - 1)));
  }

  private static void print(String what, List<Double> values) {
    System.out.printf(
        Locale.ROOT,
        "%s: median %.1f, 95th percentile %.1f (%d)%n",
        what,
        share(values, 0.5),
        share(values, 0.95),
        values.size());
  }

  private static void starts() throws IOException, InterruptedException {
    List<Double> empty = new ArrayList<>();
    List<Double> drive = new ArrayList<>();
    List<Double> whole = new ArrayList<>();
    for (int i = 0; i < STARTS; i++) {
      empty.add(start("empty"));
      drive.add(start("drive"));
      whole.add(start("whole"));
    }
    print("start to the first frame of an empty window, ms", empty);
    print("start to the first frame, with the drive, ms", drive);
    print("start to the frame with all controls, ms", whole);
    System.out.printf(
        Locale.ROOT,
        "ratio of the medians to the empty window's: %.2f with the drive, %.2f with all%n",
        share(drive, 0.5) / share(empty, 0.5),
        share(whole, 0.5) / share(empty, 0.5));
  }

  /** As it is here, whether a virtual machine or Maven has put it together. */
  private static String classPath() {
    if (FrameTimes.class.getClassLoader() instanceof URLClassLoader loader) {
      return Stream.of(loader.getURLs())
          .map(url -> Path.of(URI.create(url.toString())).toString())
          .collect(Collectors.joining(File.pathSeparator));
    }
    return System.getProperty("java.class.path");
  }

  private static double start(String which) throws IOException, InterruptedException {
    long began = System.nanoTime();
    ProcessBuilder program =
        new ProcessBuilder(
                System.getProperty("java.home") + "/bin/java",
                "-cp",
                classPath(),
                FirstFrame.class.getName(),
                which)
            .redirectError(ProcessBuilder.Redirect.DISCARD);
    // A job left open on this computer would be read as well.
    program.environment().put("XDG_DATA_HOME", System.getProperty("java.io.tmpdir") + "/no-jobs");
    Process process = program.start();
    try (BufferedReader out =
        new BufferedReader(
            new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8))) {
      out.readLine();
    }
    double took = (System.nanoTime() - began) / 1e6;
    process.waitFor();
    return took;
  }
}
