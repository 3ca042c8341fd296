package tightside.why;

import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import tightside.picture.Bounds;
import tightside.picture.Ink;
import tightside.picture.Picture;
import tightside.picture.Shape;
import tightside.reasoning.Forced;

/** What explanations force on the reading of one camshaft, a row for each. */
final class OneShaft {

  private static final double WIDTH = 110;
  private static final double ROW = 7.5;
  private static final double MARGIN = 9;

  private final Forced forced;
  private final Range range;
  private final double tall;
  private final Sketch sketch = new Sketch();

  OneShaft(Forced forced) {
    this.forced = forced;
    range = Range.of(forced, true);
    tall = ROW * (forced.lines().size() + 0.5);
  }

  private double x(double degrees) {
    return WIDTH * range.share(degrees);
  }

  Picture drawn() {
    Forced.Read read = forced.read();
    band(2 * read.spreadX(), Ink.GHOST);
    band(read.spreadX(), Ink.ERROR);
    sketch.line(Ink.GROUND, Vector2D.of(0, 0), Vector2D.of(WIDTH, 0));
    sketch.ticks(
        range.low(),
        range.high(),
        d -> Vector2D.of(x(d), 0),
        Vector2D.of(0, -1.2),
        Vector2D.of(0, -4.8),
        true);
    double left = 0;
    for (int i = 0; i < forced.lines().size(); i++) {
      left = Math.min(left, row(forced.lines().get(i), tall - ROW * (i + 0.75)));
    }
    Vector2D here = Vector2D.of(x(read.x()), 0);
    sketch.dot(Ink.MARK, here, 1.6);
    sketch.write(
        Sketch.text("read", here.add(Vector2D.of(0, tall + 1.5)), Ink.WARNING, Shape.Align.MIDDLE));
    String axis = forced.across() + ", crank degrees (+ advanced)";
    sketch.write(Sketch.text(axis, Vector2D.of(WIDTH, -11), Ink.LABEL, Shape.Align.RIGHT));
    Bounds all = new Bounds(left - 2, -14, WIDTH + MARGIN, tall + 7);
    return Told.picture(forced, sketch, all);
  }

  private void band(double half, Ink ink) {
    double read = forced.read().x();
    double from = Math.max(0, x(read - half));
    double to = Math.min(WIDTH, x(read + half));
    sketch.path(
        ink,
        List.of(
            Vector2D.of(from, 0),
            Vector2D.of(to, 0),
            Vector2D.of(to, tall),
            Vector2D.of(from, tall),
            Vector2D.of(from, 0)),
        true);
  }

  /** Draws one row; returns how far left its name goes. */
  private double row(Forced.Line line, double y) {
    double least = line.points().stream().mapToDouble(Forced.Point::x).min().orElse(0);
    double most = line.points().stream().mapToDouble(Forced.Point::x).max().orElse(0);
    if (line.points().size() > 1) {
      double from = Math.max(0, x(least));
      double to = Math.min(WIDTH, x(most));
      Ink ink = line.probability() >= 0.5 ? Ink.TIGHT : Ink.NO_CHAIN;
      sketch.line(ink, Vector2D.of(from, y), Vector2D.of(Math.max(to, from + 0.1), y));
    } else {
      sketch.dot(Ink.PIVOT, Vector2D.of(x(least), y), 1.8);
    }
    Vector2D at = Vector2D.of(-3, y - 0.3 * Sketch.TYPE);
    Shape.Text name = Sketch.text(Told.name(line), at, Ink.LABEL, Shape.Align.RIGHT);
    sketch.write(name);
    return name.bounds().left();
  }
}
