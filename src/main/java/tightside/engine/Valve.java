package tightside.engine;

import java.util.Optional;
import tightside.drive.Limits;

/**
 * A valve and the cam that opens it.
 *
 * @param shaft name of the camshaft
 * @param liftMm full lift, along the stem
 * @param durationDegrees crank degrees from opening to closing, at zero lift
 * @param centrelineDegrees crank degrees from top dead centre at gas exchange to full lift,
 *     positive after it
 * @param tiltDegrees between stem and cylinder axis
 * @param gapMm from the closed valve to the piston crown at top dead centre, along the cylinder
 * @param spring that closes it, if anybody measured it
 */
public record Valve(
    String shaft,
    double liftMm,
    double durationDegrees,
    double centrelineDegrees,
    LiftLaw law,
    double tiltDegrees,
    double gapMm,
    Optional<Spring> spring) {

  public Valve {
    Limits.LIFT_MM.refuseOutside("lift", liftMm);
    Limits.DURATION_DEGREES.refuseOutside("duration", durationDegrees);
    Limits.CENTRELINE_DEGREES.refuseOutside("centreline", centrelineDegrees);
    Limits.TILT_DEGREES.refuseOutside("tilt", tiltDegrees);
    Limits.GAP_MM.refuseOutside("gap", gapMm);
  }

  /** A valve whose spring nobody measured. */
  public Valve(
      String shaft,
      double liftMm,
      double durationDegrees,
      double centrelineDegrees,
      LiftLaw law,
      double tiltDegrees,
      double gapMm) {
    this(
        shaft,
        liftMm,
        durationDegrees,
        centrelineDegrees,
        law,
        tiltDegrees,
        gapMm,
        Optional.empty());
  }

  /** Whether it lets the charge in: its full lift follows top dead centre at gas exchange. */
  public boolean intake() {
    return centrelineDegrees > 0;
  }

  /** Crank degrees from top dead centre at gas exchange to where it opens. */
  public double opensDegrees() {
    return centrelineDegrees - durationDegrees / 2;
  }

  /** Crank degrees from top dead centre at gas exchange to where it closes. */
  public double closesDegrees() {
    return centrelineDegrees + durationDegrees / 2;
  }

  /** Lift along the stem, mm, at a crank angle; the difference is taken within +-360 degrees. */
  public double liftMm(double crankDegrees) {
    return liftMm * law.share(way(Math.abs(fromCentreline(crankDegrees))));
  }

  /** How the lift grows, mm per crank degree. */
  public double liftPerDegreeMm(double crankDegrees) {
    double from = fromCentreline(crankDegrees);
    double slope = liftMm * law.slope(way(Math.abs(from))) / (durationDegrees / 2);
    return from < 0 ? slope : -slope;
  }

  private double fromCentreline(double crankDegrees) {
    return Math.IEEEremainder(crankDegrees - centrelineDegrees, 720);
  }

  private double way(double degreesFromCentreline) {
    return 1 - degreesFromCentreline / (durationDegrees / 2);
  }

  /** The same valve on another camshaft. */
  Valve on(String otherShaft) {
    return new Valve(
        otherShaft, liftMm, durationDegrees, centrelineDegrees, law, tiltDegrees, gapMm, spring);
  }
}
