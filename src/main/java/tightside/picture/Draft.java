package tightside.picture;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import tightside.geometry.Bearing;
import tightside.geometry.Curve;
import tightside.geometry.Pose;

/** A picture in the making: the shapes so far, and where words would hide something. */
final class Draft {

  /** A round spot that words keep clear of. */
  record Disc(Vector2D centre, double radiusMm) {}

  private final List<Shape> shapes = new ArrayList<>();
  private final List<Disc> taken = new ArrayList<>();
  private Bounds bounds;
  private int measured;

  List<Shape> shapes() {
    return shapes;
  }

  List<Disc> taken() {
    return taken;
  }

  /** Round all that is drawn so far. */
  Bounds bounds() {
    for (; measured < shapes.size(); measured++) {
      Bounds next = shapes.get(measured).bounds();
      bounds = bounds == null ? next : bounds.holds(next) ? bounds : bounds.with(next);
    }
    return bounds;
  }

  void add(Shape shape) {
    shapes.add(shape);
  }

  void keepClear(Vector2D centre, double radiusMm) {
    taken.add(new Disc(centre, radiusMm));
  }

  void circle(Tag tag, Vector2D centre, double radiusMm) {
    shapes.add(new Shape.Circle(tag, centre, radiusMm));
  }

  /** A shape with an inside. */
  void closed(Tag tag, List<Curve> curves) {
    shapes.add(new Shape.Path(tag, curves, true));
  }

  void closed(Tag tag, List<Curve> own, Pose pose) {
    closed(tag, own.stream().map(curve -> curve.placed(pose)).toList());
  }

  /** One of many shapes of the same form. */
  void placed(Tag tag, Stencil stencil, Pose pose) {
    shapes.add(new Shape.Placed(tag, stencil, pose));
  }

  /** A line from end to end. */
  void open(Tag tag, List<Curve> curves) {
    shapes.add(new Shape.Path(tag, curves, false));
  }

  void open(Tag tag, Curve own, Pose pose) {
    open(tag, List.of(own.placed(pose)));
  }

  void line(Tag tag, Vector2D from, Vector2D to) {
    open(tag, List.of(new Curve.Line(from, to)));
  }

  /** A closed run of straight lines. */
  void polygon(Tag tag, List<Vector2D> corners) {
    List<Curve> sides = new ArrayList<>(corners.size());
    for (int i = 0; i < corners.size(); i++) {
      sides.add(new Curve.Line(corners.get(i), corners.get((i + 1) % corners.size())));
    }
    closed(tag, sides);
  }

  /** A slender triangle with its tip at a point. */
  void arrowhead(Tag tag, Vector2D tip, Bearing pointing, double lengthMm, double widthMm) {
    Pose pose = new Pose(tip, pointing);
    polygon(
        tag,
        List.of(
            tip,
            pose.apply(Vector2D.of(widthMm / 2, -lengthMm)),
            pose.apply(Vector2D.of(-widthMm / 2, -lengthMm))));
  }

  void text(Tag tag, Vector2D at, String words, double sizeMm, Shape.Align align) {
    shapes.add(new Shape.Text(tag, at, words, sizeMm, align));
  }
}
