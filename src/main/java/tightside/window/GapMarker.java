package tightside.window;

import java.util.List;
import javafx.scene.Group;
import javafx.scene.paint.Color;
import javafx.scene.shape.Circle;
import javafx.scene.shape.Line;
import javafx.scene.shape.Polygon;
import tightside.geometry.Curve;
import tightside.picture.Rgb;
import tightside.picture.Shape;
import tightside.picture.Style;
import tightside.picture.Styles;

/**
 * What stands for the crank in a chart: a line and a dot, or an arrowhead. Nodes that move cost a
 * frame nothing but the strip that they leave and the one that they come to.
 */
final class GapMarker extends Group {

  private final Line line = new Line();
  private final Circle dot = new Circle();
  private final Polygon head = new Polygon();

  GapMarker() {
    getChildren().addAll(line, dot, head);
    setManaged(false);
    setMouseTransparent(true);
  }

  /**
   * @param shapes at most one line, one circle and one closed outline
   * @param lineMm breadth of a plain line
   */
  void show(List<Shape> shapes, Fit fit, double lineMm) {
    getChildren().forEach(n -> n.setVisible(false));
    for (Shape shape : shapes) {
      Style style = Styles.of(shape.tag());
      if (shape instanceof Shape.Circle circle) {
        dot.setCenterX(fit.x(circle.centre()));
        dot.setCenterY(fit.y(circle.centre()));
        dot.setRadius(circle.radiusMm() * fit.scale());
        paint(dot, style, lineMm * fit.scale());
      } else if (shape instanceof Shape.Run run && run.closed()) {
        head.getPoints().clear();
        run.curves().forEach(c -> head.getPoints().addAll(fit.x(c.from()), fit.y(c.from())));
        paint(head, style, lineMm * fit.scale());
      } else if (shape instanceof Shape.Run run) {
        run(run.curves().get(0), fit);
        paint(line, style, lineMm * fit.scale());
      }
    }
  }

  private void run(Curve curve, Fit fit) {
    line.setStartX(fit.x(curve.from()));
    line.setStartY(fit.y(curve.from()));
    line.setEndX(fit.x(curve.to()));
    line.setEndY(fit.y(curve.to()));
  }

  private static void paint(javafx.scene.shape.Shape node, Style style, double linePixels) {
    node.setFill(style.fill().map(GapMarker::color).orElse(Color.TRANSPARENT));
    node.setStroke(style.line().map(GapMarker::color).orElse(null));
    node.setStrokeWidth(linePixels * style.weight());
    node.setVisible(true);
  }

  private static Color color(Rgb rgb) {
    return Color.rgb(rgb.red(), rgb.green(), rgb.blue());
  }
}
