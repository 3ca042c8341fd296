package tightside.window;

import java.util.List;
import javafx.geometry.VPos;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;
import javafx.scene.text.Font;
import javafx.scene.text.FontWeight;
import javafx.scene.text.TextAlignment;
import tightside.drive.Drive;
import tightside.picture.Picture;
import tightside.timing.Seat;

/** Rings round the sprockets that are meant, to be seen from far away. */
final class Rings extends Overlay {

  private static final Color INK = Color.web("#b3152b");
  private static final Color WORDS = Color.web("#1d2930");

  private List<Seat> seats = List.of();
  private List<Wheel> wheels = List.of();
  private double emPixels = 20;

  Rings(PictureCanvas under) {
    super(under);
  }

  /**
   * @param em size of their names, pixels
   */
  void show(Drive drive, List<Seat> next, double em) {
    emPixels = em;
    if (!next.equals(seats)) {
      seats = next;
      requestLayout();
    }
    wheels = seats.isEmpty() ? List.of() : Wheel.all(drive);
  }

  @Override
  boolean empty() {
    return seats.isEmpty();
  }

  @Override
  void draw(GraphicsContext g, Fit fit, Picture picture) {
    g.setStroke(INK);
    g.setLineWidth(4);
    g.setFill(WORDS);
    g.setFont(Font.font("SansSerif", FontWeight.BOLD, emPixels));
    g.setTextAlign(TextAlignment.CENTER);
    g.setTextBaseline(VPos.CENTER);
    for (Wheel wheel : wheels) {
      if (seats.contains(wheel.seat())) {
        double radius = (wheel.radiusMm() + 1.2 * wheel.pitchMm()) * fit.scale();
        double x = fit.x(wheel.centre()) - radius;
        g.strokeOval(x, fit.y(wheel.centre()) - radius, 2 * radius, 2 * radius);
        g.fillText(wheel.seat().shaft(), fit.x(wheel.centre()), fit.y(wheel.centre()));
      }
    }
  }
}
