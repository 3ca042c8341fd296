package tightside.window;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Consumer;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;

/** A choice of a few, all of them in sight; once one is taken, one always is. */
final class Segments<T> extends HBox {

  private final Map<T, ToggleButton> buttons = new LinkedHashMap<>();
  private final ToggleGroup group = new ToggleGroup();

  /**
   * @param what is chosen, for those who hear it only
   * @param words by choice, in order
   */
  Segments(String what, Map<T, String> words, Consumer<T> chosen) {
    getStyleClass().add("segments");
    words.forEach((choice, word) -> getChildren().add(button(what, choice, word, chosen)));
    setMinSize(USE_PREF_SIZE, USE_PREF_SIZE);
    setMaxWidth(USE_PREF_SIZE);
  }

  /** Lets the choice go on in a second line where one is too short. */
  Segments<T> wrapping() {
    FlowPane lines = new FlowPane();
    lines.getStyleClass().add("lines");
    lines.setPrefWrapLength(0);
    lines.getChildren().setAll(buttons.values());
    HBox.setHgrow(lines, Priority.ALWAYS);
    getChildren().setAll(lines);
    setMinSize(0, USE_COMPUTED_SIZE);
    setMaxWidth(Double.MAX_VALUE);
    return this;
  }

  private ToggleButton button(String what, T choice, String word, Consumer<T> chosen) {
    ToggleButton button = new ToggleButton(word);
    button.setToggleGroup(group);
    button.setAccessibleText(what + ": " + word);
    button.setMinSize(USE_PREF_SIZE, USE_PREF_SIZE);
    button.setOnAction(
        e -> {
          button.setSelected(true);
          chosen.accept(choice);
        });
    buttons.put(choice, button);
    return button;
  }

  void show(T choice) {
    buttons.get(choice).setSelected(true);
  }

  /** Nothing is chosen yet. */
  void none() {
    group.selectToggle(null);
  }

  ToggleButton of(T choice) {
    return buttons.get(choice);
  }
}
