package tightside.timing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import tightside.drive.Chain;
import tightside.drive.ChainInPlace;
import tightside.drive.Drive;
import tightside.drive.Routing;
import tightside.drive.TautPath;

/**
 * A chain whose shafts are all locked at the reference position.
 *
 * @param pitchMm its mean pitch as it is
 */
record LockedChain(Reference reference, double pitchMm) {

  /**
   * @return nothing where the new chain does not fit, or a mark is not under it
   */
  static Optional<LockedChain> of(Drive drive, Chain chain, double stretchPercent) {
    Reference reference = Reference.of(drive, chain);
    return reference.sound()
        ? Optional.of(new LockedChain(reference, chain.pitchStretchedMm(stretchPercent)))
        : Optional.empty();
  }

  LockedChain whenNew() {
    return new LockedChain(reference, reference.chain().pitchMm());
  }

  ChainInPlace inPlace() {
    return reference.inPlace();
  }

  Optional<TautPath> path(OptionalDouble extensionMm) {
    return Routing.of(reference.inPlace(), pitchMm, extensionMm.orElse(0))
            instanceof Routing.Routed routed
        ? Optional.of(routed.path())
        : Optional.empty();
  }

  /** Chain that is over in the whole loop, mm; below zero it lacks. */
  double slackMm(TautPath path) {
    return (reference.chain().links() - path.pitches()) * pitchMm;
  }

  /** Chain that is over in each strand of the reference, mm; below zero it lacks. */
  List<Double> strandSlacksMm(TautPath path) {
    List<Double> slacks = new ArrayList<>();
    for (Strand strand : reference.strands()) {
      double pitches =
          pitchesToMark(path, strand.toPlace()) - pitchesToMark(path, strand.fromPlace());
      double whole = strand.toPlace() > strand.fromPlace() ? 0 : path.pitches();
      slacks.add((strand.links() - pitches - whole) * pitchMm);
    }
    return slacks;
  }

  /**
   * Pitches along a path to a mark that stands where it stood: on the teeth that the path has left
   * or has yet to reach, where the mark is not under it.
   */
  private double pitchesToMark(TautPath path, int place) {
    double into = reference.marks().get(place) - reference.path().pitchesTo(place);
    double later =
        reference
            .path()
            .arrivesAt(place)
            .signedTurnTo(path.arrivesAt(place), inPlace().senses().get(place));
    return path.pitchesTo(place) + into - later * reference.chain().sprocketAt(place).teeth() / 360;
  }
}
