package tightside.raster;

import tightside.geometry.Pose;
import tightside.picture.Rgb;
import tightside.picture.Shape;
import tightside.picture.Style;

/** Some rows of the pixels, drawn by one thread: nothing here is shared but pixels of its own. */
final class Band {

  private final Surface surface;
  private final Coverage coverage;
  private final Stamps stamps;
  private final Pen pen;
  private final Points points = new Points();

  Band(Surface surface) {
    this.surface = surface;
    coverage = new Coverage(surface);
    stamps = new Stamps(surface);
    pen = new Pen(coverage);
  }

  /** Where it has drawn. */
  Inked inked() {
    return surface.inked();
  }

  void paint(Rgb paper, Scene scene) {
    surface.clear(Surface.rgb(paper));
    surface.inked().clear();
    for (int i = 0; i < scene.reaches().length; i++) {
      Reach reach = scene.reaches()[i];
      if (reach.meets(surface.from(), surface.end())) {
        Shape shape = scene.shapes().get(i);
        Brushes.Brush brush = scene.brushes().of(shape.tag());
        Cut cut = scene.cuts()[i];
        if (cut != null) {
          paint((Shape.Placed) shape, cut, reach, scene);
        } else {
          paint(shape, reach, brush, scene.tracer());
        }
      }
    }
  }

  private void paint(Shape.Placed placed, Cut cut, Reach reach, Scene scene) {
    Pose pose = placed.pose();
    if (cut.stamped() && stamps.stamp(placed, cut, scene.tracer(), scene.store())) {
      return;
    }
    if (coverage.open(reach)) {
      double x = scene.tracer().x(pose.at());
      double y = scene.tracer().y(pose.at());
      cut.cover(x, y, pose.up().degrees(), points, coverage);
      coverage.paint(cut.colours());
    }
  }

  private void paint(Shape shape, Reach reach, Brushes.Brush brush, Tracer tracer) {
    if (shape instanceof Shape.Circle circle) {
      paint(circle, reach, brush, tracer);
      return;
    }
    if (coverage.open(reach)) {
      points.clear();
      tracer.trace((Shape.Run) shape, points);
      paint(((Shape.Run) shape).closed(), brush);
    }
  }

  private void paint(Shape.Circle circle, Reach reach, Brushes.Brush brush, Tracer tracer) {
    if (brush.rimmed().isPresent()) {
      Surface.Rimmed colours = brush.rimmed().get();
      if (stamps.stamp(circle, brush.breadth(), colours, tracer)) {
        return;
      }
      if (coverage.open(reach)) {
        trace(circle, brush.breadth() / 2, tracer);
        coverage.add(points);
        trace(circle, -brush.breadth() / 2, tracer);
        coverage.addWithin(points);
        coverage.paint(colours);
      }
    } else if (coverage.open(reach)) {
      trace(circle, 0, tracer);
      paint(true, brush);
    }
  }

  private void trace(Shape.Circle circle, double wider, Tracer tracer) {
    points.clear();
    tracer.trace(circle, wider, points);
  }

  /** Paints what the points run round. */
  private void paint(boolean closed, Brushes.Brush brush) {
    Style style = brush.style();
    if (brush.rimmed().isPresent() && points.count > 2) {
      pen.rim(points, closed, brush.breadth());
      coverage.paint(brush.rimmed().get());
      return;
    }
    if (style.fill().isPresent()) {
      coverage.add(points);
      coverage.paint(Surface.rgb(style.fill().get()), style.opacity());
    }
    if (style.line().isPresent()) {
      line(closed, brush);
      coverage.paint(Surface.rgb(style.line().get()), 1);
    }
  }

  private void line(boolean closed, Brushes.Brush brush) {
    if (brush.dash().length > 0) {
      pen.dashed(points, closed, brush.breadth(), brush.dash());
    } else if (closed) {
      pen.round(points, brush.breadth());
    } else {
      pen.along(points, brush.breadth());
    }
  }
}
