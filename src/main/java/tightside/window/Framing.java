package tightside.window;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;
import tightside.picture.Bounds;
import tightside.picture.Shape;
import tightside.session.Snapshot;

/**
 * Finds frames for a drive, and remembers them: the room is shared with what cards show large, and
 * comes back when they are turned from.
 */
final class Framing {

  /** Size of the words in the picture at 100 %, pixels. */
  static final double TEXT = 12.5;

  /** The drive is drawn no smaller than this share of its size without words. */
  private static final double LEAST_DRIVE = 0.66;

  /** Words smaller than this are of no use: the drive gives way instead, pixels. */
  private static final double LEGIBLE = 9;

  /** As large as the drive lets them be to begin with; then smaller. */
  private static final double LARGEST_SCALE = 2.5;

  /** Words are taken to be as large as wanted if they are no larger than by this. */
  private static final double NEAR = 1.03;

  private final List<Frame> frames = new ArrayList<>();

  /**
   * @param shapes the picture with words of a scale, at 0 with none
   * @param wordless whether there are no words at all
   */
  Frame of(
      Snapshot now,
      double width,
      double height,
      boolean wordless,
      DoubleFunction<List<Shape>> shapes) {
    Frame frame =
        frames.stream()
            .filter(f -> f.holds(now, width, height))
            .findFirst()
            .orElseGet(() -> found(now, width, height, wordless, shapes));
    keep(frame);
    return frame;
  }

  void keep(Frame newest) {
    frames.removeIf(f -> f.drive() != newest.drive() || f.like(newest));
    frames.add(newest);
  }

  /**
   * Finds the size of the words: as large as all other text, or smaller where they would leave the
   * drive too little room.
   */
  private static Frame found(
      Snapshot now,
      double width,
      double height,
      boolean wordless,
      DoubleFunction<List<Shape>> shapes) {
    int percent = now.look().textPercent();
    Bounds drive = bounds(shapes.apply(0));
    if (wordless) {
      return new Frame(now.drive(), width, height, percent, drive, 1);
    }
    double bare = Fit.of(drive, width, height).scale();
    double wanted = TEXT * percent / 100;
    double scale = LARGEST_SCALE;
    Bounds seen = drive;
    for (int i = 0; i < 14; i++) {
      List<Shape> with = shapes.apply(scale);
      seen = Frame.about(drive.centre().getX(), bounds(with));
      double fits = Fit.of(seen, width, height).scale();
      double em = emMm(with) * fits;
      boolean roomy = fits >= LEAST_DRIVE * bare || em <= LEGIBLE;
      if (em <= NEAR * wanted && roomy) {
        break;
      }
      scale *= em > wanted ? Math.max(0.5, wanted / em) : 0.87;
    }
    return new Frame(now.drive(), width, height, percent, seen, scale);
  }

  /** Size of the largest words, mm. */
  static double emMm(List<Shape> shapes) {
    return shapes.stream()
        .filter(Shape.Text.class::isInstance)
        .mapToDouble(s -> ((Shape.Text) s).sizeMm())
        .max()
        .orElse(1);
  }

  /** Round all shapes, with a margin. */
  static Bounds bounds(List<Shape> shapes) {
    Bounds all = shapes.get(0).bounds();
    for (Shape shape : shapes) {
      Bounds next = shape.bounds();
      all = all.holds(next) ? all : all.with(next);
    }
    return all.grown(0.012 * Math.max(all.width(), all.height()));
  }
}
