package tightside.reasoning;

import java.util.Optional;
import java.util.OptionalInt;
import org.apache.commons.statistics.distribution.ContinuousDistribution;

/**
 * What one explanation does to the quantities.
 *
 * @param what the explanation
 * @param share of its cause's weight, before the shares are made to add up to 1
 * @param amount how its amount is spread before anything is read; nothing where it has none
 * @param curve what it changes
 * @param freed the place of a plunger that then may stand anywhere
 * @param bent the place of a wheel whose edges then read each by its own
 */
record Effect(
    Explanation what,
    double share,
    Optional<ContinuousDistribution> amount,
    Curve curve,
    OptionalInt freed,
    OptionalInt bent) {

  static Effect fixed(Explanation what, double share, double[] change) {
    return new Effect(
        what,
        share,
        Optional.empty(),
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
        what, share, Optional.of(amount), curve, OptionalInt.empty(), OptionalInt.empty());
  }

  Effect freeing(int plunger) {
    return new Effect(what, share, amount, curve, OptionalInt.of(plunger), bent);
  }

  Effect bending(int wheel) {
    return new Effect(what, share, amount, curve, freed, OptionalInt.of(wheel));
  }

  boolean fixed() {
    return amount.isEmpty();
  }
}
