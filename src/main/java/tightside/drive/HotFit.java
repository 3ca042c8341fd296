package tightside.drive;

import java.util.OptionalDouble;

/**
 * How a chain that is fitted cold fits once it is warm.
 *
 * @param cold how it fits cold, its plunger free
 * @param hot how it fits warm, its plunger free
 * @param coldSlackMm chain that is over cold, its plunger fully back or without one; below zero it
 *     lacks
 * @param hotSlackMm the same warm
 * @param travelLeftHotMm plunger travel that is left warm; nothing without a tensioner or a fit
 */
public record HotFit(
    ChainFit cold,
    ChainFit hot,
    double coldSlackMm,
    double hotSlackMm,
    OptionalDouble travelLeftHotMm) {

  /**
   * @param pitchMm mean pitch cold, stretch included
   * @throws IllegalArgumentException if there is no path cold or warm
   */
  public static HotFit of(ChainInPlace chain, double pitchMm, Heat heat) {
    ChainInPlace warm = heat.hot(chain);
    double warmPitch = pitchMm * heat.chainFactor();
    ChainFit hot = Fitting.fit(warm, warmPitch, OptionalDouble.empty());
    return new HotFit(
        Fitting.fit(chain, pitchMm, OptionalDouble.empty()),
        hot,
        slackBackMm(chain, pitchMm),
        slackBackMm(warm, warmPitch),
        travelLeft(chain.chain(), hot));
  }

  private static double slackBackMm(ChainInPlace chain, double pitchMm) {
    if (Routing.of(chain, pitchMm, 0) instanceof Routing.Routed routed) {
      return (chain.chain().links() - routed.path().pitches()) * pitchMm;
    }
    throw new IllegalArgumentException("chain " + chain.chain().name() + " has no path");
  }

  private static OptionalDouble travelLeft(Chain chain, ChainFit hot) {
    if (chain.tensioner().isEmpty()) {
      return OptionalDouble.empty();
    }
    double travel = chain.tensioner().get().plunger().travelMm();
    if (hot instanceof ChainFit.Solved solved) {
      return OptionalDouble.of(travel - solved.extensionMm().orElse(0));
    }
    return hot instanceof ChainFit.OutOfTravel ? OptionalDouble.of(0) : OptionalDouble.empty();
  }

  /** By how much the path outgrows the chain, mm; below zero the chain outgrows the path. */
  public double growthMm() {
    return coldSlackMm - hotSlackMm;
  }

  /** Whether a chain that goes on cold is too short warm. */
  public boolean tooTightHot() {
    return coldSlackMm >= 0 && hotSlackMm < 0;
  }
}
