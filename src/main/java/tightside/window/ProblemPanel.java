package tightside.window;

import java.util.List;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.VBox;
import tightside.files.Problem;

/** What is wrong with a model that was to be opened, beside the drive that was shown before. */
final class ProblemPanel extends VBox {

  private final Label title = Controls.label("", "card-title");
  private final VBox list = new VBox();
  private final Button offer = Controls.button("", "", () -> {});

  ProblemPanel() {
    getStyleClass().add("problems");
    clear();
  }

  private void layOut() {
    if (!getChildren().isEmpty()) {
      return;
    }
    list.getStyleClass().add("problem-list");
    ScrollPane scroll = new ScrollPane(list);
    scroll.setFitToWidth(true);
    scroll.getStyleClass().add("problem-scroll");
    Button close = Controls.button("Close", "Close the list of problems", this::clear);
    close.setId("close-problems");
    offer.setId("offer");
    getChildren().addAll(title, scroll, Controls.flow(offer, close));
  }

  /**
   * Says something with nothing to do about it here.
   *
   * @param heading one sentence
   */
  void say(String heading, List<String> lines) {
    layOut();
    title.setText(heading);
    list.getChildren().setAll(Controls.sentences(lines, "note"));
    Controls.visible(offer, false);
    Controls.visible(this, true);
  }

  /** Says something, and offers what can be done. */
  void offer(String heading, List<String> lines, String words, Runnable action) {
    say(heading, lines);
    offer.setText(words);
    offer.setAccessibleText(words);
    offer.setOnAction(
        e -> {
          clear();
          action.run();
        });
    Controls.visible(offer, true);
  }

  void clear() {
    list.getChildren().clear();
    Controls.visible(this, false);
  }

  /**
   * @param heading one sentence
   */
  void show(String heading, List<Problem> problems) {
    layOut();
    title.setText(heading);
    list.getChildren().clear();
    for (Problem problem : problems) {
      String words =
          "Line %d, column %d: %s".formatted(problem.line(), problem.column(), problem.message());
      Label label = Controls.label(words, problem.error() ? "refusal" : "note");
      label.setFocusTraversable(true);
      label.setAccessibleText(words);
      list.getChildren().add(label);
    }
    Controls.visible(offer, false);
    Controls.visible(this, true);
  }
}
