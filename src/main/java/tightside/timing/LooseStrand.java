package tightside.timing;

import java.util.OptionalDouble;
import tightside.geometry.Sag;

/**
 * A strand between two locked sprockets.
 *
 * @param strand as the new chain runs at the reference position
 * @param slackMm chain that is over, below zero what it lacks
 * @param wearMm how much of the slack is stretch: wear, not a mistake
 * @param longestRunMm its longest straight run
 */
public record LooseStrand(Strand strand, double slackMm, double wearMm, double longestRunMm) {

  /** What is over or lacks once the lay gives the strand other links, mm. */
  public double slackMm(Reseating lay, double pitchMm) {
    return slackMm + lay.linksGained(strand) * pitchMm;
  }

  /**
   * How far a thumb moves the middle of the longest straight run, mm, if all that is over lies
   * there, as an arc of a circle.
   *
   * @param extraMm chain that is over
   * @return nothing where so much chain hangs in a loop and not in an arc
   */
  public OptionalDouble sagMm(double extraMm) {
    if (!(longestRunMm > 0) || extraMm > longestRunMm * Sag.MOST_EXTRA) {
      return OptionalDouble.empty();
    }
    return OptionalDouble.of(Sag.arcMm(longestRunMm, extraMm));
  }
}
