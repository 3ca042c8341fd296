package tightside.window;

import java.util.Optional;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.StackPane;
import tightside.record.Progress;
import tightside.session.JobPage;
import tightside.session.SessionView;
import tightside.sheet.Step;

/**
 * The job in large letters in the picture's place: one step, a stop card, or how it ended. To be
 * read at arm's length and worked with one finger.
 */
final class JobStage extends StackPane {

  /** Narrower than this, in sizes of the type, large letters leave no room for the answer. */
  private static final double NARROW_EM = 50;

  private final StepStage steps;
  private final StopStage stop;
  private final Label waiting = Controls.label("Working it out.", "step-note");
  private final EndStage end;
  private Optional<JobPage> page = Optional.empty();
  private boolean ending;
  private Progress shown = Progress.none();

  JobStage(Desk desk, JobKeeper keeper) {
    getStyleClass().add("job-stage");
    setId("job-stage");
    steps = new StepStage(desk, this::toEnd);
    stop = new StopStage(desk);
    end = new EndStage(desk, keeper, this::toSteps, this::toStep);
    getChildren().addAll(waiting, steps, stop, end);
    StackPane.setAlignment(waiting, Pos.TOP_LEFT);
    layers();
    addEventFilter(KeyEvent.KEY_PRESSED, this::press);
    widthProperty().addListener((o, before, width) -> fit(desk, width.doubleValue()));
    sceneProperty().addListener((o, before, scene) -> focusSoon());
  }

  /** Smaller letters where few of them go on a line. */
  private void fit(Desk desk, double width) {
    double em = BenchWindow.TYPE * desk.now().look().textPercent() / 100;
    pseudoClassStateChanged(Styling.NARROW, width < NARROW_EM * em);
  }

  private void press(KeyEvent event) {
    boolean up = event.getCode() == KeyCode.UP;
    if ((up || event.getCode() == KeyCode.DOWN) && steps.isVisible()) {
      steps.by(up ? -1 : 1);
      event.consume();
    } else if (event.getCode() == KeyCode.ENTER && steps.isVisible() && steps.enterByKey()) {
      event.consume();
    }
  }

  private void focusSoon() {
    if (getScene() != null) {
      focus();
    }
  }

  /** Puts the focus where the next key is wanted. */
  void focus() {
    if (steps.isVisible()) {
      steps.focus();
    } else if (stop.isVisible()) {
      stop.focus();
    } else {
      end.focus();
    }
  }

  /** Shows the end of the job, or how far it is. */
  void toEnd() {
    ending = true;
    layers();
    end.focus();
  }

  private void toSteps() {
    ending = false;
    layers();
    steps.focus();
  }

  /** Shows a step. */
  void toStep(Step step) {
    steps.to(step);
    toSteps();
  }

  /** Shows a page anew, at the step that is next. */
  void show(JobPage next) {
    boolean fresh = page.isEmpty() || !page.get().sheet().drive().equals(next.sheet().drive());
    page = Optional.of(next);
    steps.show(next, fresh, shown);
    ending = ending && !fresh;
    layers();
  }

  void show(SessionView view) {
    Progress progress = view.snapshot().job().progress();
    boolean finishedNow = progress.finished() && !shown.finished();
    boolean reopened = !progress.finished() && shown.finished();
    boolean stopped = !progress.stop().equals(shown.stop());
    shown = progress;
    ending = finishedNow || ending && !reopened;
    page.ifPresent(
        p -> {
          steps.show(progress);
          stop.show(p, progress);
          end.show(p, progress);
        });
    layers();
    if (stopped || finishedNow || reopened) {
      focus();
    }
  }

  private void layers() {
    boolean stopped = shown.stop().isPresent();
    Controls.visible(waiting, page.isEmpty());
    Controls.visible(stop, page.isPresent() && stopped);
    Controls.visible(end, page.isPresent() && !stopped && (ending || shown.finished()));
    Controls.visible(steps, page.isPresent() && !stopped && !end.isVisible());
  }
}
