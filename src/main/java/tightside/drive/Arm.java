package tightside.drive;

import org.apache.commons.geometry.euclidean.twod.Vector2D;
import tightside.geometry.FaceCurve;
import tightside.geometry.Rotation;
import tightside.geometry.Tolerance;

/**
 * A pivoted arm, pushed at its round pad by the flat end of a plunger; drawn fully pushed back.
 *
 * @param pivot mm
 * @param pad centre of the pad as drawn, mm
 */
public record Arm(
    String name,
    Contact contact,
    Vector2D pivot,
    FaceCurve curve,
    Vector2D pad,
    Plunger plunger,
    Seen seen)
    implements Tensioner {

  public Arm {
    Names.refuseNonsense("arm", name);
    if (!(pivot.distance(pad) > 0)) {
      throw new IllegalArgumentException("an arm's pad must stand off its pivot");
    }
  }

  /** Pivot to pad, mm. */
  private double reachMm() {
    return pivot.distance(pad);
  }

  /** How far the pad stands along the plunger's bearing from the pivot, as drawn, mm. */
  private double alongMm() {
    return pivot.vectorTo(pad).dot(plunger.push());
  }

  /** How far the pad stands to the right of the plunger's line through the pivot, mm. */
  private double asideMm() {
    return -plunger.push().signedArea(pivot.vectorTo(pad));
  }

  /** Whether the plunger pushes along the line from pivot to pad, so that it turns nothing. */
  boolean inLine() {
    return Math.abs(asideMm()) <= Tolerance.TOUCH.value();
  }

  /**
   * The way the arm turns as the plunger comes out: the way that moves the pad along the plunger's
   * bearing.
   */
  public Rotation turns() {
    return asideMm() > 0 ? Rotation.COUNTERCLOCKWISE : Rotation.CLOCKWISE;
  }

  /**
   * The most that the pad can move along the plunger's bearing before the arm turns it back, mm:
   * pad and pivot then stand in line with the plunger.
   */
  public double turningPointMm() {
    return reachMm() - alongMm();
  }

  /**
   * The turn of the arm, degrees, at which the pad has moved along the plunger's bearing by the
   * extension: with theta the angle of the pad from the bearing, reach (cos theta - cos theta0) =
   * extension.
   *
   * @throws IllegalArgumentException past the turning point
   */
  public double turnDegreesAt(double extensionMm) {
    if (extensionMm > turningPointMm()) {
      throw new IllegalArgumentException("the arm turns back before " + extensionMm + " mm");
    }
    double before = Math.acos(Math.max(-1, Math.min(1, alongMm() / reachMm())));
    double after = Math.acos(Math.max(-1, Math.min(1, (alongMm() + extensionMm) / reachMm())));
    return Math.toDegrees(before - after);
  }

  /** Where a point of the arm stands with the plunger out. */
  public Vector2D carried(Vector2D point, double extensionMm) {
    double counterclockwise =
        -turns().sign() * Math.toRadians(extensionMm == 0 ? 0 : turnDegreesAt(extensionMm));
    Vector2D arm = pivot.vectorTo(point);
    double cos = Math.cos(counterclockwise);
    double sin = Math.sin(counterclockwise);
    return Vector2D.of(
        pivot.getX() + arm.getX() * cos - arm.getY() * sin,
        pivot.getY() + arm.getX() * sin + arm.getY() * cos);
  }

  @Override
  public FaceCurve curveAt(double extensionMm) {
    return extensionMm == 0 ? curve : curve.moved(point -> carried(point, extensionMm));
  }
}
