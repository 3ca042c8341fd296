package tightside.job;

import tightside.drive.Limits;

/** One step in tightening a bolt. */
public sealed interface Tightening {

  /** Tighten until the wrench shows a torque. */
  record To(Torque torque) implements Tightening {}

  /**
   * Turn it back.
   *
   * @param degrees of the bolt
   */
  record Loosen(double degrees) implements Tightening {
    public Loosen {
      Limits.BOLT_DEGREES.refuseOutside("loosen", degrees);
    }
  }

  /**
   * Tighten further by an angle, whatever torque that takes. No adapter changes an angle.
   *
   * @param degrees of the bolt
   */
  record Further(double degrees) implements Tightening {
    public Further {
      Limits.BOLT_DEGREES.refuseOutside("angle", degrees);
    }
  }
}
