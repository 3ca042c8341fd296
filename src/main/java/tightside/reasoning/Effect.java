package tightside.reasoning;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.apache.commons.statistics.distribution.ContinuousDistribution;

/**
 * What one explanation does to the quantities.
 *
 * @param what the explanation
 * @param share of its cause's weight, before the shares are made to add up to 1
 * @param amount how its amount is spread before anything is read; nothing where it has none
 * @param outline what that looks like; of no use where there is no amount
 * @param curve what it changes
 * @param freed the place of a plunger that then may stand anywhere
 * @param bent the place of a wheel whose edges then read each by its own
 */
record Effect(
    Explanation what,
    double share,
    Optional<ContinuousDistribution> amount,
    Outline outline,
    Curve curve,
    OptionalInt freed,
    OptionalInt bent) {

  private static final double[] EDGES = {0.02, 0.16, 0.5, 0.84, 0.98};

  /**
   * What a prior looks like, worked out once.
   *
   * @param edges amounts at some of its quantiles
   * @param peak its greatest density, at those and at its ends
   * @param bell the same as a parabola, where its logarithm is one
   */
  record Outline(List<Double> edges, double variance, double peak, Optional<Bell> bell) {
    Outline {
      edges = List.copyOf(edges);
    }

    static Outline of(ContinuousDistribution amount) {
      double[] edges = Arrays.stream(EDGES).map(amount::inverseCumulativeProbability).toArray();
      double peak =
          Math.max(
              Arrays.stream(edges).map(amount::density).max().orElseThrow(),
              amount.density(amount.getSupportLowerBound()));
      return new Outline(
          Arrays.stream(edges).boxed().toList(), amount.getVariance(), peak, Bell.of(amount));
    }
  }

  static Effect fixed(Explanation what, double share, double[] change) {
    return new Effect(
        what,
        share,
        Optional.empty(),
        new Outline(List.of(), 0, 1, Optional.empty()),
        Curve.fixed(change),
        OptionalInt.empty(),
        OptionalInt.empty());
  }

  static Effect by(
      Explanation what, double share, ContinuousDistribution amount, double[] perUnit) {
    Curve straight =
        Curve.straight(amount.getSupportLowerBound(), amount.getSupportUpperBound(), perUnit);
    return along(what, share, amount, straight);
  }

  static Effect along(Explanation what, double share, ContinuousDistribution amount, Curve curve) {
    return new Effect(
        what,
        share,
        Optional.of(amount),
        Outline.of(amount),
        curve,
        OptionalInt.empty(),
        OptionalInt.empty());
  }

  Effect freeing(int plunger) {
    return new Effect(what, share, amount, outline, curve, OptionalInt.of(plunger), bent);
  }

  Effect bending(int wheel) {
    return new Effect(what, share, amount, outline, curve, freed, OptionalInt.of(wheel));
  }

  boolean fixed() {
    return amount.isEmpty();
  }
}
