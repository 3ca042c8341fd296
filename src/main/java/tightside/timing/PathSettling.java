package tightside.timing;

import java.util.OptionalDouble;
import tightside.drive.TautPath;

/**
 * How a chain settles, from its path as it is and its path when new.
 *
 * <p>Taut strands keep the pitches that they had. Timing runs from the driving sprocket both ways
 * up to the slack side.
 */
record PathSettling(Reference reference, TautPath now) implements Settling {

  /**
   * {@inheritDoc}
   *
   * <p>With s the pitches from where the path begins to a mark, before (0) and now (1), every taut
   * strand asks s1(i) - s1(driver) = s0(i) - s0(driver) on the driving side of the slack, with the
   * change of the whole path's pitches added beyond it. The mark then stands s1(i) less the pitches
   * up to the sprocket, in teeth, past the bearing where the chain arrives.
   */
  @Override
  public OptionalDouble degreesAhead(int place) {
    TautPath before = reference.path();
    double moved =
        before.pitchesTo(place)
            - now.pitchesTo(place)
            + (place > reference.slackAfter() ? grownPitches() : 0)
            - arrivalShift(0) * teeth(0) / 360;
    return OptionalDouble.of(moved * 360 / teeth(place) + arrivalShift(place));
  }

  @Override
  public double grownPitches() {
    return now.pitches() - reference.path().pitches();
  }

  private int teeth(int place) {
    return reference.chain().sprocketAt(place).teeth();
  }

  /** How far the bearing at which the chain arrives has moved, degrees ahead. */
  private double arrivalShift(int place) {
    return reference
        .path()
        .arrivesAt(place)
        .signedTurnTo(now.arrivesAt(place), reference.inPlace().senses().get(place));
  }
}
