package tightside.engine;

/**
 * Crank, rod and piston: the exact slider-crank, its pin in line with the shaft.
 *
 * <p>With r = stroke / 2, l = rod and theta from top dead centre, the piston has dropped x = r + l
 * - (r cos theta + sqrt(l^2 - r^2 sin^2 theta)). Handbooks of mechanisms give the same, and mostly
 * go on with its two-term approximation; this does not.
 *
 * @param strokeMm twice the crank's throw
 * @param rodMm between the rod's eyes; longer than half the stroke
 */
public record CrankGear(double strokeMm, double rodMm) {

  public CrankGear {
    if (!(strokeMm > 0) || !Engine.rodPassesCrank(rodMm, strokeMm)) {
      throw new IllegalArgumentException("a rod must be longer than half the stroke");
    }
  }

  /** How far the piston has dropped from top dead centre, mm, at a crank angle from there. */
  public double dropMm(double crankDegrees) {
    double theta = Math.toRadians(crankDegrees);
    double r = strokeMm / 2;
    double across = r * Math.sin(theta);
    double half = Math.sin(theta / 2);
    return 2 * r * half * half + across * across / (rodMm + alongMm(across));
  }

  /** How the drop grows, mm per crank degree. */
  public double dropPerDegreeMm(double crankDegrees) {
    double theta = Math.toRadians(crankDegrees);
    double r = strokeMm / 2;
    double across = r * Math.sin(theta);
    return Math.toRadians(across * (1 + r * Math.cos(theta) / alongMm(across)));
  }

  /** The rod's length along the cylinder. */
  private double alongMm(double acrossMm) {
    return Math.sqrt(rodMm * rodMm - acrossMm * acrossMm);
  }
}
