package tightside.window;

import java.util.List;
import java.util.function.Function;
import javafx.scene.AccessibleRole;
import javafx.scene.layout.Region;
import tightside.engine.Engine;
import tightside.picture.Bounds;
import tightside.picture.CylinderDrawing;
import tightside.session.ValveReading;

/** A cylinder cut open, whole or in part, moving with the crank. */
final class CylinderView extends Region {

  private final Sheet sheet = new Sheet();
  private final Function<Engine, Bounds> part;
  private ValveReading reading;
  private Object drawn = List.of();

  /**
   * @param spoken what is to be seen
   * @param part of the cylinder that is shown
   */
  CylinderView(String spoken, Function<Engine, Bounds> part) {
    this.part = part;
    getChildren().add(sheet);
    setAccessibleRole(AccessibleRole.IMAGE_VIEW);
    setAccessibleText(spoken);
    setMinSize(40, 40);
  }

  void show(ValveReading next) {
    reading = next;
    update();
  }

  @Override
  protected void layoutChildren() {
    update();
  }

  private void update() {
    double width = Math.floor(getWidth());
    double height = Math.floor(getHeight());
    if (reading == null || width < 20 || height < 20) {
      return;
    }
    double density = getScene() == null ? 1 : getScene().getWindow().getOutputScaleX();
    Object inputs = List.of(reading, width, height, density);
    if (inputs.equals(drawn)) {
      return;
    }
    drawn = inputs;
    Fit fit = Fit.of(part.apply(reading.engine()), width, height);
    sheet.draw(
        new Sheet.Place(0, 0, (int) width, (int) height, density),
        fit,
        1,
        CylinderDrawing.at(reading.engine(), reading.cylinderValves(), reading.degrees()));
  }
}
