package tightside.window;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import tightside.files.RecordText;
import tightside.record.JobRecord;
import tightside.record.Progress;
import tightside.session.EventLines;
import tightside.session.JobEdits;
import tightside.session.JobPage;
import tightside.sheet.Step;

/** How far a job is before it is finished, and after that all that was recorded of it. */
final class EndStage extends VBox {

  private final Desk desk;
  private final JobKeeper keeper;
  private final Runnable toSteps;
  private final Consumer<Step> toStep;
  private final EventLines lines;
  private final VBox body = Controls.stack("step-body");
  private Optional<Node> first = Optional.empty();
  private Object shown = List.of();

  EndStage(Desk desk, JobKeeper keeper, Runnable toSteps, Consumer<Step> toStep) {
    this.desk = desk;
    this.keeper = keeper;
    this.toSteps = toSteps;
    this.toStep = toStep;
    lines = new EventLines(keeper.setting().clock().getZone());
    getStyleClass().add("step-stage");
    ScrollPane scroll = new ScrollPane(body);
    scroll.setFitToWidth(true);
    scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
    scroll.setFocusTraversable(false);
    VBox.setVgrow(scroll, Priority.ALWAYS);
    getChildren().add(scroll);
  }

  void focus() {
    first.ifPresent(Node::requestFocus);
  }

  void show(JobPage page, Progress progress) {
    Object now = List.of(page, progress, keeper.keeping());
    if (now.equals(shown)) {
      return;
    }
    shown = now;
    body.getChildren().clear();
    if (progress.finished()) {
      finished(page, progress);
    } else {
      unfinished(page, progress);
    }
  }

  private void add(Node... nodes) {
    body.getChildren().addAll(nodes);
  }

  private void unfinished(JobPage page, Progress progress) {
    List<Step> wrong = page.wrong(progress);
    List<Step> open = page.open(progress);
    add(Controls.label(page.done(progress) + ".", "step-text"));
    Button back = Controls.button("Back to the steps", "Back to the steps", toSteps);
    back.setId("job-steps");
    back.getStyleClass().add("large-button");
    Button finish =
        Controls.button(
            open.isEmpty() && wrong.isEmpty() ? "Finish the job" : "Finish the job as it is",
            "Finish the job",
            () -> desk.act(now -> JobEdits.finish(now, texts(open))));
    finish.setId("job-finish-now");
    finish.getStyleClass().add("large-button");
    first = Optional.of(back);
    add(Controls.flow(back, finish));
    add(Controls.label("What is finished is not changed any more, or it shows.", "step-note"));
    steps("Wrong, and not put right:", wrong, "refusal");
    steps("Not done:", open, "step-note");
  }

  private void steps(String heading, List<Step> steps, String style) {
    if (steps.isEmpty()) {
      return;
    }
    add(Controls.label(heading, "strong", style));
    for (Step step : steps) {
      add(Controls.line(step.text(), "Go to: " + step.text(), () -> toStep.accept(step)));
    }
  }

  private static List<String> texts(List<Step> steps) {
    return steps.stream().map(Step::text).toList();
  }

  private void finished(JobPage page, Progress progress) {
    Keeping keeping = keeper.keeping();
    Optional<JobRecord> record = keeping.record();
    add(
        Controls.label(
            "Finished"
                + record.flatMap(JobRecord::finishedAt).map(at -> " " + lines.day(at)).orElse(""),
            "step-text"));
    add(Controls.label(page.done(progress) + ".", "step-note"));
    record.ifPresent(r -> seal(r, keeping));
    Button again =
        Controls.button(
            "Take it up again", "Take the finished job up again", () -> desk.act(JobEdits::reopen));
    again.setId("job-reopen");
    first = Optional.of(again);
    record.ifPresent(this::changes);
    List<String> open = progress.leftOpen().orElse(List.of());
    if (!open.isEmpty()) {
      add(Controls.label("Not done when it was finished:", "strong", "step-note"));
      body.getChildren().addAll(Controls.sentences(open, "step-note"));
    }
    record.ifPresent(
        r -> {
          add(Controls.label("What happened:", "strong", "step-note"));
          body.getChildren().addAll(Controls.sentences(lines.all(r), "step-event"));
        });
    add(again);
  }

  private void seal(JobRecord record, Keeping keeping) {
    add(
        Controls.label(
            "Seal %s: write it on the paper. A record that was changed has another one."
                .formatted(RecordText.of(record).shortSeal()),
            "step-note"));
    List<String> model = new ArrayList<>(keeping.model());
    model.add(
        "Model %s, SHA-256 %s.".formatted(record.model().name(), groups(record.model().sha256())));
    body.getChildren().addAll(Controls.sentences(model, "step-note"));
  }

  private static String groups(String digest) {
    return digest.isEmpty()
        ? "unknown"
        : digest.substring(0, 16).replaceAll("(.{4})(?!$)", "$1 ") + " \u2026";
  }

  private void changes(JobRecord record) {
    List<String> changes = lines.afterFinishing(record);
    if (changes.isEmpty()) {
      return;
    }
    add(Controls.label("Changed after it was first finished:", "step-note", "refusal"));
    body.getChildren()
        .addAll(
            changes.stream()
                .map(line -> Controls.label(line, "step-event", "refusal"))
                .collect(Collectors.toList()));
  }
}
