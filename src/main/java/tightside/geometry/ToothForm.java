package tightside.geometry;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * The tooth of a sprocket for roller or bush chain: ISO 606, 5.4. A gap is an arc on which the
 * roller is seated, and a flank arc on either side of it that bends the other way; where the
 * seating angle ends, one runs smoothly into the other.
 *
 * <p>The standard gives a smallest and a largest gap; any form between is right. It holds for
 * rollers of {@value #LEAST_ROLLER} to {@value #LARGEST_ROLLER} of the pitch, as all chains of the
 * standard have; outside, it makes no tooth.
 *
 * @param rollerDiameterMm largest diameter d1 of roller or bush
 * @param seatRadiusMm ri, of the arc under the roller
 * @param seatDegrees alpha, the angle of that arc
 * @param flankRadiusMm re
 * @param tipDiameterMm da, which a tooth may miss that comes to a point below it
 */
public record ToothForm(
    PitchCircle circle,
    double rollerDiameterMm,
    double seatRadiusMm,
    double seatDegrees,
    double flankRadiusMm,
    double tipDiameterMm)
    implements ToothProfile {

  /** Smallest roller for which the form holds, as a fraction of the pitch. */
  public static final double LEAST_ROLLER = 0.4;

  /** Largest roller for which the form holds, as a fraction of the pitch. */
  public static final double LARGEST_ROLLER = 0.7;

  public ToothForm {
    double fraction = rollerDiameterMm / circle.pitchMm();
    if (!(fraction >= LEAST_ROLLER && fraction <= LARGEST_ROLLER)) {
      throw new IllegalArgumentException(
          "a roller is 0.4 to 0.7 of its pitch, not " + rollerDiameterMm + " mm");
    }
  }

  /** The smallest gap: ri = 0.505 d1, alpha = 140 - 90/z, re = 0.12 d1 (z + 2). */
  public static ToothForm smallestGap(PitchCircle circle, double rollerDiameterMm) {
    int z = circle.teeth();
    return new ToothForm(
        circle,
        rollerDiameterMm,
        0.505 * rollerDiameterMm,
        140 - 90.0 / z,
        0.12 * rollerDiameterMm * (z + 2),
        meanTipDiameterMm(circle, rollerDiameterMm));
  }

  /**
   * The largest gap: ri = 0.505 d1 + 0.069 cbrt(d1) (d1 in mm), alpha = 120 - 90/z, re = 0.008 d1
   * (z^2 + 180).
   */
  public static ToothForm largestGap(PitchCircle circle, double rollerDiameterMm) {
    int z = circle.teeth();
    return new ToothForm(
        circle,
        rollerDiameterMm,
        0.505 * rollerDiameterMm + 0.069 * Math.cbrt(rollerDiameterMm),
        120 - 90.0 / z,
        0.008 * rollerDiameterMm * (z * z + 180.0),
        meanTipDiameterMm(circle, rollerDiameterMm));
  }

  /** The form half-way between the smallest gap and the largest. */
  public static ToothForm mean(PitchCircle circle, double rollerDiameterMm) {
    ToothForm least = smallestGap(circle, rollerDiameterMm);
    ToothForm most = largestGap(circle, rollerDiameterMm);
    return new ToothForm(
        circle,
        rollerDiameterMm,
        (least.seatRadiusMm + most.seatRadiusMm) / 2,
        (least.seatDegrees + most.seatDegrees) / 2,
        (least.flankRadiusMm + most.flankRadiusMm) / 2,
        least.tipDiameterMm);
  }

  /** Least tip diameter: d + p (1 - 1.6/z) - d1. */
  public static double leastTipDiameterMm(PitchCircle circle, double rollerDiameterMm) {
    double height = circle.pitchMm() * (1 - 1.6 / circle.teeth());
    return circle.diameterMm() + height - rollerDiameterMm;
  }

  /** Largest tip diameter: d + 1.25 p - d1. */
  public static double largestTipDiameterMm(PitchCircle circle, double rollerDiameterMm) {
    return circle.diameterMm() + 1.25 * circle.pitchMm() - rollerDiameterMm;
  }

  private static double meanTipDiameterMm(PitchCircle circle, double rollerDiameterMm) {
    return (leastTipDiameterMm(circle, rollerDiameterMm)
            + largestTipDiameterMm(circle, rollerDiameterMm))
        / 2;
  }

  @Override
  public int teeth() {
    return circle.teeth();
  }

  /** Root diameter df = d - d1: the roller touches the bottom of its gap. */
  @Override
  public double rootRadiusMm() {
    return circle.radiusMm() - rollerDiameterMm / 2;
  }

  @Override
  public double tipRadiusMm() {
    return Math.min(tipDiameterMm / 2, pointRadiusMm());
  }

  /** Centre of the seating arc in a gap straight above the sprocket's centre. */
  private Vector2D seatCentre() {
    return Vector2D.of(0, rootRadiusMm() + seatRadiusMm);
  }

  /**
   * Centre of the flank arc on the right of that gap: both arcs share their normal where they meet.
   */
  private Vector2D flankCentre() {
    Vector2D out = new Bearing(180 - seatDegrees / 2).direction();
    return seatCentre().add(out.multiply(seatRadiusMm + flankRadiusMm));
  }

  /** Where the flanks of a tooth would meet, from the sprocket's centre, mm. */
  private double pointRadiusMm() {
    Vector2D middle = new Bearing(circle.toothDegrees() / 2).direction();
    Vector2D flank = flankCentre();
    double along = flank.dot(middle);
    double under = along * along - flank.normSq() + flankRadiusMm * flankRadiusMm;
    return along + Math.sqrt(Math.max(0, under));
  }

  @Override
  public List<Curve> leftHalf() {
    Pose toLeftGap = new Pose(Vector2D.ZERO, new Bearing(-circle.toothDegrees() / 2));
    List<Curve> half = new ArrayList<>();
    half.add(new Curve.Arc(seatCentre(), seatRadiusMm, new Bearing(180), -seatDegrees / 2));
    Curve.Arc flank = flank();
    half.add(flank);
    double left = circle.toothDegrees() / 2 - Bearing.of(flank.to()).degrees();
    if (Tolerance.TURN.exceededBy(left)) {
      half.add(new Curve.Arc(Vector2D.ZERO, tipRadiusMm(), Bearing.of(flank.to()), left));
    }
    return half.stream().map(curve -> curve.placed(toLeftGap)).toList();
  }

  /** The flank, from the end of the seat out to the tip, by the cosine rule at its centre. */
  private Curve.Arc flank() {
    Vector2D centre = flankCentre();
    double tip = tipRadiusMm();
    double cosine =
        (flankRadiusMm * flankRadiusMm + centre.normSq() - tip * tip)
            / (2 * flankRadiusMm * centre.norm());
    double inward = Bearing.of(centre.negate()).degrees();
    Bearing start = new Bearing(-seatDegrees / 2);
    Bearing end = new Bearing(inward + Math.toDegrees(Math.acos(cosine)));
    return new Curve.Arc(centre, flankRadiusMm, start, start.signedTurnTo(end, Rotation.CLOCKWISE));
  }
}
