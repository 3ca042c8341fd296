package tightside.job;

import tightside.drive.Limits;

/** A torque as its user gives it. */
public record Torque(double value, TorqueUnit unit) {

  public Torque {
    Limits.TORQUE.refuseOutside("torque", value);
  }

  public double newtonMetres() {
    return value * unit.newtonMetres();
  }

  /** How much it is in another unit; itself in its own. */
  public double in(TorqueUnit other) {
    return other == unit ? value : newtonMetres() / other.newtonMetres();
  }
}
