package tightside.engine;

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
 */
public record Valve(
    String shaft,
    double liftMm,
    double durationDegrees,
    double centrelineDegrees,
    LiftLaw law,
    double tiltDegrees,
    double gapMm) {

  public Valve {
    Limits.LIFT_MM.refuseOutside("lift", liftMm);
    Limits.DURATION_DEGREES.refuseOutside("duration", durationDegrees);
    Limits.CENTRELINE_DEGREES.refuseOutside("centreline", centrelineDegrees);
    Limits.TILT_DEGREES.refuseOutside("tilt", tiltDegrees);
    Limits.GAP_MM.refuseOutside("gap", gapMm);
  }
}
