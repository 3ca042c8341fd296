package tightside.raster;

import java.util.List;
import tightside.picture.Rgb;
import tightside.picture.Shape;
import tightside.picture.Style;

/** Some rows of the pixels, drawn by one thread: nothing here is shared but pixels of its own. */
final class Band {

  private final Surface surface;
  private final Coverage coverage;
  private final Pen pen;
  private final Points points = new Points();

  Band(Surface surface) {
    this.surface = surface;
    coverage = new Coverage(surface);
    pen = new Pen(coverage);
  }

  void paint(Rgb paper, List<Shape> shapes, Brushes brushes, Tracer tracer) {
    surface.clear(rgb(paper));
    for (Shape shape : shapes) {
      if (!(shape instanceof Shape.Text)) {
        Brushes.Brush brush = brushes.of(shape.tag());
        if (tracer.reaches(shape, surface.from(), surface.end(), brush.breadth())) {
          paint(shape, brush, tracer);
        }
      }
    }
  }

  private void paint(Shape shape, Brushes.Brush brush, Tracer tracer) {
    Style style = brush.style();
    points.clear();
    if (shape instanceof Shape.Circle circle) {
      tracer.trace(circle, 0, 1, points);
    } else {
      tracer.trace((Shape.Path) shape, points);
    }
    if (!coverage.open(points, brush.breadth() + 1)) {
      return;
    }
    if (style.fill().isPresent()) {
      coverage.add(points);
      coverage.paint(rgb(style.fill().get()), style.opacity());
    }
    if (style.line().isPresent()) {
      if (shape instanceof Shape.Circle circle && brush.dash().length == 0) {
        ring(circle, brush.breadth() / 2, tracer);
      } else {
        line(!(shape instanceof Shape.Path path) || path.closed(), brush);
      }
      coverage.paint(rgb(style.line().get()), 1);
    }
  }

  private void ring(Shape.Circle circle, double half, Tracer tracer) {
    points.clear();
    tracer.trace(circle, half, 1, points);
    coverage.add(points);
    points.clear();
    tracer.trace(circle, -half, -1, points);
    coverage.add(points);
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

  private static int rgb(Rgb colour) {
    return colour.red() << 16 | colour.green() << 8 | colour.blue();
  }
}
