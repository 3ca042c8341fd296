package tightside.window;

import java.util.List;
import java.util.Optional;
import javafx.scene.paint.Color;
import javafx.scene.shape.Circle;
import tightside.drive.Drive;
import tightside.session.Look;
import tightside.session.Snapshot;

/** A ring round the sprocket that is selected. */
final class Spotlight extends Circle {

  private Drive known;
  private List<Wheel> wheels = List.of();

  Spotlight() {
    setManaged(false);
    setMouseTransparent(true);
    setFill(null);
    setStroke(Color.web("#1d2930"));
    setStrokeWidth(1.1);
    getStrokeDashArray().setAll(2.0, 4.0);
  }

  void show(Snapshot now, Fit fit) {
    Optional<Wheel> chosen = now.look().selected().flatMap(s -> wheel(now.drive(), s));
    setVisible(chosen.isPresent());
    chosen.ifPresent(wheel -> ring(wheel, fit));
  }

  private Optional<Wheel> wheel(Drive drive, Look.Selection selection) {
    if (known != drive) {
      known = drive;
      wheels = Wheel.all(drive);
    }
    return wheels.stream()
        .filter(wheel -> selection.chain().equals(wheel.seat().chain()))
        .filter(wheel -> selection.shaft().filter(wheel.seat().shaft()::equals).isPresent())
        .findFirst();
  }

  private void ring(Wheel wheel, Fit fit) {
    setCenterX(fit.x(wheel.centre()));
    setCenterY(fit.y(wheel.centre()));
    setRadius((wheel.radiusMm() + 0.75 * wheel.pitchMm()) * fit.scale());
  }
}
