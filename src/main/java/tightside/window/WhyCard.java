package tightside.window;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Function;
import javafx.application.Platform;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import tightside.files.WholeFiles;
import tightside.reasoning.Answer;
import tightside.reasoning.Reasoner;
import tightside.reasoning.Subject;
import tightside.session.SessionView;
import tightside.session.Snapshot;
import tightside.session.WhyEdits;
import tightside.session.WhyForm;
import tightside.why.WhyPage;
import tightside.words.ReadingSentences;
import tightside.words.Sentences;

/**
 * The card on which readings are typed; what explains them stands large beside it. The answer is
 * worked out by the worker; until then the old one stays.
 */
final class WhyCard extends Card {

  private final Desk desk;
  private final Executor worker;
  private final Function<String, Optional<Path>> saveAs;
  private final WhyStage stage = new WhyStage();
  private final List<Row> rows = new ArrayList<>();
  private final Map<String, CheckBox> ticks = new HashMap<>();
  private final Label said = Controls.label("", "note");
  private final Button save;
  private Object asked = List.of();
  private volatile Reasoner reasoner;
  private Answer answer;
  private Snapshot answered;

  /** A field with its refusal. */
  private record Row(String id, TextField field, Label refusal) {}

  /**
   * @param saveAs asks where to save, from a name that is suggested
   */
  WhyCard(Desk desk, Executor worker, Function<String, Optional<Path>> saveAs) {
    this.desk = desk;
    this.worker = worker;
    this.saveAs = saveAs;
    save = Controls.button("Save the page", "Save the page that says why, PDF or HTML", this::save);
    save.setId("why-save");
    Controls.visible(said, false);
  }

  @Override
  Optional<Stage> stage() {
    return Optional.of(new Stage(stage, false));
  }

  @Override
  void layOut(SessionView view) {
    rows.clear();
    ticks.clear();
    asked = List.of();
    answer = null;
    reasoner = null;
    getChildren()
        .setAll(
            Controls.label("What could explain what was read?", "card-title"),
            Controls.label(
                "Crank degrees off its place: + is ahead, - is late. Any of it is enough; what"
                    + " reads alike is told so. A reading can have a spread of its own: -7 sd 0.5.",
                "why-note"),
            Controls.flow(save),
            said);
    if (view.snapshot().drive().countedOnly()) {
      getChildren().add(Controls.label(Sentences.explainLeavesOut(), "note"));
    }
    Controls.visible(save, true);
    WhyForm form = WhyForm.of(view.snapshot());
    for (WhyForm.Heading heading : WhyForm.Heading.values()) {
      getChildren().add(Controls.label(heading.words(), "chain-name"));
      form.fields().stream()
          .filter(f -> f.heading() == heading)
          .forEach(f -> getChildren().add(f.tick() ? tick(f) : row(f)));
    }
  }

  private CheckBox tick(WhyForm.Field field) {
    CheckBox box = new CheckBox(field.words());
    box.setAccessibleText(field.words());
    box.setId(field.id());
    box.setWrapText(true);
    box.setOnAction(
        e -> desk.act(now -> WhyEdits.tick(now, field.id(), field.words(), box.isSelected())));
    ticks.put(field.id(), box);
    return box;
  }

  private VBox row(WhyForm.Field field) {
    TextField text =
        Controls.field(
            field.words() + ", " + field.hint(),
            field.heading() == WhyForm.Heading.READ ? 7 : 4,
            typed -> {
              if (!showing()) {
                desk.act(now -> WhyEdits.note(now, field.id(), field.words(), typed));
              }
            });
    text.setId(field.id());
    boolean number = field.heading() != WhyForm.Heading.READ;
    text.setPromptText(number ? field.hint() : "");
    String words = number ? field.words() : "%s (%s)".formatted(field.words(), field.hint());
    Label label = Controls.label(words);
    HBox.setHgrow(label, Priority.ALWAYS);
    HBox line = new HBox(text, label);
    line.getStyleClass().add("line");
    Label refusal = Controls.label("", "refusal");
    Controls.visible(refusal, false);
    rows.add(new Row(field.id(), text, refusal));
    return new VBox(line, refusal);
  }

  @Override
  void fill(SessionView view) {
    Snapshot now = view.snapshot();
    Object inputs = WhyForm.inputs(now);
    if (inputs.equals(asked)) {
      return;
    }
    asked = inputs;
    WhyForm form = WhyForm.of(now);
    for (Row row : rows) {
      String typed = now.why().of(row.id());
      if (!row.field().getText().equals(typed)) {
        row.field().setText(typed);
      }
      row.refusal().setText(form.refusals().getOrDefault(row.id(), ""));
      Controls.visible(row.refusal(), form.refusals().containsKey(row.id()));
    }
    ticks.forEach((id, box) -> box.setSelected(now.why().of(id).equals(WhyForm.TICKED)));
    save.setDisable(form.evidence().readings().isEmpty());
    if (form.evidence().readings().isEmpty()) {
      answer = null;
      stage.nothingRead();
      return;
    }
    worker.execute(() -> explain(now, form, inputs));
  }

  private void explain(Snapshot now, WhyForm form, Object inputs) {
    Reasoner able = reasoner;
    Subject subject = form.subject();
    if (able == null || able.subject().drive() != subject.drive()) {
      able = Reasoner.of(subject);
      reasoner = able;
    }
    Answer made = able.explain(form.evidence(), form.priors(), form.plan());
    List<String> read = ReadingSentences.numbered(now.drive(), made.evidence());
    Platform.runLater(
        () -> {
          if (asked.equals(inputs)) {
            answer = made;
            answered = now;
            stage.show(now.drive(), made, read);
          }
        });
  }

  private void save() {
    if (answer == null) {
      return;
    }
    Answer saved = answer;
    Snapshot of = answered;
    saveAs.apply("why.pdf").ifPresent(file -> worker.execute(() -> write(file, of, saved)));
  }

  private void write(Path file, Snapshot of, Answer saved) {
    boolean web = file.toString().toLowerCase(Locale.ROOT).matches(".*\\.html?");
    byte[] page =
        web
            ? WhyPage.html(of.drive(), saved).getBytes(StandardCharsets.UTF_8)
            : WhyPage.pdf(of.drive(), saved);
    String sentence;
    try {
      WholeFiles.replace(file, page);
      sentence = "Saved as %s.".formatted(file.getFileName());
    } catch (IOException problem) {
      sentence = problem.getMessage() + " What you typed is still here.";
    }
    String shown = sentence;
    Platform.runLater(
        () -> {
          said.setText(shown);
          Controls.visible(said, true);
        });
  }
}
