package tightside.picture;

import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import tightside.geometry.Curve;

/**
 * Shapes brought to another place and size.
 *
 * @param scale by which they grow
 * @param at where their 0, 0 goes
 */
record Moved(double scale, Vector2D at) {

  /** Into a rectangle of the same proportions, or in the middle of one of others. */
  static Moved into(Bounds from, Bounds to) {
    double scale = Math.min(to.width() / from.width(), to.height() / from.height());
    return new Moved(scale, to.centre().subtract(from.centre().multiply(scale)));
  }

  List<Shape> all(List<Shape> shapes) {
    return shapes.stream().map(this::one).toList();
  }

  private Shape one(Shape shape) {
    if (shape instanceof Shape.Circle circle) {
      return new Shape.Circle(circle.tag(), point(circle.centre()), scale * circle.radiusMm());
    }
    if (shape instanceof Shape.Text text) {
      return new Shape.Text(
          text.tag(), point(text.at()), text.words(), scale * text.sizeMm(), text.align());
    }
    Shape.Run run = (Shape.Run) shape;
    return new Shape.Path(run.tag(), run.curves().stream().map(this::curve).toList(), run.closed());
  }

  private Curve curve(Curve curve) {
    return curve instanceof Curve.Arc arc
        ? new Curve.Arc(
            point(arc.centre()), scale * arc.radiusMm(), arc.start(), arc.sweepDegrees())
        : new Curve.Line(point(curve.from()), point(curve.to()));
  }

  private Vector2D point(Vector2D own) {
    return at.add(own.multiply(scale));
  }
}
