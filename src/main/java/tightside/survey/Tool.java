package tightside.survey;

/**
 * What a length or an angle was measured with. The standard uncertainties are what a careful hand
 * reaches in a workshop: common practice, no source; who knows better gives his own.
 */
public enum Tool {
  /** A steel rule laid across the engine, read to a millimetre. */
  RULER(0.5),
  /** A vernier or digital calliper on a part that can be gripped. */
  CALLIPER(0.05),
  /** A tape, which sags and has to be bent to the spot. */
  TAPE(1.0),
  /** A protractor laid on a line between two shafts; degrees. */
  PROTRACTOR(1.0);

  private final double sigma;

  Tool(double sigma) {
    this.sigma = sigma;
  }

  /** Standard uncertainty of one reading: mm, a protractor's in degrees. */
  public double sigma() {
    return sigma;
  }
}
