package tightside.why;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import tightside.drive.Part;
import tightside.geometry.Curve;
import tightside.picture.Bounds;
import tightside.picture.Ink;
import tightside.picture.Picture;
import tightside.picture.Plane;
import tightside.picture.Shape;
import tightside.picture.Tag;
import tightside.reasoning.Answer;
import tightside.reasoning.Explanation;
import tightside.reasoning.Forced;
import tightside.words.ExplainWords;
import tightside.words.Numbers;

/**
 * The plane of what two camshafts read, or the line of one: every explanation forces the readings
 * onto a line or a point, and there the readings are, with the room that their spread gives them.
 */
public final class WhyPicture {

  private static final double WIDTH = 150;
  private static final double HEIGHT = 110;
  private static final double LINE_HEIGHT = 34;
  private static final double MARGIN = 9;
  private static final double TYPE = 3.6;
  private static final double LINE = 0.3;
  private static final double ROOM = 1.35;
  private static final int ROUND = 36;

  private final Forced forced;
  private final double low;
  private final double high;
  private final double lowUp;
  private final double highUp;
  private final double tall;
  private final List<Shape> shapes = new ArrayList<>();
  private final List<Bounds> words = new ArrayList<>();

  private WhyPicture(Forced forced) {
    this.forced = forced;
    Forced.Read read = forced.read();
    double[] across = range(read.x(), read.spreadX(), true);
    double[] up = range(read.y(), read.spreadY(), false);
    low = across[0];
    high = across[1];
    lowUp = up[0];
    highUp = up[1];
    tall = forced.up().isPresent() ? HEIGHT : LINE_HEIGHT;
  }

  /** Nothing where no camshaft was read by its sensor. */
  public static Optional<Picture> of(Answer answer) {
    return answer.forced().map(f -> new WhyPicture(f).drawn());
  }

  /** From a little beyond nothing to a little beyond what was read, and what is near it. */
  private double[] range(double read, double spread, boolean across) {
    double least = Math.min(0, read - 3 * spread);
    double most = Math.max(0, read + 3 * spread);
    double reach = Math.max(4, most - least) * (ROOM - 1);
    for (Forced.Line line : forced.lines()) {
      if (line.points().size() == 1) {
        Forced.Point point = line.points().get(0);
        double at = across ? point.x() : point.y();
        least = Math.min(least, at);
        most = Math.max(most, at);
      }
    }
    return new double[] {least - reach, most + reach};
  }

  private double x(double degrees) {
    return WIDTH * (degrees - low) / (high - low);
  }

  private double y(double degrees) {
    return forced.up().isEmpty() ? 12 : tall * (degrees - lowUp) / (highUp - lowUp);
  }

  private Vector2D at(Forced.Point point) {
    return Vector2D.of(x(point.x()), y(point.y()));
  }

  private Picture drawn() {
    axes();
    spread(2, Ink.GHOST);
    spread(1, Ink.ERROR);
    Forced.Read read = forced.read();
    Vector2D here = Vector2D.of(x(read.x()), y(read.y()));
    words.add(Bounds.around(here, 4, 4));
    for (Forced.Line line : forced.lines()) {
      if (line.points().size() == 1) {
        words.add(Bounds.around(at(line.points().get(0)), 4, 4));
      }
    }
    label("read", here, Ink.WARNING);
    for (Forced.Line line : forced.lines()) {
      draw(line);
    }
    shapes.add(new Shape.Circle(tag(Ink.MARK), here, 1.6));
    String up = forced.up().map(u -> "; up: " + u).orElse("");
    Bounds all = new Bounds(-MARGIN, -MARGIN - 6, WIDTH + MARGIN, tall + MARGIN);
    return new Picture(
        shapes,
        all,
        LINE,
        "What each explanation forces, and what was read",
        "Across: %s%s, crank degrees, more to the right and up is advanced. %s"
            .formatted(forced.across(), up, told()));
  }

