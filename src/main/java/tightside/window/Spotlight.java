package tightside.window;

import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;
import tightside.session.Look;
import tightside.session.Snapshot;

/** A ring round the sprocket that is selected. */
record Spotlight(GraphicsContext g, Fit fit) {

  private static final Color RING = Color.web("#1d2930");

  void show(Snapshot now) {
    now.look().selected().ifPresent(selection -> ring(now, selection));
  }

  private void ring(Snapshot now, Look.Selection selection) {
    for (Wheel wheel : Wheel.all(now.drive())) {
      if (selection.shaft().filter(wheel.seat().shaft()::equals).isPresent()
          && selection.chain().equals(wheel.seat().chain())) {
        double radius = (wheel.radiusMm() + 0.75 * wheel.pitchMm()) * fit.scale();
        g.setStroke(RING);
        g.setLineWidth(1.1);
        g.setLineDashes(2, 4);
        g.strokeOval(
            fit.x(wheel.centre()) - radius, fit.y(wheel.centre()) - radius, 2 * radius, 2 * radius);
      }
    }
  }
}
