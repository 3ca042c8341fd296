package tightside.studies;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.function.Consumer;
import javafx.application.Platform;
import javafx.scene.control.ScrollPane;
import javafx.scene.image.PixelReader;
import javafx.scene.image.WritableImage;
import javafx.stage.Stage;
import javax.imageio.ImageIO;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import tightside.drive.Role;
import tightside.drive.Seen;
import tightside.session.Comparing;
import tightside.session.Edits;
import tightside.session.JobEdits;
import tightside.session.JobPage;
import tightside.session.Look;
import tightside.session.PlanEdits;
import tightside.session.StepAnswer;
import tightside.session.StrandId;
import tightside.session.Turns;
import tightside.session.WhyEdits;
import tightside.sheet.Field;
import tightside.sheet.Step;
import tightside.timing.Seat;
import tightside.window.Bench;
import tightside.window.BenchWindow;
import tightside.window.Desk;

/** Draws the window in a handful of states into {@code target/screenshots}, without a display. */
public final class Screenshots {

  private static final Path FOLDER = Path.of("target", "screenshots");

  private Screenshots() {}

  /** Only these are drawn; all of them where none is named. */
  private static List<String> wanted = List.of();

  /**
   * @param words the pictures wanted; none for all
   */
  public static void main(String[] words) throws IOException, InterruptedException {
    wanted = List.of(words);
    Headless.screen(1920, 1080);
    Files.createDirectories(FOLDER);
    CountDownLatch done = new CountDownLatch(1);
    Platform.startup(
        () -> {
          try {
            all();
            large();
          } finally {
            done.countDown();
          }
        });
    done.await();
    System.out.println("Screenshots are in " + FOLDER);
    System.exit(0);
  }

  private static void all() {
    for (int[] size : new int[][] {{1280, 800, 100}, {1920, 1080, 100}, {1280, 800, 150}}) {
      shoot("counted", "two-cams-arm", size, Bench.Card.COUNT, Screenshots::counted);
      shoot("reseated", "v-six-two-stages", size, Bench.Card.RESEAT, Screenshots::reseated);
      shoot("worn", "two-cams-arm", size, Bench.Card.WEAR, Screenshots::worn);
      shoot("all-worn", "v-six-two-stages", size, Bench.Card.WEAR, Screenshots::allWorn);
      shoot("loose", "two-cams-arm", size, Bench.Card.WEAR, Screenshots::loose);
      shoot("under-cover", "two-cams-arm", size, Bench.Card.COUNT, Screenshots::covered);
      shoot("covered", "v-six-two-stages", size, Bench.Card.COUNT, Screenshots::covered);
      shoot("back", "counterclockwise-balancers", size, Bench.Card.TABLE, Screenshots::back);
      shoot("slack", "two-cams-arm", size, Bench.Card.SLACK, desk -> {});
      shoot("built", "two-cams-arm", size, Bench.Card.BUILD, desk -> {});
      shoot("measured", "measured-two-cams", size, Bench.Card.MEASURE, desk -> {});
      shoot("unfinished", "two-cams-arm", size, Bench.Card.BUILD, Screenshots::unfinished);
      for (int stage = 0; stage < 4; stage++) {
        shoot("lesson-" + stage, "two-cams-arm", size, Bench.Card.LESSON, LessonShots.at(stage));
      }
      shoot("valves", "two-cams-arm", size, Bench.Card.VALVES, Screenshots::turnedOn);
      shoot("touching", "one-tooth-touches", size, Bench.Card.VALVES, Screenshots::touching);
      shoot("overlaid", "one-tooth-touches", size, Bench.Card.COMPARE, Screenshots::overlaid);
      shoot("beside", "one-tooth-touches", size, Bench.Card.COMPARE, Screenshots::beside);
      shoot("job", "two-cams-arm", size, Bench.Card.JOB, Screenshots::jobCounted);
      shoot("job-wrong", "two-cams-arm", size, Bench.Card.JOB, Screenshots::jobWrong);
      shoot("job-stopped", "v-six-two-stages", size, Bench.Card.JOB, Screenshots::jobStopped);
      shoot("job-finished", "two-cams-arm", size, Bench.Card.JOB, Screenshots::jobFinished);
      shoot("why", "two-cams-arm", size, Bench.Card.WHY, Screenshots::why);
      for (int percent : new int[] {35, 70, 100}) {
        shoot("why-at-" + percent, "two-cams-arm", size, Bench.Card.WHY, Screenshots::why);
      }
      shoot("two-turns", "one-cam-no-tensioner", size, Bench.Card.WEAR, Screenshots::twoTurns);
    }
  }

