package tightside.timing;

import java.util.OptionalDouble;
import org.apache.commons.numbers.rootfinder.BrentSolver;
import tightside.drive.Chain;
import tightside.drive.ChainFit;
import tightside.drive.ChainInPlace;
import tightside.drive.Drive;
import tightside.drive.Fitting;
import tightside.drive.Limits;
import tightside.drive.Routing;

/** At what stretch a chain's tensioner runs out of travel. */
public final class StretchLimit {

  /** Percent; a thousandth of a micrometre on a chain of one metre. */
  private static final double NEAR = 1e-10;

  private StretchLimit() {}

  /**
   * The stretch, in percent of the new length, up to which the tensioner keeps the chain tight: the
   * chain, laid round its sprockets with the plunger at full travel, is then just used up.
   *
   * @return nothing without a tensioner, in a drive that is counted only, where the new chain does
   *     not fit, and where the tensioner does not run out within {@link Limits#STRETCH_PERCENT}
   */
  public static OptionalDouble of(Drive drive, Chain chain) {
    if (chain.countedOnly() || chain.tensioner().isEmpty()) {
      return OptionalDouble.empty();
    }
    ChainInPlace inPlace = drive.inPlace(chain);
    double most = Limits.STRETCH_PERCENT.most();
    if (!fitsWhenNew(inPlace) || excess(inPlace, most) <= 0) {
      return OptionalDouble.empty();
    }
    double limit =
        excess(inPlace, 0) == 0
            ? 0
            : new BrentSolver(NEAR, NEAR, 1e-15).findRoot(p -> excess(inPlace, p), 0, most);
    boolean runsOut = fit(inPlace, limit + 10 * NEAR) instanceof ChainFit.OutOfTravel;
    return runsOut ? OptionalDouble.of(limit) : OptionalDouble.empty();
  }

  /** Long enough with the plunger pushed back, and not over with the plunger out. */
  private static boolean fitsWhenNew(ChainInPlace inPlace) {
    ChainFit back = Fitting.fit(inPlace, inPlace.chain().pitchMm(), OptionalDouble.of(0));
    return back instanceof ChainFit.Solved && excess(inPlace, 0) <= 0;
  }

  private static ChainFit fit(ChainInPlace inPlace, double percent) {
    return Fitting.fit(inPlace, inPlace.chain().pitchStretchedMm(percent), OptionalDouble.empty());
  }

  /**
   * Chain that is over with the plunger at full travel, pitches: negative while there is travel
   * left. A chain that finds no way round counts as past it; {@link #of} tells the two apart.
   */
  private static double excess(ChainInPlace inPlace, double percent) {
    double travel = inPlace.chain().tensioner().orElseThrow().plunger().travelMm();
    return Routing.of(inPlace, inPlace.chain().pitchStretchedMm(percent), travel)
            instanceof Routing.Routed routed
        ? inPlace.chain().links() - routed.path().pitches()
        : 1;
  }
}
