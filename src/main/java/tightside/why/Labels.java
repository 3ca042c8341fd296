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
  private static final int RINGS = 7;
  private static final int WAYS = 8;
  private static final double CLEAR = 0.5;

  /** What it costs to stand on a line, beside one ring further out. */
  private static final double CROSSED = 6;

  private final Sketch sketch;
  private final Bounds room;
  private final List<Vector2D[]> lines = new ArrayList<>();
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

  /** Words had better not stand on this line. */
  void line(Vector2D from, Vector2D to) {
    lines.add(new Vector2D[] {from, to});
  }

  /** How far down the picture goes. */
  double below() {
    return below;
  }

  /** Writes a name beside one of several points; the first is the best. */
  void place(String words, List<Vector2D> points, Ink ink) {
    Shape.Text best = null;
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < points.size(); i++) {
      for (int ring = 0; ring < RINGS; ring++) {
        for (int way = 0; way < WAYS; way++) {
          Shape.Text text = at(words, points.get(i), ring, way, ink);
          double cost = ring + 0.4 * i + 0.1 * way;
          if (cost < least && free(text.bounds())) {
            cost += CROSSED * crossings(text.bounds());
            if (cost < least) {
              least = cost;
              best = text;
            }
          }
        }
      }
    }
    if (best == null) {
      below -= ROW;
      best = Sketch.text(words, Vector2D.of(room.left(), below), ink, Shape.Align.LEFT);
    }
    sketch.write(best);
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

  private int crossings(Bounds bounds) {
    int crossed = 0;
    for (Vector2D[] line : lines) {
      double length = line[0].distance(line[1]);
      int steps = (int) Math.ceil(length / 0.8);
      for (int i = 0; i <= steps; i++) {
        if (bounds.touchedBy(line[0].lerp(line[1], steps == 0 ? 0 : i / (double) steps), 0.3)) {
          crossed++;
          break;
        }
      }
    }
    return crossed;
  }
}
