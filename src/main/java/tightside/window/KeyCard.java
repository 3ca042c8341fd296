package tightside.window;

import javafx.scene.control.ScrollPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.VBox;

/** The list of keys, over everything else until it is put away. */
final class KeyCard extends VBox {

  KeyCard(Keys keys, Runnable close) {
    getStyleClass().add("key-card");
    setMaxSize(USE_PREF_SIZE, USE_PREF_SIZE);
    setFocusTraversable(true);
    setAccessibleText("What the keys do");
    GridPane grid = new GridPane();
    grid.getStyleClass().add("key-grid");
    int row = 0;
    for (Keys.Key key : keys.keys()) {
      if (!key.words().isEmpty()) {
        grid.addRow(row, Controls.tag(key.words(), "strong"), Controls.tag(key.does()));
        row++;
      }
    }
    ScrollPane scroll = new ScrollPane(grid);
    scroll.setFitToWidth(true);
    scroll.setFocusTraversable(false);
    getChildren()
        .addAll(
            Controls.tag("Keys", "card-title"),
            scroll,
            Controls.button("Close", "Close the list of keys", close));
  }
}
