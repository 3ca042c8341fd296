package tightside.timing;

import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Whether a lay can come about while the tensioner is held back and the shafts are locked.
 *
 * @param possible whether no strand lacks more chain than the locking tools' play gives
 * @param missingMm what the strand lacks that lacks most; 0 where the lay is possible
 * @param lacking that strand; nothing where the lay is possible
 * @param turnNeededDegrees by shaft of the lay, in its own degrees: the least turn of its shafts,
 *     all by the same travel of the chain, with which the lay fits; 0 where it is possible; empty
 *     where no turn of these shafts is enough
 */
public record WrongLay(
    Reseating lay,
    boolean possible,
    double missingMm,
    Optional<Strand> lacking,
    Map<String, Double> turnNeededDegrees) {

  public WrongLay {
    turnNeededDegrees = Map.copyOf(turnNeededDegrees);
  }

  /** The turn that one of the lay's shafts needs, its own degrees. */
  public OptionalDouble turnNeeded(String shaft) {
    Double degrees = turnNeededDegrees.get(shaft);
    return degrees == null ? OptionalDouble.empty() : OptionalDouble.of(degrees);
  }
}
