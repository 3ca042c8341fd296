package tightside.window;

import java.nio.IntBuffer;
import java.util.List;
import javafx.geometry.Rectangle2D;
import javafx.scene.Group;
import javafx.scene.image.ImageView;
import javafx.scene.image.PixelBuffer;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import tightside.picture.Shape;
import tightside.picture.Styles;
import tightside.raster.Area;
import tightside.raster.Cuts;
import tightside.raster.Raster;

/**
 * The paper on which everything lies that moves: two images by turns, for one may still be on its
 * way to the screen while the next is drawn. Only what is drawn on is shown of them.
 */
final class Sheet extends Group {

  private record Side(PixelBuffer<IntBuffer> buffer, WritableImage image, Raster raster) {

    static Side of(int width, int height, Cuts cuts) {
      int[] pixels = new int[width * height];
      PixelBuffer<IntBuffer> buffer =
          new PixelBuffer<>(
              width, height, IntBuffer.wrap(pixels), PixelFormat.getIntArgbPreInstance());
      return new Side(buffer, new WritableImage(buffer), new Raster(pixels, width, cuts));
    }

    boolean fits(int width, int height) {
      return buffer.getWidth() == width && buffer.getHeight() == height;
    }
  }

  /**
   * The part of the node that the sheet covers, in whole pixels of the layout.
   *
   * @param density pixels of the screen to one of the layout
   */
  record Place(int x, int y, int width, int height, double density) {}

  private final Cuts cuts = new Cuts();
  private Side shown;
  private Side spare;

  Sheet() {
    setManaged(false);
    setMouseTransparent(true);
  }

  /**
   * Draws shapes where they lie, and shows them from the next frame on.
   *
   * @param linePixels breadth of a plain line
   */
  void draw(Place place, Fit fit, double linePixels, List<Shape> shapes) {
    double density = place.density();
    int width = Math.max(1, (int) Math.ceil(place.width() * density));
    int height = Math.max(1, (int) Math.ceil(place.height() * density));
    Side next = spare != null && spare.fits(width, height) ? spare : Side.of(width, height, cuts);
    next.raster()
        .lay(
            (fit.left() - place.x()) * density,
            (fit.top() - place.y()) * density,
            fit.scale() * density,
            linePixels * density);
    List<Area> drawn = next.raster().paint(Styles.PAPER, shapes);
    List<Area> areas = seamless(place) ? drawn : List.of(new Area(0, 0, width, height));
    next.buffer().updateBuffer(all -> null);
    spare = shown;
    shown = next;
    while (getChildren().size() < areas.size()) {
      getChildren().add(new ImageView());
    }
    for (int i = 0; i < getChildren().size(); i++) {
      ImageView pane = (ImageView) getChildren().get(i);
      pane.setVisible(i < areas.size());
      if (pane.isVisible()) {
        show(areas.get(i), pane, place);
      }
    }
  }

  /** Whether parts of the sheet can lie edge to edge: not where edges fall between pixels. */
  private static boolean seamless(Place place) {
    return place.density() == Math.rint(place.density());
  }

  private void show(Area area, ImageView pane, Place place) {
    pane.setImage(shown.image());
    pane.setViewport(new Rectangle2D(area.x(), area.y(), area.width(), area.height()));
    pane.setFitWidth(area.width() / place.density());
    pane.setFitHeight(area.height() / place.density());
    pane.setX(place.x() + area.x() / place.density());
    pane.setY(place.y() + area.y() / place.density());
  }
}
