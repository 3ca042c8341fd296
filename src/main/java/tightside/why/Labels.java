package tightside.why;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import tightside.picture.Bounds;
import tightside.picture.Ink;
import tightside.picture.Shape;

/**
 * Puts names beside what they name: never over other words or dots, over a line only where nothing
 * else is left, and where there is no room at all, below the picture.
 */
final class Labels {

  private static final double GAP = 2.4;
  private static final double ROW = 4.6;
  private static final int RINGS = 9;
  private static final int WAYS = 8;
  private static final double CLEAR = 0.5;
  private static final double CLOSE = 0.8;
  private static final double FAR = 6;

  /** What it costs to stand on a line, beside one ring further out. */
  static final double CROSSED = 9;

  /** What it costs to stand nearer to another name's line. */
  private static final double MISTAKEN = 5;

  private final Sketch sketch;
  private final Bounds room;
  private final List<Line> lines = new ArrayList<>();
  private double below;

  /**
   * @param room in which names may stand
   * @param below where those begin that find no room
   */
  Labels(Sketch sketch, Bounds room, double below) {
    this.sketch = sketch;
    this.room = room;
    this.below = below;
  }

  /**
   * A line that words had better not stand on.
   *
   * @param of what it is named by; empty for a line without a name
   * @param points close to each other
   */
  private record Line(String of, List<Vector2D> points, double cost) {

    double distance(Bounds box) {
      return points.stream().mapToDouble(p -> distance(box, p)).min().orElseThrow();
    }

    private static double distance(Bounds box, Vector2D p) {
      double x = Math.max(0, Math.max(box.left() - p.getX(), p.getX() - box.right()));
      double y = Math.max(0, Math.max(box.bottom() - p.getY(), p.getY() - box.top()));
      return Math.hypot(x, y);
    }
  }

  /**
   * Words had better not stand on this line.
   *
   * @param of the name that it is to have; empty for none
   */
  void line(String of, List<Vector2D> points, double cost) {
    List<Vector2D> close = new ArrayList<>();
    for (int i = 0; i + 1 < points.size(); i++) {
      int steps = (int) Math.ceil(points.get(i).distance(points.get(i + 1)) / CLOSE);
      for (int k = 0; k <= steps; k++) {
        close.add(points.get(i).lerp(points.get(i + 1), steps == 0 ? 0 : k / (double) steps));
      }
    }
    lines.add(new Line(of, close, cost));
  }

  /** How far down the picture goes. */
  double below() {
    return below;
  }

  /** Writes a name beside one of several points; the first is the best. */
  void place(String words, List<Vector2D> points, Ink ink) {
    Shape.Text best = null;
    Vector2D named = points.get(0);
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < points.size(); i++) {
      for (int ring = 0; ring < RINGS; ring++) {
        for (int way = 0; way < WAYS; way++) {
          Shape.Text text = at(words, points.get(i), ring, way, ink);
          double cost = ring + 0.4 * i + 0.1 * way;
          if (cost < least && free(text.bounds())) {
            cost += onLines(words, text.bounds());
            if (cost < least) {
              least = cost;
              best = text;
              named = points.get(i);
            }
          }
        }
      }
    }
    if (best == null) {
      below -= ROW;
      best = Sketch.text(words, Vector2D.of(room.left(), below), ink, Shape.Align.LEFT);
    }
    lead(named, best.bounds());
    sketch.write(best);
  }

  /** A thin line from what is named to a name that stands far off. */
  private void lead(Vector2D named, Bounds box) {
    Vector2D end =
        Vector2D.of(
            Math.max(box.left(), Math.min(box.right(), named.getX())),
            Math.max(box.bottom(), Math.min(box.top(), named.getY())));
    double far = named.distance(end);
    if (far > FAR) {
      sketch.line(Ink.LEADER, named.lerp(end, GAP / far), named.lerp(end, 1 - CLEAR / far));
    }
  }

  private static Shape.Text at(String words, Vector2D point, int ring, int way, Ink ink) {
    double angle = 2 * Math.PI * (way + 0.5) / WAYS;
    double reach = GAP + ring * ROW * 0.7;
    double x = reach * Math.cos(angle);
    double y = reach * Math.sin(angle) - 0.3 * Sketch.TYPE;
    Shape.Align align = x > 0 ? Shape.Align.LEFT : Shape.Align.RIGHT;
    return Sketch.text(words, point.add(Vector2D.of(x, y)), ink, align);
  }

  private boolean free(Bounds bounds) {
    Bounds wide = bounds.grown(CLEAR);
    return room.holds(bounds) && sketch.words().stream().noneMatch(wide::overlaps);
  }

  private double onLines(String words, Bounds box) {
    double cost = 0;
    double own = Double.POSITIVE_INFINITY;
    double others = Double.POSITIVE_INFINITY;
    for (Line line : lines) {
      double distance = line.distance(box);
      cost += distance < CLEAR ? line.cost() : 0;
      if (line.of().equals(words)) {
        own = Math.min(own, distance);
      } else if (!line.of().isEmpty()) {
        others = Math.min(others, distance);
      }
    }
    return cost + (Double.isFinite(own) && others < own - CLOSE ? MISTAKEN : 0);
  }
}
