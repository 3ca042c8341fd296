package tightside.window;

import java.util.Optional;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import tightside.record.Answer;
import tightside.record.Progress;
import tightside.session.JobEdits;
import tightside.session.JobPage;
import tightside.session.StepAnswer;
import tightside.sheet.Step;

/** A stop card: what to do, and above all what not, until it is put away. */
final class StopStage extends VBox {

  private final Desk desk;
  private final Label title = Controls.label("", "stop-title");
  private final VBox lines = Controls.stack("sentences");
  private final TextField written;
  private final Button away;
  private Optional<Step> card = Optional.empty();
  private boolean showing;

  StopStage(Desk desk) {
    this.desk = desk;
    getStyleClass().add("stop-stage");
    written = Controls.field("What happened, for the record", 40, this::typed);
    written.setId("stop-written");
    written.setMinWidth(0);
    written.setMaxWidth(Double.MAX_VALUE);
    written.setOnAction(e -> enter());
    away =
        Controls.button(
            "Put the card away", "Put this card away and go on with the job", this::putAway);
    away.setId("stop-away");
    away.getStyleClass().add("large-button");
    VBox body = new VBox(lines, written, away);
    body.getStyleClass().add("step-body");
    ScrollPane scroll = new ScrollPane(body);
    scroll.setFitToWidth(true);
    scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
    scroll.setFocusTraversable(false);
    VBox.setVgrow(scroll, Priority.ALWAYS);
    getChildren().addAll(title, scroll);
  }

  void show(JobPage page, Progress progress) {
    Optional<Step> next = progress.stop().flatMap(page::stop);
    if (next.isEmpty()) {
      return;
    }
    if (!next.equals(card)) {
      card = next;
      title.setText(next.get().text());
      lines.getChildren().setAll(Controls.sentences(next.get().notes(), "stop-line"));
    }
    String id = next.get().id();
    String given = progress.answer(id).map(Answer::given).orElse("");
    String text = progress.typed().getOrDefault(id, given);
    showing = true;
    if (!written.getText().equals(text)) {
      written.setText(text);
    }
    showing = false;
  }

  void focus() {
    written.requestFocus();
  }

  private void typed(String text) {
    if (!showing && card.isPresent()) {
      desk.act(
          now ->
              text.isEmpty()
                  ? JobEdits.clear(now, card.get())
                  : JobEdits.type(now, card.get(), text));
    }
  }

  private void enter() {
    String text = written.getText().strip();
    if (card.isPresent() && !text.isEmpty()) {
      desk.act(
          now ->
              JobEdits.enter(now, card.get(), StepAnswer.of(card.get(), text).answer("Stop card")));
    }
  }

  private void putAway() {
    enter();
    desk.act(JobEdits::goOn);
  }
}
