package tightside.window;

import java.util.List;
import java.util.function.Function;
import javafx.scene.AccessibleRole;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.layout.Region;
import tightside.engine.Engine;
import tightside.picture.Bounds;
import tightside.picture.CylinderDrawing;
import tightside.session.ValveReading;

/** A cylinder cut open, whole or in part, moving with the crank. */
final class CylinderView extends Region {

  private final Canvas canvas = new Canvas();
  private final Function<Engine, Bounds> part;
  private ValveReading reading;
  private Object drawn = List.of();

  /**
   * @param spoken what is to be seen
   * @param part of the cylinder that is shown
   */
  CylinderView(String spoken, Function<Engine, Bounds> part) {
    this.part = part;
    getChildren().add(canvas);
    setAccessibleRole(AccessibleRole.IMAGE_VIEW);
    setAccessibleText(spoken);
    setMinSize(40, 40);
  }

  void show(ValveReading next) {
    reading = next;
    requestLayout();
  }

  @Override
  protected void layoutChildren() {
    double width = Math.floor(getWidth());
    double height = Math.floor(getHeight());
    if (reading == null || width < 20 || height < 20) {
      return;
    }
    Object inputs = List.of(reading, width, height);
    if (inputs.equals(drawn)) {
      return;
    }
    drawn = inputs;
    canvas.setWidth(width);
    canvas.setHeight(height);
    GraphicsContext g = canvas.getGraphicsContext2D();
    g.clearRect(0, 0, width, height);
    Fit fit = Fit.of(part.apply(reading.engine()), width, height);
    new Painter(g, fit, 1 / fit.scale())
        .paint(CylinderDrawing.at(reading.engine(), reading.cylinderValves(), reading.degrees()));
  }
}
