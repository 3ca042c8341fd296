package tightside.window;

import java.util.List;
import javafx.scene.AccessibleRole;
import javafx.scene.canvas.Canvas;
import javafx.scene.layout.Region;
import tightside.picture.GapChart;
import tightside.picture.GapScene;
import tightside.picture.Picture;
import tightside.session.ValveReading;

/**
 * The room between valve and piston against the crank angle. The chart is drawn when it changes;
 * while the crank turns a narrow marker moves over it.
 */
final class GapView extends Region {

  /** Millimetres of the picture for one em. */
  private static final double EM_MM = 4;

  private final Canvas paper = new Canvas();
  private final GapMarker marker = new GapMarker();
  private ValveReading reading;
  private boolean twoTurns;
  private double emPixels = 14;
  private Object drawn = List.of();
  private GapChart chart;

  GapView() {
    getChildren().addAll(paper, marker);
    getStyleClass().add("gap-view");
    setAccessibleRole(AccessibleRole.IMAGE_VIEW);
    setFocusTraversable(true);
    setAccessibleText("Room between valve and piston against the crank angle");
    setMinSize(40, 40);
  }

  void show(ValveReading next, boolean twoTurnsWide, double em) {
    reading = next;
    twoTurns = twoTurnsWide;
    emPixels = em;
    update();
  }

  private double scale() {
    return emPixels / EM_MM;
  }

  @Override
  protected void layoutChildren() {
    update();
  }

  /** What moves with the crank moves; the rest is drawn when it changes. */
  private void update() {
    double width = Math.floor(getWidth());
    double height = Math.floor(getHeight());
    if (reading == null || width < 12 * emPixels || height < 9 * emPixels) {
      return;
    }
    Object inputs =
        List.of(
            reading.now(), reading.before(), reading.beside(), twoTurns, width, height, emPixels);
    if (!inputs.equals(drawn)) {
      drawn = inputs;
      draw(width, height);
    }
    Fit fit = new Fit(0, height, scale());
    marker.show(chart.marker(reading.degrees()), fit, chart.picture().lineMm());
  }

  private void draw(double width, double height) {
    chart =
        GapChart.of(
            new GapScene(
                reading.now(),
                reading.before().map(b -> new GapScene.Before(b, reading.beforeName())),
                reading.beside(),
                twoTurns,
                width / scale(),
                height / scale(),
                EM_MM));
    Picture picture = chart.picture();
    paper.setWidth(width);
    paper.setHeight(height);
    paper.getGraphicsContext2D().clearRect(0, 0, width, height);
    new Painter(paper.getGraphicsContext2D(), new Fit(0, height, scale()), picture.lineMm())
        .paint(picture.shapes());
    setAccessibleText(picture.title() + ". " + picture.description());
  }
}
