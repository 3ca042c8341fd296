package tightside.geometry;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/** A piece of an outline, from one point to another. */
public sealed interface Curve {

  Vector2D from();

  Vector2D to();

  /** This piece on a part that lies somewhere else. */
  Curve placed(Pose pose);

  /** This piece mirrored left to right, and run the other way. */
  Curve mirrored();

  /** Points between which the piece lies: no point of it lies farther out in x or y. */
  List<Vector2D> extremes();

  /** A straight piece. */
  record Line(Vector2D from, Vector2D to) implements Curve {
    @Override
    public Curve placed(Pose pose) {
      return new Line(pose.apply(from), pose.apply(to));
    }

    @Override
    public Curve mirrored() {
      return new Line(mirror(to), mirror(from));
    }

    @Override
    public List<Vector2D> extremes() {
      return List.of(from, to);
    }
  }

  /**
   * An arc of a circle.
   *
   * @param centre mm
   * @param start the bearing from the centre to where the arc begins
   * @param sweepDegrees how far it goes, clockwise positive, within (-360, 360)
   */
  record Arc(Vector2D centre, double radiusMm, Bearing start, double sweepDegrees)
      implements Curve {

    public Arc {
      if (!(radiusMm > 0) || Double.isInfinite(radiusMm)) {
        throw new IllegalArgumentException("an arc needs a positive radius, not " + radiusMm);
      }
      if (!(Math.abs(sweepDegrees) < 360)) {
        throw new IllegalArgumentException("an arc is less than a circle, not " + sweepDegrees);
      }
    }

    /** The arc of a string's turn round a circle. */
    public static Arc of(StringPiece.Turn turn) {
      OrientedCircle circle = turn.circle();
      return new Arc(
          circle.centre(),
          circle.radiusMm(),
          circle.bearingAt(turn.in()),
          circle.sense().sign() * turn.degrees());
    }

    @Override
    public Vector2D from() {
      return at(start);
    }

    @Override
    public Vector2D to() {
      return at(start.plus(sweepDegrees));
    }

    private Vector2D at(Bearing bearing) {
      Vector2D out = bearing.direction();
      return Vector2D.of(
          centre.getX() + radiusMm * out.getX(), centre.getY() + radiusMm * out.getY());
    }

    @Override
    public Curve placed(Pose pose) {
      return new Arc(pose.apply(centre), radiusMm, start.plus(pose.up().degrees()), sweepDegrees);
    }

    @Override
    public Curve mirrored() {
      Bearing end = start.plus(sweepDegrees);
      return new Arc(mirror(centre), radiusMm, new Bearing(-end.degrees()), sweepDegrees);
    }

    @Override
    public List<Vector2D> extremes() {
      List<Vector2D> points = new ArrayList<>(List.of(from(), to()));
      Rotation way = sweepDegrees < 0 ? Rotation.COUNTERCLOCKWISE : Rotation.CLOCKWISE;
      for (int quarter = 0; quarter < 4; quarter++) {
        Bearing outermost = new Bearing(90.0 * quarter);
        if (start.turnTo(outermost, way) <= Math.abs(sweepDegrees)) {
          points.add(at(outermost));
        }
      }
      return points;
    }
  }

  private static Vector2D mirror(Vector2D point) {
    return Vector2D.of(-point.getX(), point.getY());
  }
}
