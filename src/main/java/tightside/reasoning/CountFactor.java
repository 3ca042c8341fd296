package tightside.reasoning;

import java.util.List;

/**
 * A count of links. One in fifty is miscounted: mostly by one link, more rarely by more; common
 * practice, no source.
 */
record CountFactor(int place, long links) implements Factor {

  /** Counts that nobody would rule out where an explanation leaves them open. */
  private static final int ANY_OF = 7;

  private static double log(double off) {
    double by = Math.abs(off);
    if (by < 0.5) {
      return Math.log(1 - SLIP);
    }
    return Math.log(by < 1.5 ? 0.4 * SLIP : 0.2 * SLIP / 5);
  }

  @Override
  public double log(double[] quantities, Open open) {
    return open.everything() ? -Math.log(ANY_OF) : log(links - quantities[place]);
  }

  @Override
  public List<Double> breaks(double[] base, Curve curve) {
    return List.of();
  }

  @Override
  public boolean heeds(Curve curve) {
    return curve.moves(place);
  }

  @Override
  public double squaredApart(double[] one, Open oneOpen, double[] other, Open otherOpen) {
    if (oneOpen.everything()) {
      return otherOpen.everything() ? 0 : -2 * log(2);
    }
    return 2
        * (log(0) - (otherOpen.everything() ? -Math.log(ANY_OF) : log(one[place] - other[place])));
  }
}