  private static void large() {
    int[] size = {1280, 720, 100};
    shoot("large-strand", "two-cams-arm", size, Bench.Card.COUNT, desk -> project(desk, 1));
    shoot("large-valve", "one-tooth-touches", size, Bench.Card.COUNT, Screenshots::largeValve);
    shoot("touching", "one-tooth-touches", size, Bench.Card.VALVES, Screenshots::touching);
  }

  private static void project(Desk desk, int item) {
    desk.look(look -> look.with(look.show().projected(true).item(item)));
  }

  private static void largeValve(Desk desk) {
    touching(desk);
    project(desk, 4);
  }

  private static void turnedOn(Desk desk) {
    desk.act(now -> Turns.by(now, 345));
  }

  private static void touching(Desk desk) {
    desk.act(now -> Edits.reseat(now, new Seat("main", "exhaust"), -1));
    desk.look(look -> look.with(look.valves().valve(1).cylinder(1)));
    desk.act(Turns::byTwoTurns);
  }

  private static void overlaid(Desk desk) {
    desk.act(Comparing::keep);
    desk.act(now -> Edits.reseat(now, new Seat("main", "intake"), -2));
    desk.act(now -> Edits.stretch(now, "main", 0.4));
  }

  private static void beside(Desk desk) {
    overlaid(desk);
    desk.look(look -> look.with(look.show().sideBySide(true)));
  }

  private static List<Step> toEnter(Desk desk) {
    return JobPage.of(desk.now()).sheet().toEnter();
  }

  private static void enter(Desk desk, Step step, String given) {
    String part = JobPage.of(desk.now()).section(step).part().title();
    desk.act(now -> JobEdits.enter(now, step, StepAnswer.of(step, given).answer(part)));
  }

  /** The first count right, the second about to be entered. */
  private static void jobCounted(Desk desk) {
    desk.act(now -> JobEdits.note(now, "Practice engine on the stand, both phasers"));
    for (Step step : toEnter(desk)) {
      if (step.field() instanceof Field.Links links && links.from().equals("crank")) {
        enter(desk, step, "" + links.right());
      }
    }
  }

  private static void jobWrong(Desk desk) {
    jobCounted(desk);
    for (Step step : toEnter(desk)) {
      if (step.field() instanceof Field.Links links && links.from().equals("intake")) {
        desk.act(now -> JobEdits.type(now, step, "" + (links.right() - 1)));
        return;
      }
    }
  }

  private static void jobStopped(Desk desk) {
    jobCounted(desk);
    desk.act(now -> JobEdits.stop(now, "stop/hold-back"));
  }

  private static void jobFinished(Desk desk) {
    jobCounted(desk);
    desk.act(now -> JobEdits.finish(now, List.of("Do it all again.")));
    desk.act(JobEdits::reopen);
    desk.act(now -> JobEdits.note(now, "One more thing."));
    desk.act(now -> JobEdits.finish(now, List.of()));
  }

  private static void counted(Desk desk) {
    desk.act(now -> Edits.reseat(now, new Seat("main", "exhaust"), 1));
    desk.act(now -> Edits.count(now, new StrandId("main", "crank", "intake"), "51"));
    desk.act(now -> Edits.count(now, new StrandId("main", "intake", "exhaust"), "18"));
    desk.act(now -> Edits.count(now, new StrandId("main", "exhaust", "crank"), "49"));
  }

