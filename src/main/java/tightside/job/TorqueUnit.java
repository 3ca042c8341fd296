package tightside.job;

/**
 * What a torque is given in. A pound-force is 4.4482216152605 N and a foot 0.3048 m, both by
 * definition (NIST SP 811, appendix B).
 */
public enum TorqueUnit {
  /** Newton metres. */
  NM(1, "N·m"),
  /** Pound-force feet: 4.4482216152605 x 0.3048 N m. */
  LB_FT(4.4482216152605 * 0.3048, "lb-ft"),
  /** Pound-force inches: a twelfth of that. */
  LB_IN(4.4482216152605 * 0.0254, "lb-in");

  private final double newtonMetres;
  private final String sign;

  TorqueUnit(double newtonMetres, String sign) {
    this.newtonMetres = newtonMetres;
    this.sign = sign;
  }

  /** How many newton metres one of it is. */
  public double newtonMetres() {
    return newtonMetres;
  }

  /** As people write it. */
  public String sign() {
    return sign;
  }
}
