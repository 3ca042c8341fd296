package tightside.timing;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import tightside.drive.Chain;
import tightside.drive.TautPath;

/**
 * How a chain's shafts and strands stand once the chain lies on another path, or on other teeth,
 * than at the reference position.
 *
 * <p>Taut strands keep the pitches that they had. Timing runs from the driving sprocket both ways
 * up to the slack side.
 */
record Drift(Reference reference, TautPath now, State state) {

  /**
   * The error of every driven shaft of this chain, shaft degrees, positive = advanced.
   *
   * <p>With s the pitches from where the path begins to a mark, before (0) and now (1), every taut
   * strand asks s1(i) - s1(driver) = s0(i) - s0(driver) + k(i) - k(driver) on the driving side of
   * the slack, with the change of the whole path's pitches added beyond it. The mark then stands
   * s1(i) less the pitches up to the sprocket, in teeth, past the bearing where the chain arrives.
   *
   * @param driving the error of the driving shaft, its own degrees
   */
  Map<String, Double> errors(double driving) {
    Chain chain = reference.chain();
    TautPath before = reference.path();
    double grown = now.pitches() - before.pitches();
    double driverShift = teeth(0, driving - arrivalShift(0)) - teethOver(0);
    Map<String, Double> errors = new HashMap<>();
    for (int place : chain.sprocketPlaces()) {
      if (place == 0) {
        continue;
      }
      double moved =
          driverShift
              + teethOver(place)
              + before.pitchesTo(place)
              - now.pitchesTo(place)
              + (place > reference.slackAfter() ? grown : 0);
      double degrees = moved * 360 / chain.sprocketAt(place).teeth() + arrivalShift(place);
      errors.put(chain.sprocketAt(place).shaft(), degrees + 0.0);
    }
    return errors;
  }

  /** How far the bearing at which the chain arrives has moved, degrees ahead. */
  private double arrivalShift(int place) {
    return reference
        .path()
        .arrivesAt(place)
        .signedTurnTo(now.arrivesAt(place), reference.inPlace().senses().get(place));
  }

  private double teeth(int place, double degrees) {
    return degrees * reference.chain().sprocketAt(place).teeth() / 360;
  }

  private int teethOver(int place) {
    Chain chain = reference.chain();
    return state.teethAt(new Seat(chain.name(), chain.sprocketAt(place).shaft()));
  }

  /** The strands to the marks where they now stand. */
  List<Strand> strands() {
    double grown = now.pitches() - reference.path().pitches();
    return reference.strands().stream().map(s -> moved(s, s.taut() ? 0 : grown)).toList();
  }

  private Strand moved(Strand s, double grown) {
    int over = teethOver(s.toPlace()) - teethOver(s.fromPlace());
    double pitches = s.pitches() + over + grown;
    long links = s.links() + over;
    OptionalDouble misfit =
        s.misfit().isPresent()
            ? OptionalDouble.of(s.misfit().getAsDouble() + grown)
            : OptionalDouble.empty();
    return new Strand(
        s.from(), s.to(), s.fromPlace(), s.toPlace(), pitches, links, misfit, s.taut(), s.seen());
  }
}