  private static void reseated(Desk desk) {
    desk.look(
        look ->
            look.selecting(Optional.of(new Look.Selection("left", Optional.of("left-intake")))));
    desk.act(now -> Edits.reseat(now, new Seat("left", "left-intake"), -2));
  }

  private static void worn(Desk desk) {
    desk.act(now -> Edits.stretch(now, "main", 1.1));
  }

  private static void allWorn(Desk desk) {
    desk.now()
        .drive()
        .chains()
        .forEach(chain -> desk.act(now -> Edits.stretch(now, chain.name(), 0.3)));
    desk.act(Turns::byTwoTurns);
  }

  private static void loose(Desk desk) {
    desk.act(now -> Edits.stretch(now, "main", 5));
  }

  private static void covered(Desk desk) {
    desk.act(now -> Edits.cover(now, Seen.COVER_ON));
  }

  private static void back(Desk desk) {
    desk.act(now -> Turns.by(now, 130));
    desk.act(now -> Turns.by(now, -12.5));
  }

  private static void unfinished(Desk desk) {
    desk.act(now -> PlanEdits.moveShaft(now, "exhaust", Vector2D.of(20, 250)));
    desk.act(now -> PlanEdits.addShaft(now, Role.PUMP));
  }

  private static void why(Desk desk) {
    desk.act(now -> WhyEdits.note(now, "why-intake", "intake", "0.3"));
    desk.act(now -> WhyEdits.note(now, "why-exhaust", "exhaust", "-19.6 sd 0.8"));
    desk.act(now -> WhyEdits.note(now, "why-plunger-main", "plunger", "15"));
    desk.act(now -> WhyEdits.tick(now, "why-turned", "turned", true));
  }

  private static void twoTurns(Desk desk) {
    desk.act(Turns::byTwoTurns);
  }

  private static void shoot(
      String name, String model, int[] size, Bench.Card card, Consumer<Desk> done) {
    if (!wanted.isEmpty() && !wanted.contains(name)) {
      return;
    }
    BenchWindow window = new BenchWindow(Headless.opened(model), Runnable::run, Optional::empty);
    Desk desk = window.desk();
    desk.look(look -> look.textSteps((size[2] - look.textPercent()) / 10));
    window.bench().turnTo(card);
    done.accept(desk);
    Stage stage = new Stage();
    stage.setScene(window.sceneOf());
    stage.setWidth(size[0]);
    stage.setHeight(size[1]);
    stage.show();
    window.refresh();
    Platform.runLater(() -> Platform.exitNestedEventLoop(window, null));
    Platform.enterNestedEventLoop(window);
    for (int i = 0; i < 3; i++) {
      window.refresh();
      window.sceneOf().getRoot().applyCss();
      window.sceneOf().getRoot().layout();
    }
    if (name.contains("-at-")) {
      double down = Double.parseDouble(name.substring(name.indexOf("-at-") + 4)) / 100;
      window.sceneOf().getRoot().lookupAll(".scroll-pane").stream()
          .map(ScrollPane.class::cast)
          .forEach(pane -> pane.setVvalue(down));
      window.sceneOf().getRoot().layout();
    }
    write(
        window.sceneOf().snapshot(null),
        FOLDER.resolve("%s-%dx%d-%d.png".formatted(name, size[0], size[1], size[2])));
    stage.close();
  }

  private static void write(WritableImage image, Path file) {
    int width = (int) image.getWidth();
    int height = (int) image.getHeight();
    BufferedImage pixels = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    PixelReader reader = image.getPixelReader();
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        pixels.setRGB(x, y, reader.getArgb(x, y));
      }
    }
    try {
      ImageIO.write(pixels, "png", file.toFile());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
