package tightside.reasoning;

import java.util.ArrayList;
import java.util.List;

/**
 * A locking tool that goes in or not.
 *
 * @param playDegrees how far the shaft can turn either way in it, crank degrees
 * @param softDegrees standard deviation of where it stops going in, crank degrees
 * @param otherDegrees how a shaft is spread where an explanation leaves it open, crank degrees
 */
record ToolFactor(
    int place, boolean goesIn, double playDegrees, double softDegrees, double otherDegrees)
    implements Factor {

  /** The probability that it goes in. */
  double in(double degrees, double soft) {
    return SLIP
        + (1 - 2 * SLIP)
            * Normal.between((-playDegrees - degrees) / soft, (playDegrees - degrees) / soft);
  }

  private double in(double[] quantities, Open open) {
    return open.everything()
        ? in(0, Math.hypot(softDegrees, otherDegrees))
        : in(quantities[place], softDegrees);
  }

  @Override
  public double log(double[] quantities, Open open) {
    double in = in(quantities, open);
    return Math.log(goesIn ? in : 1 - in);
  }

  @Override
  public List<Double> breaks(double[] base, Curve curve) {
    List<Double> breaks = new ArrayList<>();
    for (double edge : new double[] {-playDegrees, playDegrees}) {
      for (int spreads = -5; spreads <= 5; spreads += 5) {
        breaks.addAll(curve.amountsAt(place, edge + spreads * softDegrees - base[place]));
      }
    }
    return breaks;
  }

  @Override
  public boolean heeds(Curve curve) {
    return curve.moves(place);
  }

  @Override
  public double squaredApart(double[] one, Open oneOpen, double[] other, Open otherOpen) {
    double p = in(one, oneOpen);
    double q = in(other, otherOpen);
    return 2 * (p * Math.log(p / q) + (1 - p) * Math.log((1 - p) / (1 - q)));
  }
}