  /** The picture in words, for those who can't see it. */
  private String told() {
    Forced.Read read = forced.read();
    StringBuilder text =
        new StringBuilder("Read: " + pair(read.x(), read.y()) + " crank degrees. ");
    for (Forced.Line line : forced.lines()) {
      Forced.Point near = nearest(line);
      text.append(
          "%s comes as near as %s. "
              .formatted(ExplainWords.brief(line.what()), pair(near.x(), near.y())));
    }
    return text.toString().strip();
  }

  private String pair(double x, double y) {
    return forced.across()
        + " "
        + ExplainWords.signed(x)
        + forced.up().map(u -> ", " + u + " " + ExplainWords.signed(y)).orElse("");
  }

  private Forced.Point nearest(Forced.Line line) {
    Forced.Read read = forced.read();
    Forced.Point best = line.points().get(0);
    for (Forced.Point point : line.points()) {
      if (apart(point, read) < apart(best, read)) {
        best = point;
      }
    }
    return best;
  }

  private static double apart(Forced.Point point, Forced.Read read) {
    return Math.hypot(
        (point.x() - read.x()) / read.spreadX(),
        read.spreadY() > 0 ? (point.y() - read.y()) / read.spreadY() : 0);
  }

  private static Tag tag(Ink ink) {
    return new Tag(ink, Part.whole(), Plane.FRONT);
  }

  private void line(Ink ink, Vector2D from, Vector2D to) {
    shapes.add(new Shape.Path(tag(ink), List.of(new Curve.Line(from, to)), false));
  }

  private void axes() {
    line(Ink.GROUND, Vector2D.of(0, y(0)), Vector2D.of(WIDTH, y(0)));
    ticks(low, high, d -> Vector2D.of(x(d), y(0)), Vector2D.of(0, -1.2), Vector2D.of(0, -4.8));
    text(
        forced.across() + ", crank degrees (+ advanced)",
        Vector2D.of(WIDTH, -MARGIN - 3),
        Ink.LABEL,
        Shape.Align.RIGHT);
    if (forced.up().isPresent()) {
      line(Ink.GROUND, Vector2D.of(x(0), 0), Vector2D.of(x(0), tall));
      ticks(
          lowUp,
          highUp,
          d -> Vector2D.of(x(0), y(d)),
          Vector2D.of(-1.2, 0),
          Vector2D.of(-5.5, -1.2));
      text(
          forced.up().get() + ", crank degrees",
          Vector2D.of(x(0), tall + 3),
          Ink.LABEL,
          x(0) > WIDTH / 2 ? Shape.Align.RIGHT : Shape.Align.LEFT);
    }
  }

  /** Where a number of degrees lies. */
  private interface Place {
    Vector2D of(double degrees);
  }

  private void ticks(double from, double to, Place place, Vector2D tick, Vector2D words) {
    double step = step(to - from);
    for (double d = Math.ceil(from / step) * step; d <= to; d += step) {
      line(Ink.GROUND, place.of(d), place.of(d).add(tick));
      if (Math.abs(d) > step / 2) {
        text(
            Numbers.plain(Math.rint(d * 10) / 10),
            place.of(d).add(words),
            Ink.LABEL,
            Shape.Align.MIDDLE);
      }
    }
  }

  private static double step(double range) {
    for (double step : new double[] {0.5, 1, 2, 5, 10, 20, 50, 100}) {
      if (range / step <= 8) {
        return step;
      }
    }
    return 200;
  }

  /** So many spreads round what was read. */
  private void spread(double times, Ink ink) {
    Forced.Read read = forced.read();
    List<Curve> curves = new ArrayList<>();
    List<Vector2D> points =
        IntStream.rangeClosed(0, ROUND)
            .mapToObj(
                i -> {
                  double at = 2 * Math.PI * (i % ROUND) / ROUND;
                  double up =
                      forced.up().isPresent()
                          ? y(read.y() + times * read.spreadY() * Math.sin(at))
                          : y(0) + 2 * times * Math.sin(at);
                  return Vector2D.of(x(read.x() + times * read.spreadX() * Math.cos(at)), up);
                })
            .toList();
    for (int i = 0; i < ROUND; i++) {
      curves.add(new Curve.Line(points.get(i), points.get(i + 1)));
    }
    shapes.add(new Shape.Path(tag(ink), curves, true));
  }

