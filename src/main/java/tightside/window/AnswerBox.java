package tightside.window;

import java.util.Optional;
import java.util.function.Consumer;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.StackPane;
import tightside.record.Answer;
import tightside.session.StepAnswer;
import tightside.sheet.Field;
import tightside.sheet.Step;

/** Where a step is answered: a large tick, yes and no, or a field with its unit. */
final class AnswerBox extends StackPane {

  private static final int NUMBER = 6;
  private static final int WORDS = 26;

  private final Consumer<String> typed;
  private final Consumer<String> entered;
  private final Runnable on;
  private Step step;
  private Optional<TextField> field = Optional.empty();
  private Button first;
  private boolean showing;

  /**
   * @param typed is told what stands in the field
   * @param entered is told what was answered
   * @param on goes to the next step
   */
  AnswerBox(Consumer<String> typed, Consumer<String> entered, Runnable on) {
    this.typed = typed;
    this.entered = entered;
    this.on = on;
    getStyleClass().add("answer-box");
    setAccessibleText("Press Y for yes, N for no");
    setOnKeyPressed(this::press);
  }

  void layOut(Step next) {
    step = next;
    field = Optional.empty();
    Field asks = step.field();
    setFocusTraversable(asks instanceof Field.YesNo);
    if (asks instanceof Field.YesNo) {
      first = large("Yes (Y)", "job-yes", () -> entered.accept(StepAnswer.YES));
      getChildren()
          .setAll(row(first, large("No (N)", "job-no", () -> entered.accept(StepAnswer.NO))));
    } else if (asks instanceof Field.Tick) {
      first = large("Done \u2713", "job-tick", () -> entered.accept(StepAnswer.YES));
      getChildren().setAll(row(first));
    } else if (asks instanceof Field.Nothing) {
      first = large("Read", "job-read", on);
      getChildren().setAll(row(first));
    } else {
      first = large("Enter", "job-enter", this::enterField);
      getChildren().setAll(field(asks));
    }
  }

  private void press(KeyEvent event) {
    if (step != null && step.field() instanceof Field.YesNo) {
      if (event.getCode() == KeyCode.Y) {
        entered.accept(StepAnswer.YES);
      } else if (event.getCode() == KeyCode.N) {
        entered.accept(StepAnswer.NO);
      }
    }
  }

  private Node field(Field asks) {
    boolean number = asks instanceof Field.Links || asks instanceof Field.Reading;
    TextField text = Controls.field(step.text(), number ? NUMBER : WORDS, this::changed);
    text.setId("job-field");
    text.getStyleClass().add("job-field");
    text.setMinWidth(0);
    field = Optional.of(text);
    Label unit = Controls.tag(unit(asks), "step-note");
    return Controls.flow(text, unit, first);
  }

  private static String unit(Field asks) {
    if (asks instanceof Field.Links) {
      return "links, mark to mark";
    } else if (asks instanceof Field.Reading reading) {
      String expected = reading.expected().isEmpty() ? "" : " (" + reading.expected() + ")";
      return reading.unit().sign() + expected;
    } else if (asks instanceof Field.Maker maker) {
      return (maker.what() + " " + maker.unit()).strip() + ", from the maker's procedure";
    }
    return "";
  }

  private static Button large(String words, String id, Runnable action) {
    Button button = Controls.button(words, words, action);
    button.setId(id);
    button.getStyleClass().add("large-button");
    return button;
  }

  private static HBox row(Node... nodes) {
    HBox row = new HBox(nodes);
    row.getStyleClass().add("answer-row");
    return row;
  }

  private void changed(String text) {
    if (!showing) {
      typed.accept(text);
    }
  }

  private void enterField() {
    String text = field.orElseThrow().getText().strip();
    if (text.isEmpty()) {
      on.run();
    } else {
      entered.accept(text);
    }
  }

  /** Answers by the key Enter: the tick, what stands in the field, or the button in focus. */
  boolean enterByKey() {
    if (step == null) {
      return false;
    }
    Node owner = getScene().getFocusOwner();
    if (owner instanceof Button button && button.getStyleClass().contains("large-button")) {
      button.fire();
      return true;
    }
    if (step.field() instanceof Field.YesNo) {
      return false;
    }
    first.fire();
    return true;
  }

  /**
   * @param warned whether a wrong answer was shown, and the next Enter goes on all the same
   */
  void show(Optional<Answer> answer, String text, boolean warned) {
    showing = true;
    field.ifPresent(f -> fill(f, text.isEmpty() ? answer.map(Answer::given).orElse("") : text));
    showing = false;
    if (step.field() instanceof Field.Tick) {
      first.setText(answer.isPresent() ? "Done \u2713, go on" : "Done \u2713");
    } else if (field.isPresent()) {
      first.setText(warned && text.isEmpty() ? "Go on all the same" : "Enter");
    }
    first.setAccessibleText(first.getText());
  }

  private static void fill(TextField field, String text) {
    if (!field.getText().equals(text)) {
      field.setText(text);
    }
  }

  void focus() {
    if (field.isPresent()) {
      field.get().requestFocus();
      field.get().selectAll();
    } else if (step != null && step.field() instanceof Field.YesNo) {
      // Neither answer lies under a key that is pressed in passing.
      requestFocus();
    } else if (first != null) {
      first.requestFocus();
    }
  }
}
