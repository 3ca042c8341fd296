package tightside.window;

import java.util.List;
import javafx.geometry.VPos;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;
import javafx.scene.shape.StrokeLineCap;
import javafx.scene.shape.StrokeLineJoin;
import javafx.scene.text.Font;
import javafx.scene.text.FontWeight;
import javafx.scene.text.TextAlignment;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import tightside.geometry.Curve;
import tightside.picture.Rgb;
import tightside.picture.Shape;
import tightside.picture.Style;
import tightside.picture.Styles;

/**
 * Draws shapes on a canvas, where nothing moves from frame to frame. Neighbours that look alike are
 * drawn in one stroke of the brush, for every stroke has its price; arcs are drawn as straight
 * lines that stay within a sixth of a pixel.
 */
final class Painter {

  private static final double FLATNESS = 0.15;

  /** Shapes drawn in one stroke: more of them span so much paper that it takes longer again. */
  private static final int TOGETHER = 16;

  /** No line is thinner than this share of its weight, pixels. */
  private static final double FINEST = 0.62;

  private final GraphicsContext g;
  private final Fit fit;
  private final double line;

  Painter(GraphicsContext g, Fit fit, double lineMm) {
    this.g = g;
    this.fit = fit;
    line = Math.max(FINEST, lineMm * fit.scale());
    g.setLineJoin(StrokeLineJoin.BEVEL);
    g.setLineCap(StrokeLineCap.BUTT);
  }

  void paint(List<Shape> shapes) {
    int i = 0;
    while (i < shapes.size()) {
      Style style = Styles.of(shapes.get(i).tag());
      if (shapes.get(i) instanceof Shape.Text text) {
        text(text, style);
        i++;
      } else {
        i = run(shapes, i, style);
      }
    }
  }

  /** Draws shapes that look alike together, and says where the next ones begin. */
  private int run(List<Shape> shapes, int from, Style style) {
    int i = from;
    g.beginPath();
    while (i < shapes.size()
        && i < from + TOGETHER
        && !(shapes.get(i) instanceof Shape.Text)
        && Styles.of(shapes.get(i).tag()) == style) {
      trace(shapes.get(i));
      i++;
    }
    if (style.fill().isPresent()) {
      g.setFill(color(style.fill().get(), style.opacity()));
      g.fill();
    }
    if (style.line().isPresent()) {
      g.setStroke(color(style.line().get(), 1));
      g.setLineWidth(line * style.weight());
      double[] dash = style.dash().stream().mapToDouble(d -> d * line).toArray();
      g.setLineDashes(dash);
      g.stroke();
    }
    return i;
  }

  private static Color color(Rgb rgb, double opacity) {
    return Color.rgb(rgb.red(), rgb.green(), rgb.blue(), opacity);
  }

  private void trace(Shape shape) {
    if (shape instanceof Shape.Circle circle) {
      trace(circle);
      return;
    }
    Shape.Run run = (Shape.Run) shape;
    List<Curve> curves = run.curves();
    Vector2D start = curves.get(0).from();
    g.moveTo(fit.x(start), fit.y(start));
    for (Curve curve : curves) {
      if (curve instanceof Curve.Arc arc) {
        arc(arc.centre(), arc.radiusMm(), arc.start().degrees(), arc.sweepDegrees());
      } else {
        g.lineTo(fit.x(curve.to()), fit.y(curve.to()));
      }
    }
    if (run.closed()) {
      g.closePath();
    }
  }

  private void trace(Shape.Circle circle) {
    double radius = circle.radiusMm() * fit.scale();
    g.moveTo(fit.x(circle.centre()), fit.y(circle.centre()) - radius);
    arc(circle.centre(), circle.radiusMm(), 0, 360);
    g.closePath();
  }

  private void arc(Vector2D centre, double radiusMm, double start, double sweep) {
    double radius = radiusMm * fit.scale();
    int steps = steps(radius, Math.toRadians(Math.abs(sweep)));
    double x = fit.x(centre);
    double y = fit.y(centre);
    for (int k = 1; k <= steps; k++) {
      double at = Math.toRadians(start + sweep * k / steps);
      g.lineTo(x + radius * Math.sin(at), y - radius * Math.cos(at));
    }
  }

  /** Chords that leave their arc by no more than the flatness. */
  private static int steps(double radius, double sweepRadians) {
    double half = Math.acos(Math.max(0, 1 - FLATNESS / Math.max(radius, FLATNESS)));
    return Math.max(1, (int) Math.ceil(sweepRadians / (2 * half)));
  }

  private void text(Shape.Text text, Style style) {
    g.setFont(
        Font.font(
            "SansSerif",
            style.bold() ? FontWeight.BOLD : FontWeight.NORMAL,
            text.sizeMm() * fit.scale()));
    g.setTextBaseline(VPos.BASELINE);
    g.setTextAlign(
        switch (text.align()) {
          case LEFT -> TextAlignment.LEFT;
          case MIDDLE -> TextAlignment.CENTER;
          case RIGHT -> TextAlignment.RIGHT;
        });
    g.setFill(color(style.fill().orElse(Rgb.of(0)), 1));
    g.fillText(text.words(), fit.x(text.at()), fit.y(text.at()));
  }
}
