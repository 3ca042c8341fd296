package tightside.reasoning;

import java.util.List;

/** A look at a cheap cause: its probability hangs on the explanation alone. */
record LookFactor(Cheap at, boolean faultFound) implements Factor {

  @Override
  public double log(double[] quantities, Open open) {
    double found = open.found().get(at);
    return Math.log(faultFound ? found : 1 - found);
  }

  @Override
  public List<Double> breaks(double[] base, Curve curve) {
    return List.of();
  }

  @Override
  public boolean heeds(Curve curve) {
    return false;
  }

  @Override
  public double squaredApart(double[] one, Open oneOpen, double[] other, Open otherOpen) {
    double p = oneOpen.found().get(at);
    double q = otherOpen.found().get(at);
    return 2 * (p * Math.log(p / q) + (1 - p) * Math.log((1 - p) / (1 - q)));
  }
}
