package tightside.drive;

import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.numbers.rootfinder.BrentSolver;

/** Lays a chain of a given number of links through its route and finds where the plunger stands. */
public final class Fitting {

  /** A chain that closes to this many pitches closes. */
  private static final double CLOSED = 1e-9;

  /** Steps in which the travel is searched for the first place where the chain closes. */
  private static final int STEPS = 8;

  private Fitting() {}

  /**
   * How the chain fits.
   *
   * @param pitchMm its mean pitch as it is
   * @param heldMm the extension at which the plunger is held; nothing if it is free
   * @throws IllegalArgumentException if the plunger is held beyond its travel
   */
  public static ChainFit fit(ChainInPlace chain, double pitchMm, OptionalDouble heldMm) {
    OptionalDouble travel =
        chain.chain().tensioner().stream().mapToDouble(t -> t.plunger().travelMm()).findFirst();
    if (heldMm.isPresent() && (travel.isEmpty() || outside(heldMm.getAsDouble(), travel))) {
      throw new IllegalArgumentException("the plunger can't be held at " + heldMm);
    }
    if (travel.isEmpty()) {
      return at(chain, pitchMm, OptionalDouble.empty());
    }
    if (heldMm.isPresent()) {
      return at(chain, pitchMm, heldMm);
    }
    return free(chain, pitchMm, travel.getAsDouble());
  }

  private static boolean outside(double heldMm, OptionalDouble travelMm) {
    return !(heldMm >= 0 && heldMm <= travelMm.getAsDouble());
  }

  private static ChainFit at(ChainInPlace chain, double pitchMm, OptionalDouble extensionMm) {
    Routing routing = Routing.of(chain, pitchMm, extensionMm.orElse(0));
    if (!(routing instanceof Routing.Routed routed)) {
      return (ChainFit) routing;
    }
    double over = chain.chain().links() - routed.path().pitches();
    return over < -CLOSED
        ? new ChainFit.TooShort(routed.path(), -over * pitchMm)
        : new ChainFit.Solved(routed.path(), extensionMm, Math.max(0, over) * pitchMm);
  }

  private static ChainFit free(ChainInPlace chain, double pitchMm, double travelMm) {
    ChainFit back = at(chain, pitchMm, OptionalDouble.of(0));
    if (!(back instanceof ChainFit.Solved loose)) {
      return back;
    }
    if (loose.slackMm() <= CLOSED * pitchMm) {
      return new ChainFit.Solved(loose.taut(), OptionalDouble.of(0), 0);
    }
    Search search = search(e -> excessPitches(chain, pitchMm, e), travelMm);
    Routing last = Routing.of(chain, pitchMm, search.extensionMm());
    if (!(last instanceof Routing.Routed routed)) {
      return (ChainFit) last;
    }
    if (search.closes()) {
      return new ChainFit.Solved(routed.path(), OptionalDouble.of(search.extensionMm()), 0);
    }
    double over = chain.chain().links() - routed.path().pitches();
    return new ChainFit.OutOfTravel(routed.path(), travelMm, over * pitchMm);
  }

  /** Pitches by which the path is longer than the chain; NaN where there is no path. */
  private static double excessPitches(ChainInPlace chain, double pitchMm, double extensionMm) {
    return Routing.of(chain, pitchMm, extensionMm) instanceof Routing.Routed routed
        ? routed.path().pitches() - chain.chain().links()
        : Double.NaN;
  }

  /**
   * Where a search along the travel ends.
   *
   * @param extensionMm where the chain closes; or else where the way is barred, or the full travel
   */
  private record Search(double extensionMm, boolean closes) {}

  /**
   * The smallest extension at which the excess, negative at 0, reaches zero. The travel is walked
   * in steps; a hump that rises and falls within two of them is climbed to its top. Where there is
   * no path the plunger can't pass: the search ends there.
   */
  private static Search search(DoubleUnaryOperator excess, double travelMm) {
    double[] at = new double[STEPS + 1];
    double[] value = new double[STEPS + 1];
    for (int i = 0; i <= STEPS; i++) {
      at[i] = travelMm * i / STEPS;
      value[i] = excess.applyAsDouble(at[i]);
      if (Double.isNaN(value[i])) {
        double edge = edge(excess, at[i - 1], at[i]);
        return excess.applyAsDouble(edge) >= 0
            ? new Search(brent(excess, at[i - 1], edge), true)
            : new Search(at[i], false);
      }
      if (i >= 2 && value[i - 1] > value[i - 2] && value[i - 1] > value[i] && value[i - 1] < 0) {
        double top = top(excess, at[i - 2], at[i]);
        if (excess.applyAsDouble(top) >= 0) {
          return new Search(brent(excess, at[i - 2], top), true);
        }
      }
      if (value[i] >= 0) {
        return new Search(brent(excess, at[i - 1], at[i]), true);
      }
    }
    return new Search(travelMm, false);
  }

  /** The last extension that leaves a path, between one that does and one that does not. */
  private static double edge(DoubleUnaryOperator excess, double from, double to) {
    double path = from;
    double none = to;
    while (none - path > 1e-9) {
      double middle = (path + none) / 2;
      if (Double.isNaN(excess.applyAsDouble(middle))) {
        none = middle;
      } else {
        path = middle;
      }
    }
    return path;
  }

  private static double brent(DoubleUnaryOperator excess, double from, double to) {
    return new BrentSolver(1e-14, 1e-12, 1e-15).findRoot(excess, from, to);
  }

  /** The top of a hump, by thirds. */
  private static double top(DoubleUnaryOperator excess, double from, double to) {
    double low = from;
    double high = to;
    while (high - low > 1e-9) {
      double third = (high - low) / 3;
      if (excess.applyAsDouble(low + third) < excess.applyAsDouble(high - third)) {
        low += third;
      } else {
        high -= third;
      }
    }
    return (low + high) / 2;
  }
}
