package tightside.window;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import javafx.application.Platform;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.control.TextArea;
import javafx.scene.layout.VBox;
import tightside.record.Progress;
import tightside.session.EventLines;
import tightside.session.JobEdits;
import tightside.session.JobPage;
import tightside.session.SessionView;
import tightside.session.Snapshot;
import tightside.sheet.Part;
import tightside.sheet.Section;

/**
 * The card of the job: how far it is, where it is kept, the note, the parts of the work. Its steps
 * stand large in the picture's place.
 */
final class JobCard extends Card {

  private static final int NOTE_ROWS = 3;

  private final Desk desk;
  private final Executor worker;
  private final JobKeeper keeper;
  private final JobStage stage;
  private final JobShelf shelf;
  private final JobPrinting printing;
  private final JobsFound found;
  private final Label done = Controls.label("", "strong");
  private final ProgressBar bar = new ProgressBar(0);
  private final Label access = Controls.label("", "note");
  private final TextArea note = new TextArea();
  private final VBox parts = Controls.stack("table");
  private Optional<JobPage> page = Optional.empty();
  private Object asked = List.of();

  /**
   * @param opening opens records of jobs
   */
  JobCard(Desk desk, JobKeeper keeper, JobOpening opening, Executor worker) {
    this.desk = desk;
    this.worker = worker;
    this.keeper = keeper;
    stage = new JobStage(desk, keeper);
    shelf = new JobShelf(keeper, opening, stage::toEnd);
    printing = new JobPrinting(desk, keeper, worker);
    found = new JobsFound(keeper, opening, worker, Platform::runLater);
    keeper.watch(this::keptOtherwise);
    note.setId("job-note");
    note.setAccessibleText("Note of the job");
    note.setPromptText("Engine, customer, what is to be done: in your own words");
    note.setWrapText(true);
    note.setPrefRowCount(NOTE_ROWS);
    note.textProperty().addListener((o, before, after) -> noted(after));
  }

  @Override
  Optional<Stage> stage() {
    return Optional.of(new Stage(stage, false));
  }

  @Override
  void layOut(SessionView view) {
    bar.setMaxWidth(Double.MAX_VALUE);
    bar.setAccessibleText("Steps done");
    getChildren()
        .setAll(
            Controls.label("The job, step by step", "card-title"),
            done,
            bar,
            stops(),
            shelf,
            printing,
            Controls.label("Note", "strong"),
            note,
            access,
            Controls.label("Parts of the work", "strong"),
            parts,
            found);
    found.look();
  }

  private VBox stops() {
    VBox stops =
        Controls.stack(
            "stops",
            stop("hold-back", "Hold-back slipped (F2)"),
            stop("dropped", "Chain dropped (F3)"),
            stop("resistance", "Resistance while turning (F4)"));
    return Controls.stack(
        "sentences", Controls.label("Something went wrong? Hands off:", "refusal"), stops);
  }

  private Button stop(String card, String words) {
    Button button = Controls.button(words, "Stop card: " + words, () -> stop(card));
    button.setId("stop-" + card);
    button.setMaxWidth(Double.MAX_VALUE);
    button.getStyleClass().add("stop-button");
    return button;
  }

  /**
   * Shows a stop card.
   *
   * @param card how its id ends
   */
  void stop(String card) {
    desk.act(now -> JobEdits.stop(now, "stop/" + card));
  }

  private void noted(String text) {
    if (!showing()) {
      desk.act(now -> JobEdits.note(now, text));
    }
  }

  @Override
  void fill(SessionView view) {
    Snapshot now = view.snapshot();
    Object inputs = JobPage.inputs(now);
    if (!inputs.equals(asked)) {
      asked = inputs;
      worker.execute(
          () -> {
            JobPage made = JobPage.of(now);
            Platform.runLater(() -> made(inputs, made));
          });
    }
    Progress progress = now.job().progress();
    if (!note.getText().equals(progress.note())) {
      note.setText(progress.note());
    }
    note.setEditable(!progress.finished());
    access.setText(
        "Access: %s. Change it at the top; the steps follow."
            .formatted(EventLines.access(now.cover())));
    shelf.show(progress);
    printing.show();
    page.ifPresent(p -> fill(p, progress));
    stage.show(view);
  }

  private void made(Object inputs, JobPage made) {
    if (asked.equals(inputs)) {
      page = Optional.of(made);
      stage.show(made);
      stage.show(desk.view());
      fill(made, desk.now().job().progress());
    }
  }

  private void fill(JobPage p, Progress progress) {
    done.setText(p.done(progress) + (progress.finished() ? "; finished" : "") + ".");
    long all = p.walk().stream().filter(JobPage::takesEntry).count();
    bar.setProgress(all == 0 ? 0 : 1 - p.open(progress).size() / (double) all);
    parts.getChildren().clear();
    for (Section section : p.sheet().sections()) {
      if (section.part() != Part.STOP && !section.steps().isEmpty()) {
        parts.getChildren().add(part(p, section, progress));
      }
    }
  }

  private Button part(JobPage p, Section section, Progress progress) {
    String words = "%s (%s)".formatted(section.part().title(), p.done(section, progress));
    Button button = Controls.line(words, words, () -> stage.toStep(section.steps().get(0)));
    button.setDisable(progress.finished());
    return button;
  }

  private void keptOtherwise() {
    shelf.show(desk.now().job().progress());
    printing.show();
    stage.show(desk.view());
  }
}
