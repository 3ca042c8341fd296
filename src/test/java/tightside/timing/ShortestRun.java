package tightside.timing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A strand found by brute force: points are strewn over everything that the chain may touch, and
 * the shortest way from mark to mark that cuts into nothing is taken. It knows no tangent, no wrap
 * and no rule of what is touched.
 */
final class ShortestRun {

  /** A point in the plane, mm. */
  record Point(double x, double y) {
    double to(Point other) {
      return Math.hypot(other.x - x, other.y - y);
    }
  }

  /** Something round that nothing may cut into, over the part of it that there is. */
  interface Solid {
    /** How deep a straight line cuts in, mm. */
    double depth(Point a, Point b);
  }

  /** A whole disc. */
  record Disc(Point centre, double radius) implements Solid {
    @Override
    public double depth(Point a, Point b) {
      return radius - nearest(centre, a, b).to(centre);
    }
  }

  /** A disc of which only the sector between two points of its edge is there. */
  record Sector(Disc disc, Point start, Point end) implements Solid {
    @Override
    public double depth(Point a, Point b) {
      Point foot = nearest(disc.centre, a, b);
      boolean within =
          turn(disc.centre, start, foot) * turn(disc.centre, foot, end) > 0
              && turn(disc.centre, start, foot) * turn(disc.centre, start, end) > 0;
      return within ? disc.depth(a, b) : Double.NEGATIVE_INFINITY;
    }
  }

  /** A wall that nothing may cross. */
  record Wall(Point from, Point to) implements Solid {
    @Override
    public double depth(Point a, Point b) {
      boolean crossed =
          turn(from, to, a) * turn(from, to, b) < 0 && turn(a, b, from) * turn(a, b, to) < 0;
      return crossed ? Double.POSITIVE_INFINITY : Double.NEGATIVE_INFINITY;
    }
  }

  /**
   * Points along one thing, in the direction of travel.
   *
   * @param stepLength length from one point to the next along it, mm
   * @param stepPitches the same in pitches
   */
  record Row(List<Point> points, double stepLength, double stepPitches) {}

  private final List<Row> rows;
  private final List<Solid> solids;
  private final double pitch;
  private final double mayCut;

  /**
   * @param rows from the mark of the first sprocket to the mark of the second
   * @param mayCut depth in mm to which a line may cut: points are not everywhere
   */
  ShortestRun(List<Row> rows, List<Solid> solids, double pitch, double mayCut) {
    this.rows = rows;
    this.solids = solids;
    this.pitch = pitch;
    this.mayCut = mayCut;
  }

  /** Pitches of the shortest way from the first point of all to the last. */
  double pitches() {
    List<Point> points = new ArrayList<>();
    List<Integer> rowOf = new ArrayList<>();
    for (int row = 0; row < rows.size(); row++) {
      for (Point point : rows.get(row).points()) {
        points.add(point);
        rowOf.add(row);
      }
    }
    double[] length = new double[points.size()];
    double[] pitches = new double[points.size()];
    Arrays.fill(length, Double.POSITIVE_INFINITY);
    length[0] = 0;
    for (int to = 1; to < points.size(); to++) {
      for (int from = 0; from < to; from++) {
        Row row = rows.get(rowOf.get(from));
        boolean along = to == from + 1 && rowOf.get(from).equals(rowOf.get(to));
        double step = along ? row.stepLength() : points.get(from).to(points.get(to));
        boolean better = length[from] + step < length[to];
        boolean sameRow = rowOf.get(from).equals(rowOf.get(to));
        if (better && (along || !sameRow && clear(points.get(from), points.get(to)))) {
          length[to] = length[from] + step;
          pitches[to] = pitches[from] + (along ? row.stepPitches() : step / pitch);
        }
      }
    }
    return pitches[points.size() - 1];
  }

  private boolean clear(Point a, Point b) {
    return solids.stream().allMatch(s -> s.depth(a, b) <= mayCut);
  }

  private static Point nearest(Point to, Point a, Point b) {
    double dx = b.x - a.x;
    double dy = b.y - a.y;
    double along = ((to.x - a.x) * dx + (to.y - a.y) * dy) / (dx * dx + dy * dy);
    double held = Math.max(0, Math.min(1, along));
    return new Point(a.x + held * dx, a.y + held * dy);
  }

  private static double turn(Point centre, Point a, Point b) {
    return (a.x - centre.x) * (b.y - centre.y) - (a.y - centre.y) * (b.x - centre.x);
  }

  /** Points on a circle by clockwise angle from straight up, radians. */
  static Row arc(
      Disc disc, double from, double to, int steps, double stepLength, double stepPitches) {
    List<Point> points = new ArrayList<>();
    for (int i = 0; i <= steps; i++) {
      double angle = from + (to - from) * i / steps;
      points.add(
          new Point(
              disc.centre.x + disc.radius * Math.sin(angle),
              disc.centre.y + disc.radius * Math.cos(angle)));
    }
    return new Row(points, stepLength, stepPitches);
  }
}
