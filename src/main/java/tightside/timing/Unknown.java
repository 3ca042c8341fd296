package tightside.timing;

import java.util.List;

/**
 * Something that a solution does not know.
 *
 * @param chain of which it is said
 * @param shafts one, or the two ends of a strand
 */
public record Unknown(Kind kind, String chain, List<String> shafts) {

  /** What is not known. */
  public enum Kind {
    /** Nobody can see the strand, so nobody can count it. */
    STRAND_NEVER_SEEN,
    /** Nobody can see the mark. */
    MARK_NEVER_SEEN,
    /** The sprocket bears no mark: no count starts or ends there. */
    MARK_MISSING,
    /** The sprocket is held by clamp alone: the lay of the links fixes no angle. */
    FRICTION_JOINT,
    /** The engine went backwards last: the pulled side has moved, and no angle holds. */
    TURNED_BACK,
    /** The plunger is held: the chain is not taut all round, and no angle is held by it. */
    PLUNGER_HELD,
    /** The chain finds no way round: it says nothing of the shafts that it drives. */
    NO_WAY_ROUND,
    /** The drive is counted only: nobody knows the chain's path, nor where its plunger stands. */
    COUNTED_ONLY,
    /** A worn chain's pitch is not known, so neither is what its wear does. */
    PITCH_MISSING,
    /** The length of a worn chain's free run is not known, so neither is what its wear does. */
    RUN_MISSING,
    /** The chain's own driving shaft can't be timed, so neither can what it drives. */
    DRIVER_UNTIMED
  }

  public Unknown {
    shafts = List.copyOf(shafts);
  }
}
