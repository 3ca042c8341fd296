package tightside.timing;

import java.math.BigInteger;
import java.util.List;
import java.util.Optional;
import tightside.drive.Chain;
import tightside.drive.ChainFit;
import tightside.geometry.Rotation;

/**
 * What is known of one chain.
 *
 * @param travel the way it runs round its loop
 * @param whenNew how the new chain fits
 * @param fit how it fits as it is
 * @param tensioner where its tensioner stands; nothing without one, or without a path
 * @param marksOff marks that are not under the new chain; then there are no strands
 * @param strands in the direction of travel from the driving sprocket; empty where the new chain
 *     does not fit
 * @param realignCrankTurns after how many turns of the crankshaft the same links meet the same
 *     marks
 * @param advancePitches how far the chain has moved from the reference position, in pitches
 */
public record ChainSolution(
    Chain chain,
    Rotation travel,
    ChainFit whenNew,
    ChainFit fit,
    Optional<TensionerReading> tensioner,
    List<MarkOff> marksOff,
    List<Strand> strands,
    BigInteger realignCrankTurns,
    double advancePitches) {

  public ChainSolution {
    marksOff = List.copyOf(marksOff);
    strands = List.copyOf(strands);
  }

  public boolean countsTrusted() {
    return strands.stream().allMatch(Strand::trusted);
  }
}
