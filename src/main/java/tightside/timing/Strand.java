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
 * @param measured pitches from mark to mark, where the marks now stand; nothing in a drive that is
 *     counted only
 * @param links whole pitches from marked link to marked link
 * @param misfit pitches - links; nothing on a slack side without a tensioner, and nothing in a
 *     drive that is counted only
 * @param taut false for the slack side alone
 * @param seen what it takes to see it whole
 */
public record Strand(
    String from,
    String to,
    int fromPlace,
    int toPlace,
    OptionalDouble measured,
    long links,
    OptionalDouble misfit,
    boolean taut,
    Seen seen) {

  /** A strand of a drive with geometry. */
  public Strand(
      String from,
      String to,
      int fromPlace,
      int toPlace,
      double pitches,
      long links,
      OptionalDouble misfit,
      boolean taut,
      Seen seen) {
    this(from, to, fromPlace, toPlace, OptionalDouble.of(pitches), links, misfit, taut, seen);
  }

  /** Past this misfit a taut strand's count is not trusted, in pitches (model format 1). */
  public static final double TRUST_LIMIT = 0.25;

  /**
   * Pitches from mark to mark, where the marks now stand.
   *
   * @throws java.util.NoSuchElementException in a drive that is counted only; ask {@link #measured}
   */
  public double pitches() {
    return measured.orElseThrow();
  }

  /**
   * The same strand with links gained by a reseat, and pitches by stretch.
   *
   * @param over links gained (+) or lost (-)
   */
  Strand moved(int over, double grown) {
    return new Strand(
        from,
        to,
        fromPlace,
        toPlace,
        plus(measured, over + grown),
        links + over,
        plus(misfit, grown),
        taut,
        seen);
  }

  private static OptionalDouble plus(OptionalDouble known, double more) {
    return known.isPresent() ? OptionalDouble.of(known.getAsDouble() + more) : known;
  }

  /** The plain links that a person counts between the two marked ones. */
  public long between() {
    return links - 1;
  }

  public boolean trusted() {
    return !taut || Math.abs(misfit.orElse(0)) <= TRUST_LIMIT;
  }
}
