package tightside.why;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import tightside.drive.Part;
import tightside.geometry.Curve;
import tightside.picture.Bounds;
import tightside.picture.Ink;
import tightside.picture.Plane;
import tightside.picture.Shape;
import tightside.picture.Tag;
import tightside.words.Numbers;

/** Shapes of a picture as they come, and where its words stand. */
final class Sketch {

  /** Size of the type, mm of a picture that is 150 mm wide. */
  static final double TYPE = 3.6;

  private static final double[] STEPS = {0.5, 1, 2, 5, 10, 20, 50, 100};
  private static final int MOST_TICKS = 8;

  private final List<Shape> shapes = new ArrayList<>();
  private final List<Bounds> words = new ArrayList<>();

  List<Shape> shapes() {
    return shapes;
  }

  /** Where words stand, and what no word may hide. */
  List<Bounds> words() {
    return words;
  }

  static Tag tag(Ink ink) {
    return new Tag(ink, Part.whole(), Plane.FRONT);
  }

  void line(Ink ink, Vector2D from, Vector2D to) {
    shapes.add(new Shape.Path(tag(ink), List.of(new Curve.Line(from, to)), false));
  }

  void path(Ink ink, List<Vector2D> points, boolean closed) {
    List<Curve> curves = new ArrayList<>();
    for (int i = 0; i + 1 < points.size(); i++) {
      curves.add(new Curve.Line(points.get(i), points.get(i + 1)));
    }
    shapes.add(new Shape.Path(tag(ink), curves, closed));
  }

  void dot(Ink ink, Vector2D at, double radius) {
    shapes.add(new Shape.Circle(tag(ink), at, radius));
  }

  static Shape.Text text(String text, Vector2D at, Ink ink, Shape.Align align) {
    return new Shape.Text(tag(ink), at, text, TYPE, align);
  }

  void write(Shape.Text text) {
    words.add(text.bounds());
    shapes.add(text);
  }

  /** Where a number of degrees lies. */
  interface Place {
    Vector2D of(double degrees);
  }

  /**
   * Ticks with numbers along an axis.
   *
   * @param nought whether 0 has its number
   */
  void ticks(double from, double to, Place place, Vector2D tick, Vector2D number, boolean nought) {
    double step = step(to - from);
    for (double d = Math.ceil(from / step) * step; d <= to; d += step) {
      line(Ink.GROUND, place.of(d), place.of(d).add(tick));
      if (nought || Math.abs(d) > step / 2) {
        String shown = Numbers.plain(Math.rint(d * 10) / 10);
        write(text(shown, place.of(d).add(number), Ink.LABEL, Shape.Align.MIDDLE));
      }
    }
  }

  private static double step(double range) {
    for (double step : STEPS) {
      if (range / step <= MOST_TICKS) {
        return step;
      }
    }
    return 2 * STEPS[STEPS.length - 1];
  }
}
