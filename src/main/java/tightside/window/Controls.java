package tightside.window;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.VBox;

/** Controls as this window has them: plain, and each with a name that can be spoken. */
final class Controls {

  private Controls() {}

  /**
   * @param spoken what it does, for those who hear it only
   */
  static Button button(String words, String spoken, Runnable action) {
    Button button = new Button(words);
    button.setAccessibleText(spoken);
    button.setOnAction(e -> action.run());
    button.setMinSize(Button.USE_PREF_SIZE, Button.USE_PREF_SIZE);
    return button;
  }

  /** A button as wide as its room, its words on as many lines as they need. */
  static Button line(String words, String spoken, Runnable action) {
    Button button = button(words, spoken, action);
    button.getStyleClass().add("step-link");
    button.setWrapText(true);
    button.setMinWidth(0);
    button.setMaxWidth(Double.MAX_VALUE);
    return button;
  }

  static Label label(String words, String... styles) {
    Label label = new Label(words);
    label.getStyleClass().addAll(styles);
    label.setWrapText(true);
    label.setMinHeight(Label.USE_PREF_SIZE);
    label.setMaxWidth(Double.MAX_VALUE);
    return label;
  }

  /** A sentence that warns, by its first word as by its colour. */
  static Label caution(String sentence) {
    return label("Caution: " + sentence, "refusal");
  }

  /** A label that stays on one line. */
  static Label tag(String words, String... styles) {
    Label label = new Label(words);
    label.getStyleClass().addAll(styles);
    label.setMinSize(Label.USE_PREF_SIZE, Label.USE_PREF_SIZE);
    return label;
  }

  static TextField field(String spoken, int columns, Consumer<String> typed) {
    TextField field = new TextField();
    field.setAccessibleText(spoken);
    field.setPrefColumnCount(columns);
    field.setMinWidth(TextField.USE_PREF_SIZE);
    field.setMaxWidth(TextField.USE_PREF_SIZE);
    field.textProperty().addListener((o, before, after) -> typed.accept(after));
    return field;
  }

  /** Nodes side by side, on a second line where there is no room. */
  static FlowPane flow(Node... nodes) {
    FlowPane flow = new FlowPane(nodes);
    flow.getStyleClass().add("flow");
    flow.setMinHeight(FlowPane.USE_PREF_SIZE);
    return flow;
  }

  static VBox stack(String style, Node... nodes) {
    VBox stack = new VBox(nodes);
    stack.getStyleClass().add(style);
    return stack;
  }

  static void visible(Node node, boolean visible) {
    node.setVisible(visible);
    node.setManaged(visible);
  }

  /** Sentences as labels, one below the other. */
  static List<Node> sentences(List<String> sentences, String... styles) {
    List<Node> labels = new ArrayList<>();
    sentences.forEach(sentence -> labels.add(label(sentence, styles)));
    return labels;
  }

  /**
   * A line of a table.
   *
   * @param percents how wide each column is
   */
  static GridPane row(double[] percents, Label head, String... entries) {
    GridPane line = new GridPane();
    for (double percent : percents) {
      ColumnConstraints column = new ColumnConstraints();
      column.setPercentWidth(percent);
      line.getColumnConstraints().add(column);
    }
    line.add(head, 0, 0);
    for (int i = 0; i < entries.length; i++) {
      line.add(Controls.label(entries[i]), i + 1, 0);
    }
    return line;
  }
}
