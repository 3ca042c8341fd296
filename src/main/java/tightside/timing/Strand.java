package tightside.timing;

import java.util.OptionalDouble;
import tightside.drive.Seen;

/**
 * The chain from one marked tooth to the next in the direction of travel.
 *
 * @param from shaft of the sprocket it leaves
 * @param to shaft of the sprocket it arrives at
 * @param fromPlace on the chain's route
 * @param toPlace on the chain's route
 * @param pitches from mark to mark, where the marks now stand
 * @param links whole pitches from marked link to marked link
 * @param misfit pitches - links; nothing on a slack side without a tensioner
 * @param taut false for the slack side alone
 * @param seen what it takes to see it whole
 */
public record Strand(
    String from,
    String to,
    int fromPlace,
    int toPlace,
    double pitches,
    long links,
    OptionalDouble misfit,
    boolean taut,
    Seen seen) {

  /** Past this misfit a taut strand's count is not trusted, in pitches (model format 1). */
  public static final double TRUST_LIMIT = 0.25;

  /** The plain links that a person counts between the two marked ones. */
  public long between() {
    return links - 1;
  }

  public boolean trusted() {
    return !taut || Math.abs(misfit.orElse(0)) <= TRUST_LIMIT;
  }
}
