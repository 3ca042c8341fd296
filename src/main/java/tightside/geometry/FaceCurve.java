package tightside.geometry;

import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * The rubbing face of a guide, an arm or a shoe: the arc through three points, in the direction of
 * travel.
 *
 * @param start mm
 * @param middle mm, a point of the face between its ends
 * @param end mm
 */
public record FaceCurve(Vector2D start, Vector2D middle, Vector2D end) {

  public FaceCurve {
    if (!start.isFinite() || !middle.isFinite() || !end.isFinite()) {
      throw new IllegalArgumentException("a face needs three finite points");
    }
    if (start.distance(end) < Tolerance.STRAIGHT_FACE.value()) {
      throw new IllegalArgumentException(
          "a face must have a start and an end apart from each other");
    }
  }

  /** How far the middle stands off the chord, mm, positive to the left of start to end. */
  public double bulgeMm() {
    Vector2D chord = start.vectorTo(end);
    return chord.signedArea(start.vectorTo(middle)) / chord.norm();
  }

  /** Whether the middle lies within 0.01 mm of the chord, but for the rounding of a motion. */
  public boolean straight() {
    return Math.abs(bulgeMm()) <= Tolerance.STRAIGHT_FACE.value() + Tolerance.TOUCH.value();
  }

  /**
   * The sense in which a string would turn that ran over the bulging side from start to end;
   * nothing for a straight face.
   */
  public Optional<Rotation> bulge() {
    if (straight()) {
      return Optional.empty();
    }
    return Optional.of(bulgeMm() > 0 ? Rotation.CLOCKWISE : Rotation.COUNTERCLOCKWISE);
  }

  /**
   * The centre of the arc, from the two chords: with a = middle - start, b = end - start, the
   * centre stands from start by (|a|^2 b' - |b|^2 a') / (2 a x b), where v' is v turned 90 degrees
   * to the right.
   *
   * @throws IllegalStateException for a straight face, which has none
   */
  public Vector2D centre() {
    if (straight()) {
      throw new IllegalStateException("a straight face has no centre");
    }
    Vector2D a = start.vectorTo(middle);
    Vector2D b = start.vectorTo(end);
    double twice = 2 * a.signedArea(b);
    return Vector2D.of(
        start.getX() + (b.getY() * a.normSq() - a.getY() * b.normSq()) / twice,
        start.getY() + (a.getX() * b.normSq() - b.getX() * a.normSq()) / twice);
  }

  /** The face carried along by a rigid motion. */
  public FaceCurve moved(UnaryOperator<Vector2D> motion) {
    return new FaceCurve(motion.apply(start), motion.apply(middle), motion.apply(end));
  }

  /**
   * What the chain's pitch line meets: the end circle at the start, the arc, the end circle at the
   * end; a straight face has the two end circles alone.
   *
   * @param standOffMm how far the pitch line runs from the face: half the plate height
   * @param sense the way the chain turns over the face
   * @throws IllegalArgumentException if the face is hollow toward the chain
   */
  public Outline outline(double standOffMm, Rotation sense) {
    OrientedCircle first = new OrientedCircle(start, standOffMm, sense);
    OrientedCircle last = new OrientedCircle(end, standOffMm, sense);
    if (straight()) {
      return new Outline(List.of(first, last), List.of(Bearing.of(start.vectorTo(end))));
    }
    if (bulge().orElseThrow() != sense) {
      throw new IllegalArgumentException("the face is hollow toward the chain");
    }
    Vector2D centre = centre();
    OrientedCircle arc = new OrientedCircle(centre, centre.distance(middle) + standOffMm, sense);
    return new Outline(
        List.of(first, arc, last),
        List.of(
            arc.headingAt(Bearing.of(centre.vectorTo(start))),
            arc.headingAt(Bearing.of(centre.vectorTo(end)))));
  }
}
