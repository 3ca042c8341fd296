package tightside.geometry;

import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * A tooth with straight flanks, for drawing the sprocket of a toothed (inverted tooth) chain. It is
 * drawn only: no standard's form, and nothing is computed from it.
 *
 * <p>The outer flanks of one link, 60 degrees between them (common practice, no source), lie
 * against the two teeth next to the one that the link straddles; so each flank leans 30 degrees
 * less the angle of a tooth from its own tooth's middle.
 *
 * @param depthMm from the pitch polygon inwards to the root
 */
public record StraightTooth(PitchCircle circle, double depthMm) implements ToothProfile {

  /** Half of a tooth's thickness at the pitch polygon, in pitches. */
  private static final double HALF_THICKNESS = 0.13;

  /** How far the tip stays inside the pitch polygon, in pitches. */
  private static final double TIP_CLEARANCE = 0.05;

  public StraightTooth {
    if (!(depthMm > circle.pitchMm() * 2 * TIP_CLEARANCE && depthMm < polygonMm(circle))) {
      throw new IllegalArgumentException("a tooth has no depth of " + depthMm + " mm");
    }
  }

  private static double polygonMm(PitchCircle circle) {
    return circle.radiusMm() * Math.cos(Math.PI / circle.teeth());
  }

  @Override
  public int teeth() {
    return circle.teeth();
  }

  @Override
  public double rootRadiusMm() {
    return polygonMm(circle) - depthMm;
  }

  @Override
  public double tipRadiusMm() {
    return polygonMm(circle) - TIP_CLEARANCE * circle.pitchMm();
  }

  /** How far a flank leans from its tooth's middle, degrees; a little at least. */
  private double leanDegrees() {
    return Math.max(4, 30 - circle.toothDegrees());
  }

  /** A point of the left flank, so far inside the pitch polygon. */
  private Vector2D flankAt(double insideMm) {
    double half =
        HALF_THICKNESS * circle.pitchMm() + insideMm * Math.tan(Math.toRadians(leanDegrees()));
    double most = rootRadiusMm() * Math.tan(Math.toRadians(0.42 * circle.toothDegrees()));
    return Vector2D.of(-Math.min(half, most), polygonMm(circle) - insideMm);
  }

  @Override
  public List<Curve> leftHalf() {
    Vector2D tip = flankAt(TIP_CLEARANCE * circle.pitchMm());
    Vector2D foot = flankAt(depthMm);
    Vector2D gap = new Bearing(-circle.toothDegrees() / 2).direction().multiply(rootRadiusMm());
    return List.of(
        new Curve.Line(gap, foot),
        new Curve.Line(foot, tip),
        new Curve.Line(tip, Vector2D.of(0, tipRadiusMm())));
  }
}
