package tightside.timing;

import java.util.OptionalDouble;

/** How a chain settles as it wears, with every sprocket on its tooth. */
interface Settling {

  /**
   * How far the sprocket at a place of the route has turned ahead of the driving one, its own
   * degrees: on taut strands that keep the pitches that they had. Exactly 0 for a new chain.
   *
   * @return nothing where it is not known
   */
  OptionalDouble degreesAhead(int place);

  /** Pitches by which the path has grown, all of them on the slack side. */
  double grownPitches();
}
