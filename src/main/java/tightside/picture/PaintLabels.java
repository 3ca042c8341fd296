package tightside.picture;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import tightside.geometry.Bearing;
import tightside.timing.ChainSolution;
import tightside.timing.State;

/**
 * Where the paint has gone to after whole cycles of two turns, beside a painted link: then every
 * mark stands at its place again, and a person looks for the paint there.
 */
final class PaintLabels {

  private static final double CYCLE_DEGREES = 720;

  /** Crank degrees; far below what can be seen. */
  private static final double SAME_ANGLE = 1e-6;

  private PaintLabels() {}

  /** Cycles since the reference position; 0 there, and wherever no cycle is whole. */
  static long wholeCycles(State state) {
    double cycles = state.crankDegrees() / CYCLE_DEGREES;
    long nearest = Math.round(cycles);
    return Math.abs(cycles - nearest) * CYCLE_DEGREES < SAME_ANGLE ? nearest : 0;
  }

  static Optional<Label> of(ChainView view, double em) {
    long cycles = wholeCycles(view.solution().state());
    return cycles == 0 ? Optional.empty() : view.lay().map(lay -> label(view, lay, cycles, em));
  }

  private static Label label(ChainView view, ChainLay lay, long cycles, double em) {
    int place = view.chain().sprocketPlaces().get(0);
    return new Label(
        view.words(Ink.COUNT, place),
        view.words(Ink.LABEL, place),
        words(view.solved(), cycles),
        spots(view, lay, em));
  }

  static List<String> words(ChainSolution solved, long cycles) {
    BigInteger again = solved.realignCrankTurns();
    if (BigInteger.valueOf(2 * cycles).mod(again).signum() == 0) {
      return List.of("painted links", "at the marks again");
    }
    int links = solved.chain().links();
    double on = solved.advancePitches() - links * Math.floor(solved.advancePitches() / links);
    boolean whole = Math.abs(on - Math.rint(on)) < SAME_ANGLE;
    return List.of(
        "painted links",
        Decimals.fixed(on, whole ? 0 : 1) + " of " + links + " further on",
        "at the marks after " + again + " turns");
  }

  private static List<Label.Spot> spots(ChainView view, ChainLay lay, double em) {
    Vector2D at = lay.firstPainted();
    double start = 0.6 * view.plateMm();
    List<Label.Spot> spots = new ArrayList<>();
    for (double gap : new double[] {1.3 * em, 2.4 * em, 4 * em, 6 * em}) {
      for (int bearing = 0; bearing < 360; bearing += 30) {
        spots.add(new Label.Spot(at, new Bearing(bearing).direction(), start, start + gap));
      }
    }
    return spots;
  }
}
