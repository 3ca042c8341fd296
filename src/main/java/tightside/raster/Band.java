package tightside.raster;

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

  void paint(Rgb paper, Scene scene) {
    surface.clear(rgb(paper));
    for (int i = 0; i < scene.reaches().length; i++) {
      Reach reach = scene.reaches()[i];
      if (reach.meets(surface.from(), surface.end())) {
        Shape shape = scene.shapes().get(i);
        paint(shape, reach, scene.brushes().of(shape.tag()), scene.tracer());
      }
    }
  }

  private void paint(Shape shape, Reach reach, Brushes.Brush brush, Tracer tracer) {
    if (shape instanceof Shape.Circle circle) {
      paint(circle, reach, brush, tracer);
      return;
    }
    if (coverage.open(reach)) {
      points.clear();
      tracer.trace((Shape.Path) shape, points);
      paint(((Shape.Path) shape).closed(), brush);
    }
  }

  private void paint(Shape.Circle circle, Reach reach, Brushes.Brush brush, Tracer tracer) {
    if (brush.rimmed()) {
      if (stamps.stamp(circle, brush.breadth(), rimmed(brush.style()), tracer)) {
        return;
      }
      if (coverage.open(reach)) {
        trace(circle, brush.breadth() / 2, tracer);
        coverage.add(points);
        trace(circle, -brush.breadth() / 2, tracer);
        coverage.addWithin(points);
        coverage.paint(rimmed(brush.style()));
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
    if (brush.rimmed() && points.count > 2) {
      if (closed) {
        pen.rim(points, brush.breadth());
      } else {
        pen.openRim(points, brush.breadth());
      }
      coverage.paint(rimmed(style));
      return;
    }
    if (style.fill().isPresent()) {
      coverage.add(points);
      coverage.paint(rgb(style.fill().get()), style.opacity());
    }
    if (style.line().isPresent()) {
      line(closed, brush);
      coverage.paint(rgb(style.line().get()), 1);
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

  private static Surface.Rimmed rimmed(Style style) {
    return new Surface.Rimmed(
        rgb(style.line().orElseThrow()),
        rgb(style.fill().orElseThrow()),
        (int) Math.round(256 * style.opacity()));
  }

  private static int rgb(Rgb colour) {
    return colour.red() << 16 | colour.green() << 8 | colour.blue();
  }
}
