package tightside.picture;

import java.util.List;
import java.util.Optional;
import tightside.engine.Clearance;

/**
 * What a chart of the room between valve and piston shows.
 *
 * @param now the valve it is drawn for, as its camshaft stands
 * @param before the same valve in the state it is compared with
 * @param beside the other valves of the cylinder, as they stand
 * @param twoTurns whether two whole turns are shown, or what lies round top dead centre
 * @param widthMm of the chart
 * @param heightMm of the chart
 * @param emMm size of its words
 */
public record GapScene(
    Clearance now,
    Optional<Before> before,
    List<Clearance> beside,
    boolean twoTurns,
    double widthMm,
    double heightMm,
    double emMm) {

  /** Round top dead centre: where valves and piston are near each other. */
  private static final double NEAR_DEGREES = 120;

  private static final double TWO_TURNS_DEGREES = 360;

  /**
   * A valve to compare with.
   *
   * @param name of the state: "right", "A"
   */
  public record Before(Clearance clearance, String name) {}

  public GapScene {
    beside = List.copyOf(beside);
    if (!(widthMm > 0 && heightMm > 0 && emMm > 0)) {
      throw new IllegalArgumentException("a chart needs a size");
    }
  }

  /** The same without the other valves. */
  GapScene alone() {
    return new GapScene(now, before, List.of(), twoTurns, widthMm, heightMm, emMm);
  }

  /** Two whole turns wherever the valve comes nearest elsewhere. */
  double reachDegrees() {
    boolean elsewhere = Math.abs(now.least().atDegrees()) > NEAR_DEGREES;
    return twoTurns || elsewhere ? TWO_TURNS_DEGREES : NEAR_DEGREES;
  }

  /** Room that the chart shows: what is small must be seen, what is large need not. */
  double mostMm() {
    double least = Math.min(now.least().clearanceMm(), beforeLeast());
    return Math.max(10, Math.min(40, 5 * Math.ceil(3 * Math.max(least, 0) / 5)));
  }

  /** Below nothing there is room for what is said there, and for the depth of a contact. */
  double leastMm() {
    double deepest = Math.min(now.least().clearanceMm(), beforeLeast());
    return Math.min(-0.16 * mostMm(), 1.15 * deepest);
  }

  private double beforeLeast() {
    return before.map(b -> b.clearance().least().clearanceMm()).orElse(Double.POSITIVE_INFINITY);
  }
}
