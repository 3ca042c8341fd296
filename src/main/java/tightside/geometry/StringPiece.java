package tightside.geometry;

import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * A piece of a taut string, in the direction of travel: a straight run or a turn round a circle.
 */
public sealed interface StringPiece {

  /** The place on an outline that a turn lies on. */
  enum Spot {
    /** The sprocket's own circle. */
    ROUND,
    /** The circle at an end of a face. */
    FACE_END,
    /** The arc of a face. */
    FACE_ARC
  }

  Vector2D start();

  Vector2D end();

  double lengthMm();

  /** A straight run. */
  record Straight(Tangent tangent) implements StringPiece {
    @Override
    public Vector2D start() {
      return tangent.from();
    }

    @Override
    public Vector2D end() {
      return tangent.to();
    }

    @Override
    public double lengthMm() {
      return tangent.lengthMm();
    }
  }

  /**
   * A turn round one circle of an outline.
   *
   * @param outline which outline, by its place among those passed
   * @param in the heading with which the string arrives
   * @param degrees of turn in the circle's own sense, in [0, 360)
   */
  record Turn(int outline, Spot spot, OrientedCircle circle, Bearing in, double degrees)
      implements StringPiece {

    /** The same turn on an outline of another number. */
    public Turn named(int other) {
      return new Turn(other, spot, circle, in, degrees);
    }

    /** The heading with which the string leaves. */
    public Bearing out() {
      return in.plus(degrees, circle.sense());
    }

    @Override
    public Vector2D start() {
      return circle.touchAt(in);
    }

    @Override
    public Vector2D end() {
      return circle.touchAt(out());
    }

    @Override
    public double lengthMm() {
      return circle.radiusMm() * Math.toRadians(degrees);
    }
  }
}
