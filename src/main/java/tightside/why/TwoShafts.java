package tightside.why;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import tightside.picture.Bounds;
import tightside.picture.Ink;
import tightside.picture.Picture;
import tightside.picture.Shape;
import tightside.reasoning.Forced;

/** The plane of what two camshafts read, with what explanations force on both. */
final class TwoShafts {

  private static final double WIDTH = 150;
  private static final double TALL = 82;
  private static final double MARGIN = 9;
  private static final double CAPTION = -MARGIN - 3;
  private static final int ROUND = 36;
  private static final double DOT = 1.8;

  private final Forced forced;
  private final Range across;
  private final Range up;
  private final Sketch sketch = new Sketch();
  private final Labels labels =
      new Labels(sketch, new Bounds(-MARGIN, -MARGIN + 2, WIDTH + MARGIN, TALL + MARGIN), CAPTION);

  TwoShafts(Forced forced) {
    this.forced = forced;
    across = Range.of(forced, true);
    up = Range.of(forced, false);
  }

  private Vector2D at(double x, double y) {
    return Vector2D.of(WIDTH * across.share(x), TALL * up.share(y));
  }

  private Vector2D at(Forced.Point point) {
    return at(point.x(), point.y());
  }

  Picture drawn() {
    labels.line("", spread(2, Ink.GHOST), Labels.CROSSED / 2);
    spread(1, Ink.ERROR);
    axes();
    Vector2D here = at(forced.read().x(), forced.read().y());
    sketch.words().add(Bounds.around(here, 4, 4));
    List<List<Vector2D>> visible = new ArrayList<>();
    for (Forced.Line line : forced.lines()) {
      visible.add(draw(line));
    }
    sketch.dot(Ink.MARK, here, 1.6);
    labels.place("read", List.of(here), Ink.WARNING);
    for (int i = 0; i < visible.size(); i++) {
      if (!visible.get(i).isEmpty()) {
        labels.place(Told.name(forced.lines().get(i)), visible.get(i), Ink.LABEL);
      }
    }
    double bottom = Math.min(-MARGIN - 6, labels.below() - 2);
    return Told.picture(forced, sketch, new Bounds(-MARGIN, bottom, WIDTH + MARGIN, TALL + MARGIN));
  }

  private void axes() {
    Vector2D nought = at(0, 0);
    Vector2D right = Vector2D.of(WIDTH, nought.getY());
    Vector2D top = Vector2D.of(nought.getX(), TALL);
    axis(Vector2D.of(0, nought.getY()), right);
    axis(Vector2D.of(nought.getX(), 0), top);
    sketch.ticks(
        across.low(),
        across.high(),
        d -> at(d, 0),
        Vector2D.of(0, -1.2),
        Vector2D.of(0, -4.8),
        false);
    sketch.ticks(
        up.low(), up.high(), d -> at(0, d), Vector2D.of(-1.2, 0), Vector2D.of(-5.5, -1.2), false);
    String caption = forced.across() + ", crank degrees (+ advanced)";
    sketch.write(Sketch.text(caption, Vector2D.of(WIDTH, CAPTION), Ink.LABEL, Shape.Align.RIGHT));
    sketch.write(
        Sketch.text(
            forced.up().orElseThrow() + ", crank degrees",
            top.add(Vector2D.of(0, 3)),
            Ink.LABEL,
            nought.getX() > WIDTH / 2 ? Shape.Align.RIGHT : Shape.Align.LEFT));
  }

  private void axis(Vector2D from, Vector2D to) {
    sketch.line(Ink.GROUND, from, to);
    labels.line("", List.of(from, to), Labels.CROSSED);
  }

  /** So many spreads round what was read. */
  private List<Vector2D> spread(double times, Ink ink) {
    Forced.Read read = forced.read();
    List<Vector2D> points =
        IntStream.rangeClosed(0, ROUND)
            .mapToObj(i -> 2 * Math.PI * (i % ROUND) / ROUND)
            .map(
                a ->
                    at(
                        read.x() + times * read.spreadX() * Math.cos(a),
                        read.y() + times * read.spreadY() * Math.sin(a)))
            .toList();
    sketch.path(ink, points, true);
    return points;
  }

  /** Draws what one explanation forces; returns where its name may stand, the best first. */
  private List<Vector2D> draw(Forced.Line line) {
    if (line.points().size() == 1) {
      Vector2D at = at(line.points().get(0));
      sketch.dot(Ink.PIVOT, at, DOT);
      sketch.words().add(Bounds.around(at, 2 * DOT, 2 * DOT));
      return List.of(at);
    }
    List<Vector2D> run = new ArrayList<>();
    List<Vector2D> all = new ArrayList<>();
    for (int i = 0; i + 1 < line.points().size(); i++) {
      Optional<Vector2D[]> inside = clipped(at(line.points().get(i)), at(line.points().get(i + 1)));
      if (inside.isPresent()) {
        Vector2D from = inside.get()[0];
        if (!run.isEmpty() && run.get(run.size() - 1).distance(from) > 1e-6) {
          drawn(line, run);
          run = new ArrayList<>();
        }
        if (run.isEmpty()) {
          run.add(from);
        }
        run.add(inside.get()[1]);
        all.add(from.lerp(inside.get()[1], 0.5));
        all.add(inside.get()[1]);
      }
    }
    if (!run.isEmpty()) {
      drawn(line, run);
    }
    Vector2D nought = at(0, 0);
    all.sort(Comparator.comparingDouble(p -> -p.distance(nought)));
    return all;
  }

  private void drawn(Forced.Line line, List<Vector2D> run) {
    sketch.path(line.probability() >= 0.5 ? Ink.TIGHT : Ink.NO_CHAIN, run, false);
    labels.line(Told.name(line), run, Labels.CROSSED);
  }

  /** The part of a piece that lies in the picture (Liang and Barsky's clipping). */
  private static Optional<Vector2D[]> clipped(Vector2D a, Vector2D b) {
    Vector2D d = a.vectorTo(b);
    double first = 0;
    double last = 1;
    double[][] sides = {
      {-d.getX(), a.getX()},
      {d.getX(), WIDTH - a.getX()},
      {-d.getY(), a.getY()},
      {d.getY(), TALL - a.getY()}
    };
    for (double[] side : sides) {
      if (side[0] == 0) {
        if (side[1] < 0) {
          return Optional.empty();
        }
      } else if (side[0] < 0) {
        first = Math.max(first, side[1] / side[0]);
      } else {
        last = Math.min(last, side[1] / side[0]);
      }
    }
    return last - first < 1e-9
        ? Optional.empty()
        : Optional.of(new Vector2D[] {a.lerp(b, first), a.lerp(b, last)});
  }
}
