package tightside.window;

import java.util.List;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/**
 * The list of keys, over everything else until it is put away: in two columns where the window is
 * wide enough for its text, in one to be scrolled otherwise.
 */
final class KeyCard extends VBox {

  /** Narrower than this, in sizes of the type, there is no room for two columns. */
  private static final double TWO_COLUMNS_EM = 78;

  private final List<Keys.Key> listed;
  private final HBox columns = new HBox();

  private double em;

  KeyCard(Keys keys, Runnable close) {
    listed = keys.keys().stream().filter(key -> !key.words().isEmpty()).toList();
    getStyleClass().add("key-card");
    columns.getStyleClass().add("key-columns");
    setMaxSize(USE_PREF_SIZE, USE_PREF_SIZE);
    setFocusTraversable(true);
    setAccessibleText("What the keys do");
    ScrollPane scroll = new ScrollPane(columns);
    scroll.setFitToWidth(true);
    scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
    scroll.setFocusTraversable(false);
    scroll.setMinHeight(0);
    sceneProperty()
        .flatMap(Scene::widthProperty)
        .addListener((o, before, width) -> within(width == null ? 0 : width.doubleValue(), em));
    VBox.setVgrow(scroll, Priority.ALWAYS);
    getChildren()
        .addAll(
            Controls.tag("Keys and wheel", "card-title"),
            scroll,
            Controls.button("Close", "Close the list of keys", close));
  }

  /**
   * Lays the list out for a window.
   *
   * @param width of the window, pixels
   * @param emPixels size of its type, pixels
   */
  KeyCard within(double width, double emPixels) {
    em = emPixels;
    boolean two = width >= TWO_COLUMNS_EM * em;
    int half = (listed.size() + 1) / 2;
    columns.getChildren().clear();
    columns.getChildren().add(grid(two ? listed.subList(0, half) : listed));
    if (two) {
      columns.getChildren().add(grid(listed.subList(half, listed.size())));
    }
    return this;
  }

  private static GridPane grid(List<Keys.Key> keys) {
    GridPane grid = new GridPane();
    grid.getStyleClass().add("key-grid");
    HBox.setHgrow(grid, Priority.ALWAYS);
    int row = 0;
    for (Keys.Key key : keys) {
      Label does = Controls.label(key.does(), "key-does");
      GridPane.setHgrow(does, Priority.ALWAYS);
      grid.addRow(row, Controls.label(key.words(), "strong", "key-words"), does);
      row++;
    }
    return grid;
  }
}
