package tightside.raster;

import java.util.List;
import tightside.picture.Shape;

/** All that is to be drawn, and how far each shape reaches. */
record Scene(List<Shape> shapes, Brushes brushes, Tracer tracer, Reach[] reaches) {

  /** Chords of an outline stand out of its arc a little, pixels. */
  private static final double OUTSIDE = 1;

  static Scene of(List<Shape> shapes, Brushes brushes, Tracer tracer) {
    Reach[] reaches = new Reach[shapes.size()];
    for (int i = 0; i < reaches.length; i++) {
      Shape shape = shapes.get(i);
      double breadth = brushes.of(shape.tag()).breadth();
      reaches[i] = Reach.of(shape, breadth / 2 + OUTSIDE, tracer);
    }
    return new Scene(shapes, brushes, tracer, reaches);
  }
}
