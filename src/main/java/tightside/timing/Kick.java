package tightside.timing;

import java.util.List;

/**
 * Which way a camshaft springs once nothing holds it: the torque of the valve springs that stand
 * compressed. Friction is left out, so a small torque may move nothing.
 */
public sealed interface Kick {

  /** Nobody said how the valves stand. */
  record Unknown() implements Kick {}

  /**
   * @param torqueNm on the camshaft, positive = it springs ahead in its own direction of rotation
   */
  record Known(double torqueNm) implements Kick {
    /** The way it springs; right where the springs balance to within a thousandth of a Nm. */
    public Lag way() {
      return Math.abs(torqueNm) < 1e-3 ? Lag.RIGHT : Lag.of(torqueNm);
    }
  }

  /**
   * A valve, or several that stand alike.
   *
   * @param liftMm how far it is open; 0 or more
   * @param liftPerRadianMm how the lift grows as the camshaft turns ahead, mm per radian of the
   *     camshaft
   * @param preloadN of the spring with the valve closed
   * @param rateNPerMm of the spring
   */
  record Valve(double liftMm, double liftPerRadianMm, double preloadN, double rateNPerMm) {
    public Valve {
      if (!(liftMm >= 0) || !(preloadN >= 0) || !(rateNPerMm >= 0)) {
        throw new IllegalArgumentException("lift, preload and rate are 0 or more");
      }
      if (!Double.isFinite(liftPerRadianMm)) {
        throw new IllegalArgumentException("a lift grows by a finite amount per radian");
      }
    }

    /**
     * Torque on the camshaft, N m. The spring does the work F dlift on the way down, so it turns
     * the camshaft the way in which the lift falls: -(preload + rate x lift) x dlift/dangle.
     */
    double torqueNm() {
      return liftMm == 0 ? 0 : -(preloadN + rateNPerMm * liftMm) * liftPerRadianMm / 1000;
    }
  }

  static Kick of(List<Valve> valves) {
    return valves.isEmpty()
        ? new Unknown()
        : new Known(valves.stream().mapToDouble(Valve::torqueNm).sum());
  }
}
