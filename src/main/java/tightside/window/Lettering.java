package tightside.window;

import java.util.List;
import javafx.scene.Group;
import javafx.scene.paint.Color;
import javafx.scene.text.Font;
import javafx.scene.text.FontWeight;
import javafx.scene.text.Text;
import tightside.picture.Rgb;
import tightside.picture.Shape;
import tightside.picture.Style;
import tightside.picture.Styles;

/** The words of a picture: set once, while all else moves. */
final class Lettering extends Group {

  private List<Shape> words = List.of();
  private Fit fit;

  Lettering() {
    setManaged(false);
    setMouseTransparent(true);
  }

  void show(List<Shape> next, Fit at) {
    if (next == words && at.equals(fit)) {
      return;
    }
    words = next;
    fit = at;
    getChildren().setAll(next.stream().map(shape -> text((Shape.Text) shape)).toList());
  }

  private Text text(Shape.Text text) {
    Style style = Styles.of(text.tag());
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
