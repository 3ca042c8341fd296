package tightside.window;

import java.util.List;
import java.util.Optional;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import tightside.record.Answer;
import tightside.record.Progress;
import tightside.record.Verdict;
import tightside.session.JobEdits;
import tightside.session.JobPage;
import tightside.session.StepAnswer;
import tightside.sheet.Section;
import tightside.sheet.Step;

/** One step of the job, large, with what came before it and what follows in sight. */
final class StepStage extends VBox {

  private static final int FOLLOWING = 2;

  /** The least height of what a step asks, in sizes of its type. */
  private static final double LEAST_LINES = 5;

  private final Desk desk;
  private final Runnable end;
  private final Label part = Controls.label("", "step-part");
  private final Label text = Controls.label("", "step-text");
  private final VBox lead = Controls.stack("sentences");
  private final VBox notes = Controls.stack("sentences");
  private final AnswerBox answer;
  private final Label says = Controls.label("", "step-says");
  private final Label before = Controls.label("", "step-before");
  private final VBox next = new VBox();
  private final Button back;
  private final Button on;
  private final ScrollPane scroll;
  private Optional<JobPage> page = Optional.empty();
  private Progress progress = Progress.none();
  private int at;

  /** The step whose wrong answer has been shown, so that the next Enter goes on. */
  private Optional<String> warned = Optional.empty();

  StepStage(Desk desk, Runnable end) {
    this.desk = desk;
    this.end = end;
    getStyleClass().add("step-stage");
    answer = new AnswerBox(this::typed, this::enter, () -> by(1));
    back = Controls.button("Back", "To the step before", () -> by(-1));
    back.setId("job-back");
    on = Controls.button("Skip", "To the next step, leaving this one open", () -> by(1));
    on.setId("job-on");
    says.setId("job-says");
    text.setId("job-step");
    VBox body = new VBox(lead, text, notes);
    body.getStyleClass().add("step-body");
    scroll = new ScrollPane(body);
    scroll.setFitToWidth(true);
    scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
    scroll.setFocusTraversable(false);
    // As high as what is in it where there is room, so that the verdict lies below it and in sight.
    body.heightProperty().addListener((o, old, high) -> roomFor(high.doubleValue()));
    Region gap = new Region();
    VBox.setVgrow(gap, Priority.ALWAYS);
    next.setPrefWidth(0);
    HBox.setHgrow(next, Priority.ALWAYS);
    HBox ways = new HBox(back, next, on);
    ways.getStyleClass().add("step-ways");
    ways.setAlignment(Pos.CENTER_LEFT);
    getChildren().addAll(part, before, scroll, answer, says, gap, ways);
  }

  /** What the step asks is never squeezed away, however small the window and large its text. */
  private void roomFor(double high) {
    scroll.setPrefViewportHeight(high);
    scroll.setMinHeight(Math.min(high, LEAST_LINES * text.getFont().getSize()));
  }

  void show(JobPage shown, boolean fresh, Progress now) {
    Optional<String> id = page.map(p -> p.walk().get(at).id());
    page = Optional.of(shown);
    progress = now;
    at = fresh ? shown.firstOpen(now) : place(id).orElse(shown.firstOpen(now));
    layOut();
  }

  private Optional<Integer> place(Optional<String> id) {
    List<Step> walk = page.orElseThrow().walk();
    for (int i = 0; i < walk.size(); i++) {
      if (Optional.of(walk.get(i).id()).equals(id)) {
        return Optional.of(i);
      }
    }
    return Optional.empty();
  }

  private Step step() {
    return page.orElseThrow().walk().get(at);
  }

  void focus() {
    answer.focus();
  }

  /** So many steps on, or back. */
  void by(int steps) {
    page.ifPresent(
        p -> {
          if (at + steps >= p.walk().size()) {
            end.run();
          } else {
            at = Math.max(0, at + steps);
            layOut();
            focus();
          }
        });
  }

  void to(Step step) {
    place(Optional.of(step.id())).ifPresent(i -> at = i);
    layOut();
  }

