package tightside.timing;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.numbers.rootfinder.BrentSolver;
import tightside.drive.Chain;
import tightside.drive.Drive;
import tightside.drive.TautPath;

/** The slack of a chain as its plunger goes back, every shaft locked at the reference position. */
public final class SlackByExtension {

  /** Steps in which the travel is searched. */
  private static final int STEPS = 16;

  private final LockedChain locked;
  private final double travelMm;

  private SlackByExtension(LockedChain locked, double travelMm) {
    this.locked = locked;
    this.travelMm = travelMm;
  }

  /**
   * @return nothing where the new chain does not fit
   */
  public static Optional<SlackByExtension> of(Drive drive, Chain chain, double stretchPercent) {
    double travel = chain.tensioner().map(t -> t.plunger().travelMm()).orElse(0.0);
    return LockedChain.of(drive, chain, stretchPercent).map(l -> new SlackByExtension(l, travel));
  }

  /** Slack of the loop, mm; below zero past the place where the chain is taut. */
  public double loopMm(double extensionMm) {
    return path(extensionMm).map(locked::slackMm).orElse(Double.NaN);
  }

  /** The strand that carries the tensioner, or that leaves the driver where there is none. */
  public Optional<Strand> slackSide() {
    return locked.reference().strands().stream().filter(s -> !s.taut()).findFirst();
  }

  /** Slack of that strand, mm, once the lay gives it other links. */
  public double slackSideMm(double extensionMm, Reseating lay) {
    List<Strand> strands = locked.reference().strands();
    Optional<Strand> side = slackSide();
    Optional<TautPath> path = path(extensionMm);
    if (side.isEmpty() || path.isEmpty()) {
      return Double.NaN;
    }
    return locked.strandSlacksMm(path.get()).get(strands.indexOf(side.get()))
        + lay.linksGained(side.get()) * locked.pitchMm();
  }

  /**
   * How far the plunger still stands out when the loop first has so much slack as it goes back, mm.
   *
   * @return nothing where even a plunger that is fully back does not leave it
   */
  public OptionalDouble extensionFor(double slackMm) {
    return taut(e -> loopMm(e) - slackMm);
  }

  /**
   * Where the plunger stands once it is let go while every shaft is still locked: where the slack
   * side is taut.
   *
   * @return 0 where it stays pushed back, the full travel where it runs out
   */
  public double extensionLetGo(Reseating lay) {
    if (!(slackSideMm(0, lay) > 0)) {
      return 0;
    }
    return taut(e -> slackSideMm(e, lay)).orElse(travelMm);
  }

  /** The smallest extension at which a slack, above zero at 0, is used up. */
  private OptionalDouble taut(DoubleUnaryOperator slack) {
    double before = 0;
    if (slack.applyAsDouble(0) < 0) {
      return OptionalDouble.empty();
    }
    for (int i = 1; i <= STEPS; i++) {
      double here = travelMm * i / STEPS;
      if (slack.applyAsDouble(here) <= 0) {
        return OptionalDouble.of(
            new BrentSolver(1e-12, 1e-10, 1e-12).findRoot(slack, before, here));
      }
      before = here;
    }
    return OptionalDouble.empty();
  }

  private Optional<TautPath> path(double extensionMm) {
    return locked.path(OptionalDouble.of(extensionMm));
  }
}
