package tightside.window;

import javafx.scene.Node;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.Region;

/**
 * Lays out what fills a window: as large as the window is, or, where that is too small for the size
 * of its text, as small as it can be used, to be scrolled. The scroll bars are made when they are
 * first needed.
 */
final class LeastRoom extends Region {

  private final Region content;
  private ScrollPane scroll;

  LeastRoom(Region content) {
    this.content = content;
    getChildren().add(content);
  }

  @Override
  protected void layoutChildren() {
    double width = getWidth();
    double height = getHeight();
    double least = content.minWidth(-1);
    boolean fits = width >= least && height >= content.minHeight(Math.max(width, least));
    Node shown = fits ? content : scroll();
    if (!getChildren().get(0).equals(shown)) {
      getChildren().clear();
      scroll().setContent(fits ? null : content);
      getChildren().add(shown);
    }
    shown.resizeRelocate(0, 0, width, height);
  }

  private ScrollPane scroll() {
    if (scroll == null) {
      scroll = new ScrollPane();
      scroll.setFitToWidth(true);
      scroll.setFitToHeight(true);
      scroll.setFocusTraversable(false);
      scroll.getStyleClass().add("least-room");
    }
    return scroll;
  }
}
