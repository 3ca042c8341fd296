package tightside.timing;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import tightside.drive.Chain;
import tightside.drive.Drive;
import tightside.drive.TautPath;

/** What comes of holding a chain's tensioner pushed back with every shaft locked. */
public sealed interface HeldBack permits HoldBack, HeldBack.NotPossible {

  /** Nothing can be said of it. */
  record NotPossible(Reason reason) implements HeldBack {}

  /** Why nothing can be said. */
  enum Reason {
    /** The drive is counted only: without its geometry nobody knows how much chain is over. */
    COUNTED_ONLY,
    /** The new chain does not fit its drive, or a mark is not under it. */
    NEW_CHAIN_DOES_NOT_FIT,
    /** The plunger has no such travel, or there is no plunger. */
    OUTSIDE_TRAVEL,
    /** No chain runs through the route with the plunger there. */
    NO_PATH
  }

  /** A new chain, the plunger fully pushed back, nothing known of the tools. */
  static HeldBack of(Drive drive, Chain chain) {
    return of(drive, chain, OptionalDouble.empty(), 0, LockingPlay.unknown());
  }

  /**
   * @param extensionMm at which the plunger is held; fully pushed back unless given
   * @param stretchPercent of the chain
   */
  static HeldBack of(
      Drive drive,
      Chain chain,
      OptionalDouble extensionMm,
      double stretchPercent,
      LockingPlay play) {
    if (drive.countedOnly()) {
      return new NotPossible(Reason.COUNTED_ONLY);
    }
    if (extensionMm.isPresent() && outside(chain, extensionMm.getAsDouble())) {
      return new NotPossible(Reason.OUTSIDE_TRAVEL);
    }
    Optional<LockedChain> locked = LockedChain.of(drive, chain, stretchPercent);
    if (locked.isEmpty()) {
      return new NotPossible(Reason.NEW_CHAIN_DOES_NOT_FIT);
    }
    Optional<TautPath> path = locked.get().path(extensionMm);
    Optional<TautPath> newPath = locked.get().whenNew().path(extensionMm);
    if (path.isEmpty() || newPath.isEmpty()) {
      return new NotPossible(Reason.NO_PATH);
    }
    return new HoldBack(
        drive,
        locked.get().inPlace(),
        extensionMm.orElse(0),
        path.get(),
        locked.get().slackMm(path.get()),
        strands(locked.get(), path.get(), newPath.get()),
        play.strandMm(drive, chain, locked.get().pitchMm()));
  }

  private static boolean outside(Chain chain, double extensionMm) {
    double travel = chain.tensioner().map(t -> t.plunger().travelMm()).orElse(-1.0);
    return !(extensionMm >= 0 && extensionMm <= travel);
  }

  private static List<LooseStrand> strands(LockedChain locked, TautPath path, TautPath newPath) {
    List<Double> slacks = locked.strandSlacksMm(path);
    List<Double> whenNew = locked.whenNew().strandSlacksMm(newPath);
    List<Strand> strands = locked.reference().strands();
    return IntStream.range(0, strands.size())
        .mapToObj(
            i ->
                new LooseStrand(
                    strands.get(i),
                    slacks.get(i),
                    slacks.get(i) - whenNew.get(i),
                    StrandLegs.longestRunMm(path, strands.get(i))))
        .toList();
  }
}