  private void draw(Forced.Line line) {
    Ink ink = line.probability() >= 0.5 ? Ink.TIGHT : Ink.NO_CHAIN;
    if (line.points().size() == 1) {
      Vector2D at = at(line.points().get(0));
      shapes.add(new Shape.Circle(tag(Ink.PIVOT), at, 1.8));
      label(name(line), at, Ink.LABEL);
      return;
    }
    List<Curve> curves = new ArrayList<>();
    Vector2D end = null;
    for (int i = 0; i + 1 < line.points().size(); i++) {
      Optional<Vector2D[]> inside = clipped(line.points().get(i), line.points().get(i + 1));
      if (inside.isPresent()) {
        if (end != null && end.distance(inside.get()[0]) > 1e-6) {
          flush(ink, curves);
        }
        curves.add(new Curve.Line(inside.get()[0], inside.get()[1]));
        end = inside.get()[1];
      }
    }
    flush(ink, curves);
    labelAlong(line);
  }

  private void flush(Ink ink, List<Curve> curves) {
    if (!curves.isEmpty()) {
      shapes.add(new Shape.Path(tag(ink), curves, false));
      curves.clear();
    }
  }

  /** The part of a piece that lies in the picture (Liang and Barsky's clipping). */
  private Optional<Vector2D[]> clipped(Forced.Point from, Forced.Point to) {
    Vector2D a = Vector2D.of(x(from.x()), y(from.y()));
    Vector2D b = Vector2D.of(x(to.x()), y(to.y()));
    Vector2D d = a.vectorTo(b);
    double first = 0;
    double last = 1;
    double[][] sides = {
      {-d.getX(), a.getX()},
      {d.getX(), WIDTH - a.getX()},
      {-d.getY(), a.getY()},
      {d.getY(), tall - a.getY()}
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
    if (last - first < 1e-9) {
      return Optional.empty();
    }
    return Optional.of(new Vector2D[] {a.add(d.multiply(first)), a.add(d.multiply(last))});
  }

  private void labelAlong(Forced.Line line) {
    List<Vector2D> inside =
        line.points().stream()
            .map(p -> Vector2D.of(x(p.x()), y(p.y())))
            .filter(
                p -> p.getX() > 2 && p.getX() < WIDTH - 2 && p.getY() > 2 && p.getY() < tall - 2)
            .toList();
    if (!inside.isEmpty()) {
      Vector2D first = inside.get(0);
      Vector2D last = inside.get(inside.size() - 1);
      Vector2D origin = Vector2D.of(x(0), y(0));
      label(name(line), first.distance(origin) > last.distance(origin) ? first : last, Ink.LABEL);
    }
  }

  private static String name(Forced.Line line) {
    Explanation what = line.what();
    return ExplainWords.brief(what) + " " + ExplainWords.percent(line.probability());
  }

  /** Words beside a point, where no others stand. */
  private void label(String text, Vector2D at, Ink ink) {
    for (int ring = 1; ring <= 9; ring++) {
      for (int way = 0; way < 4; way++) {
        double side = way % 2 == 0 ? 1 : -1;
        double dy = (way < 2 ? 1 : -1) * (ring - 1) * (TYPE + 0.6) + (way < 2 ? 1.4 : -3.4);
        Shape.Align align = side > 0 ? Shape.Align.LEFT : Shape.Align.RIGHT;
        Shape.Text words =
            new Shape.Text(tag(ink), at.add(Vector2D.of(side * 2.6, dy)), text, TYPE, align);
        if (fits(words.bounds())) {
          this.words.add(words.bounds());
          shapes.add(words);
          return;
        }
      }
    }
  }

  private boolean fits(Bounds bounds) {
    return bounds.left() >= -MARGIN
        && bounds.right() <= WIDTH + MARGIN
        && bounds.bottom() >= -MARGIN + 2
        && bounds.top() <= tall + MARGIN
        && words.stream().noneMatch(bounds::overlaps);
  }

  private void text(String text, Vector2D at, Ink ink, Shape.Align align) {
    Shape.Text words = new Shape.Text(tag(ink), at, text, TYPE, align);
    this.words.add(words.bounds());
    shapes.add(words);
  }
}