  private void layOut() {
    Section section = page.orElseThrow().section(step());
    warned = Optional.empty();
    boolean first = section.steps().get(0).equals(step());
    lead.getChildren().setAll(Controls.sentences(first ? section.lead() : List.of(), "step-lead"));
    text.setText(step().text());
    notes.getChildren().setAll(Controls.sentences(step().notes(), "step-note"));
    answer.layOut(step());
    back.setDisable(at == 0);
    scroll.setVvalue(0);
    next.getChildren().setAll(following());
    fill();
  }

  private List<Label> following() {
    List<Step> walk = page.orElseThrow().walk();
    List<Label> steps =
        walk.subList(at + 1, Math.min(walk.size(), at + 1 + FOLLOWING)).stream()
            .map(step -> inBrief("then: " + step.text()))
            .toList();
    return steps.isEmpty() ? List.of(inBrief("then: the end")) : steps;
  }

  /** On one line, as far as there is room. */
  private static Label inBrief(String sentence) {
    Label line = new Label(sentence);
    line.getStyleClass().addAll("step-before", "in-brief");
    line.setMinWidth(0);
    return line;
  }

  void show(Progress now) {
    followUndo(progress, now);
    progress = now;
    fill();
  }

  /** Goes to the step whose answer came or went elsewhere, as by undo. */
  private void followUndo(Progress old, Progress now) {
    for (Step step : page.orElseThrow().walk()) {
      boolean changed = !old.answer(step.id()).equals(now.answer(step.id()));
      if (changed && now.answer(step.id()).isEmpty()) {
        to(step);
      }
    }
  }

  private void fill() {
    Section section = page.orElseThrow().section(step());
    int number = section.steps().indexOf(step()) + 1;
    part.setText(
        "%s: step %d of %d".formatted(section.part().title(), number, section.steps().size()));
    Optional<Answer> entered = progress.answer(step().id());
    String typed = progress.typed().getOrDefault(step().id(), "");
    answer.show(entered, typed, warned.isPresent());
    if (!typed.isEmpty()) {
      says(StepAnswer.of(step(), typed));
    } else {
      says(entered);
    }
    before.setText(at == 0 ? "" : before());
    Controls.visible(before, !before.getText().isEmpty());
  }

  private String before() {
    Step step = page.orElseThrow().walk().get(at - 1);
    return progress
        .answer(step.id())
        .filter(a -> a.verdict() != Verdict.NOTED)
        .map(a -> "before: %s %s".formatted(a.given(), Judged.sentence(a)))
        .orElse("");
  }

  private void says(StepAnswer given) {
    boolean wrong = given.judgement().verdict() == tightside.sheet.Verdict.WRONG;
    says.setText(Judged.sentence(given));
    says.pseudoClassStateChanged(Styling.CAUTION, wrong);
  }

  private void says(Optional<Answer> entered) {
    says.setText(entered.map(Judged::sentence).orElse(""));
    says.pseudoClassStateChanged(
        Styling.CAUTION, entered.map(Answer::verdict).equals(Optional.of(Verdict.WRONG)));
  }

  private void typed(String words) {
    Step step = step();
    desk.act(now -> words.isEmpty() ? JobEdits.clear(now, step) : JobEdits.type(now, step, words));
  }

  /**
   * Enter, wherever in the stage the focus is; not where a button that is not the answer has it.
   */
  boolean enterByKey() {
    if (back.isFocused() || on.isFocused()) {
      return false;
    }
    return answer.enterByKey();
  }

  /** Enters what was given, and goes on unless it is wrong. */
  private void enter(String given) {
    Step step = step();
    if (!JobPage.takesEntry(step)) {
      by(1);
      return;
    }
    Optional<Answer> entered = progress.answer(step.id());
    boolean again = entered.isPresent() && entered.get().given().equals(given);
    StepAnswer read = StepAnswer.of(step, given);
    if (read.entry().isEmpty()) {
      says(read);
      return;
    }
    boolean wrong = read.judgement().verdict() == tightside.sheet.Verdict.WRONG;
    if (wrong && !(again && warned.isPresent())) {
      warned = Optional.of(step.id());
      desk.act(
          now ->
              JobEdits.enter(
                  now, step, read.answer(page.orElseThrow().section(step).part().title())));
      fill();
      return;
    }
    desk.act(
        now ->
            JobEdits.enter(
                now, step, read.answer(page.orElseThrow().section(step).part().title())));
    // The desk may have been told nothing new.
    by(1);
  }
}
