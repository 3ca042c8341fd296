package tightside.window;

import java.util.List;
import javafx.scene.Group;
import javafx.scene.Node;
import javafx.scene.paint.Color;
import javafx.scene.shape.Circle;
import javafx.scene.shape.Line;
import javafx.scene.text.Font;
import javafx.scene.text.FontWeight;
import javafx.scene.text.Text;
import tightside.geometry.Curve;
import tightside.picture.Rgb;
import tightside.picture.Shape;
import tightside.picture.Style;
import tightside.picture.Styles;

/** The words of a picture and the lines that lead from them: set once, while all else moves. */
final class Lettering extends Group {

  private List<Shape> words = List.of();
  private Fit fit;

  Lettering() {
    setManaged(false);
    setMouseTransparent(true);
  }

  /**
   * @param linePixels breadth of a plain line
   */
  void show(List<Shape> next, Fit at, double linePixels) {
    if (next == words && at.equals(fit)) {
      return;
    }
    words = next;
    fit = at;
    getChildren().setAll(next.stream().map(shape -> node(shape, linePixels)).toList());
  }

  private Node node(Shape shape, double linePixels) {
    Style style = Styles.of(shape.tag());
    if (shape instanceof Shape.Text text) {
      return text(text, style);
    }
    if (shape instanceof Shape.Circle circle) {
      Color fill = color(style.fill().orElse(Rgb.of(0)));
      double radius = circle.radiusMm() * fit.scale() + linePixels * style.weight() / 2;
      return new Circle(fit.x(circle.centre()), fit.y(circle.centre()), radius, fill);
    }
    Curve curve = ((Shape.Path) shape).curves().get(0);
    Line line =
        new Line(fit.x(curve.from()), fit.y(curve.from()), fit.x(curve.to()), fit.y(curve.to()));
    line.setStroke(color(style.line().orElse(Rgb.of(0))));
    line.setStrokeWidth(linePixels * style.weight());
    return line;
  }

  private Text text(Shape.Text text, Style style) {
    Text node = new Text(text.words());
    node.setFont(
        Font.font(
            "SansSerif",
            style.bold() ? FontWeight.BOLD : FontWeight.NORMAL,
            text.sizeMm() * fit.scale()));
    node.setFill(color(style.fill().orElse(Rgb.of(0))));
    double width = node.getLayoutBounds().getWidth();
    double before =
        switch (text.align()) {
          case LEFT -> 0;
          case MIDDLE -> width / 2;
          case RIGHT -> width;
        };
    node.setX(fit.x(text.at()) - before);
    node.setY(fit.y(text.at()));
    return node;
  }

  private static Color color(Rgb rgb) {
    return Color.rgb(rgb.red(), rgb.green(), rgb.blue());
  }
}
