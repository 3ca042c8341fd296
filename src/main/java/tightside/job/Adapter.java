package tightside.job;

import tightside.drive.Limits;

/**
 * An open-ended adapter, crow foot or extension that stands out from a torque wrench's square.
 *
 * @param wrenchMm from the middle of the hand on the handle to the wrench's square
 * @param reachMm from the wrench's square to the bolt
 * @param angleDegrees between the adapter and the line of the wrench: 0 stands out in line, 90 to
 *     the side, 180 is turned back under the handle
 */
public record Adapter(double wrenchMm, double reachMm, double angleDegrees) {

  public Adapter {
    Limits.WRENCH_MM.refuseOutside("wrench", wrenchMm);
    Limits.ADAPTER_MM.refuseOutside("reach", reachMm);
    Limits.ADAPTER_DEGREES.refuseOutside("angle", angleDegrees);
    if (!shorterThanWrench(reachMm, wrenchMm)) {
      throw new IllegalArgumentException("an adapter must be shorter than its wrench");
    }
  }

  public static boolean shorterThanWrench(double reachMm, double wrenchMm) {
    return reachMm < wrenchMm;
  }

  /**
   * What to set the wrench to: T L / (L + E cos a), with L the wrench, E the adapter's reach and a
   * its angle. US Army TM 9-254, figure 46; in line also TM 1-1500-204-23-9, page 8-15.
   *
   * @return in the unit of the torque that the bolt is to have
   */
  public double setting(Torque wanted) {
    return wanted.value() * wrenchMm / alongMm();
  }

  /** What the bolt gets from a setting, the other way round. */
  public double atTheBolt(double setting) {
    return setting * alongMm() / wrenchMm;
  }

  /** From the hand to the bolt, along the wrench, mm; at exactly 90 degrees the wrench alone. */
  private double alongMm() {
    double cosine = angleDegrees == 90 ? 0 : Math.cos(Math.toRadians(angleDegrees));
    return wrenchMm + reachMm * cosine;
  }
}
