package tightside.raster;

import java.util.List;
import tightside.picture.Shape;
import tightside.picture.Stencil;

/**
 * All that is to be drawn, how far each shape reaches, and the cut of each that has one.
 *
 * @param cuts by shape, null for those that are drawn one by one
 * @param store where the cuts come from
 */
record Scene(
    List<Shape> shapes, Brushes brushes, Tracer tracer, Reach[] reaches, Cut[] cuts, Cuts store) {

  /** Chords of an outline stand out of its arc a little, pixels. */
  private static final double OUTSIDE = 1;

  static Scene of(List<Shape> shapes, Brushes brushes, Tracer tracer, Cuts store) {
    store.begin(tracer.scale());
    Reach[] reaches = new Reach[shapes.size()];
    Cut[] cuts = new Cut[shapes.size()];
    Stencil before = null;
    Cut cut = null;
    Brushes.Brush brushBefore = null;
    for (int i = 0; i < reaches.length; i++) {
      Shape shape = shapes.get(i);
      Brushes.Brush brush = brushes.of(shape.tag());
      if (shape instanceof Shape.Placed placed && brush.rimmed().isPresent()) {
        if (placed.stencil() != before || brush != brushBefore) {
          before = placed.stencil();
          brushBefore = brush;
          cut = store.of(before, brush);
        }
        cuts[i] = cut;
        double x = tracer.x(placed.pose().at());
        double y = tracer.y(placed.pose().at());
        reaches[i] = Reach.about(x, y, cut.reach() + OUTSIDE);
      } else {
        reaches[i] = Reach.of(shape, brush.breadth() / 2 + OUTSIDE, tracer);
      }
    }
    return new Scene(shapes, brushes, tracer, reaches, cuts, store);
  }
}
