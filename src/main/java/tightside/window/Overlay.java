package tightside.window;

import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.layout.Region;
import tightside.picture.Picture;

/** Something drawn over the drive, on a canvas of its own that has no size while it is empty. */
abstract class Overlay extends Region {

  private final Canvas canvas = new Canvas();
  private final PictureCanvas under;

  /**
   * @param under the drive; whenever it is drawn anew, so is what lies over it
   */
  Overlay(PictureCanvas under) {
    this.under = under;
    getChildren().add(canvas);
    setMouseTransparent(true);
    setMinSize(0, 0);
    under
        .needsLayoutProperty()
        .addListener(
            (o, before, after) -> {
              if (after && !empty()) {
                requestLayout();
              }
            });
  }

  abstract boolean empty();

  /**
   * @param picture of the drive, as it was drawn
   */
  abstract void draw(GraphicsContext g, Fit fit, Picture picture);

  @Override
  protected void layoutChildren() {
    GraphicsContext g = canvas.getGraphicsContext2D();
    g.clearRect(0, 0, canvas.getWidth(), canvas.getHeight());
    canvas.setWidth(empty() ? 0 : Math.floor(getWidth()));
    canvas.setHeight(empty() ? 0 : Math.floor(getHeight()));
    if (!empty()) {
      under.picture().ifPresent(picture -> draw(g, under.fit(), picture));
    }
  }
}
