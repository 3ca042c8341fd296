package tightside.reasoning;

import java.util.ArrayList;
import java.util.List;

/**
 * A plunger that stands between two lengths; a slip of the reader leaves a small probability of
 * anything.
 *
 * @param place of its quantity
 * @param softMm standard deviation of the interval's ends
 * @param travelMm over which it may stand where an explanation leaves it free
 */
record PlungerFactor(int place, double lowMm, double highMm, double softMm, double travelMm)
    implements Factor {

  double middleMm() {
    return (lowMm + highMm) / 2;
  }

  /** Standard deviation of what is read, its interval and soft ends together. */
  double spreadMm() {
    return Math.hypot(softMm, (highMm - lowMm) / Math.sqrt(12));
  }

  private double anywhere() {
    return Math.min(1, (highMm - lowMm) / travelMm);
  }

  @Override
  public double log(double[] quantities, Open open) {
    if (open.frees(place)) {
      return Math.log(anywhere());
    }
    double at = quantities[place];
    double within = Normal.between((lowMm - at) / softMm, (highMm - at) / softMm);
    return Math.log((1 - SLIP) * within + SLIP * anywhere());
  }

  @Override
  public List<Double> breaks(double[] base, Curve curve) {
    List<Double> breaks = new ArrayList<>();
    for (double mm : new double[] {lowMm - 5 * softMm, lowMm, highMm, highMm + 5 * softMm}) {
      breaks.addAll(curve.amountsAt(place, mm - base[place]));
    }
    return breaks;
  }

  @Override
  public boolean heeds(Curve curve) {
    return curve.moves(place);
  }

  @Override
  public double squaredApart(double[] one, Open oneOpen, double[] other, Open otherOpen) {
    double floor = 2 * Math.log(1 / (SLIP * anywhere()));
    double width = highMm - lowMm;
    if (oneOpen.frees(place)) {
      return otherOpen.frees(place) ? 0 : floor;
    }
    if (otherOpen.frees(place)) {
      return 2 * Math.log(1 / anywhere());
    }
    double apart = one[place] - other[place];
    return Math.min(floor, apart * apart / (softMm * softMm + width * width / 12));
  }
}
