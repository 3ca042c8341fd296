package tightside.window;

import java.util.function.BiConsumer;
import java.util.function.Consumer;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.VBox;
import tightside.survey.Checked;
import tightside.survey.Detection;
import tightside.survey.Measurement;
import tightside.words.SurveyWords;

/** One measurement: what it is, what was read, and what the others say of it. */
final class MeasureLine extends VBox {

  private final String words;
  private final BiConsumer<Checked, Measurement> changed;
  private final MeasureTyped typed = new MeasureTyped();
  private final Label residual = Controls.label("", "note");
  private Checked checked;

  /**
   * @param changed is given the measurement as typed, once Enter is pressed or the field is left
   */
  MeasureLine(
      Checked checked, BiConsumer<Checked, Measurement> changed, Consumer<Checked> removed) {
    this.changed = changed;
    Measurement m = checked.measurement();
    words = SurveyWords.measurement(m);
    getStyleClass().add("sentences");
    typed.spoken(m, words);
    typed.read.setId("measure-" + checked.place());
    typed.sigma.setId("measure-sigma-" + checked.place());
    commits(typed.read);
    commits(typed.sigma);
    Button remove =
        Controls.button(
            "Remove", "Remove the measurement " + words, () -> removed.accept(this.checked));
    remove.setId("measure-remove-" + checked.place());
    String unit = MeasureTyped.unit(m);
    getChildren()
        .addAll(
            Controls.label(words, "strong"),
            Controls.flow(typed.read, Controls.tag(unit + " \u00b1"), typed.sigma, remove),
            residual,
            typed.refusal);
    show(checked);
  }

  private void commits(TextField field) {
    field.setOnAction(e -> commit());
    field
        .focusedProperty()
        .addListener(
            (o, was, is) -> {
              if (was && getScene() != null) {
                commit();
              }
            });
  }

  /** Whether this is the line of a measurement. */
  boolean of(Checked other) {
    return words.equals(SurveyWords.measurement(other.measurement()));
  }

  void show(Checked next) {
    boolean same = checked != null && checked.measurement().equals(next.measurement());
    checked = next;
    if (!same) {
      typed.show(next.measurement());
      typed.refuse("");
    }
    residual.setText(SurveyWords.residual(next));
    residual.pseudoClassStateChanged(
        Styling.CAUTION, Math.abs(next.normalised()) > Detection.CRITICAL);
  }

  void refuse(String why) {
    typed.refuse(why);
  }

  private void commit() {
    Measurement m = typed.typed(checked.measurement());
    if (m != null && !m.equals(checked.measurement())) {
      changed.accept(checked, m);
    }
  }
}
