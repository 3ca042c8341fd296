package tightside.geometry;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * A smooth convex thing that a string may lie against: oriented circles of one sense, each taking
 * over from the one before it where the string reaches a known heading.
 *
 * @param circles in the direction of travel; one for a sprocket
 * @param handovers the heading at which each circle hands over to the next; one fewer than circles
 */
public record Outline(List<OrientedCircle> circles, List<Bearing> handovers) {

  public Outline {
    circles = List.copyOf(circles);
    handovers = List.copyOf(handovers);
    if (circles.isEmpty() || handovers.size() != circles.size() - 1) {
      throw new IllegalArgumentException("an outline needs one handover between circle and circle");
    }
  }

  public static Outline of(OrientedCircle circle) {
    return new Outline(List.of(circle), List.of());
  }

  public Rotation sense() {
    return circles.get(0).sense();
  }

  /**
   * How far a heading lies outside the part that a circle has of this outline, degrees; 0 within
   * it.
   */
  double strayDegrees(int circle, Bearing heading) {
    double early = circle == 0 ? 0 : heading.signedTurnTo(handovers.get(circle - 1), sense());
    double late =
        circle == handovers.size() ? 0 : handovers.get(circle).signedTurnTo(heading, sense());
    return Math.max(0, Math.max(early, late));
  }

  /** Which circle a straight string of this heading would rest on. */
  int circleAt(Bearing heading) {
    int best = 0;
    for (int i = 1; i < circles.size(); i++) {
      if (strayDegrees(i, heading) < strayDegrees(best, heading)) {
        best = i;
      }
    }
    return best;
  }

  /**
   * The pieces of a string that arrives on one heading and leaves on another: a turn on each circle
   * that it meets, and the straight between two that do not touch each other.
   *
   * @param name the index to give each turn
   */
  List<StringPiece> passage(int name, Bearing in, Bearing out) {
    List<StringPiece> pieces = new ArrayList<>();
    int last = circleAt(out);
    Bearing heading = in;
    for (int i = Math.min(circleAt(in), last); i < last; i++) {
      Bearing handover = handovers.get(i);
      pieces.add(turn(name, i, heading, handover));
      Vector2D from = circles.get(i).touchAt(handover);
      Vector2D to = circles.get(i + 1).touchAt(handover);
      if (Tolerance.TOUCH.exceededBy(from.distance(to))) {
        pieces.add(new StringPiece.Straight(new Tangent(from, to, handover, from.distance(to))));
      }
      heading = handover;
    }
    pieces.add(turn(name, last, heading, out));
    return pieces;
  }

  private StringPiece turn(int name, int circle, Bearing in, Bearing out) {
    double degrees = Math.max(0, in.signedTurnTo(out, sense()));
    return new StringPiece.Turn(name, spotOf(circle), circles.get(circle), in, degrees);
  }

  private StringPiece.Spot spotOf(int circle) {
    if (circles.size() == 1) {
      return StringPiece.Spot.ROUND;
    }
    boolean end = circle == 0 || circle == circles.size() - 1;
    return end ? StringPiece.Spot.FACE_END : StringPiece.Spot.FACE_ARC;
  }

  /**
   * How deep a straight run cuts into this outline, mm; zero or less where it passes clear or
   * beyond the run's ends.
   */
  double depthAcross(Tangent run) {
    Vector2D along = run.heading().direction();
    OrientedCircle circle = circles.get(circleAt(run.heading()));
    double position = run.from().vectorTo(circle.centre()).dot(along);
    if (position < 0 || position > run.lengthMm()) {
      return Math.max(depthAt(run.from()), depthAt(run.to()));
    }
    double side = circle.centre().vectorTo(run.from()).dot(OrientedCircle.left(along));
    return sense().sign() * (circle.signedRadiusMm() - side);
  }

  /** How deep a point lies inside the part of the plane that this outline keeps a string out of. */
  private double depthAt(Vector2D point) {
    double deepest = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < circles.size(); i++) {
      OrientedCircle circle = circles.get(i);
      Vector2D out = circle.centre().vectorTo(point);
      if (out.normSq() == 0
          || strayDegrees(i, circle.headingAt(Bearing.of(out))) <= Tolerance.TURN.value()) {
        deepest = Math.max(deepest, circle.radiusMm() - out.norm());
      }
    }
    return deepest;
  }
}
