package tightside.timing;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import tightside.drive.Chain;

/**
 * How a chain's shafts and strands stand once the chain is worn, or lies on other teeth, than at
 * the reference position.
 */
record Drift(Datum datum, Settling settling, State state) {

  /**
   * The error of every driven shaft of this chain, shaft degrees, positive = advanced; those that
   * are not known are left out.
   *
   * <p>An error of the driving shaft passes on to every other in teeth, e x z(driver)/z. A sprocket
   * put back k teeth ahead turns its shaft by k x 360/z, and the driving one all others by -k x
   * 360/z of their own.
   *
   * @param driving the error of the driving shaft, its own degrees
   */
  Map<String, Double> errors(double driving) {
    Chain chain = datum.chain();
    double driverTeeth = driving * chain.driver().teeth() / 360 - teethOver(0);
    Map<String, Double> errors = new HashMap<>();
    for (int place : chain.sprocketPlaces()) {
      OptionalDouble settled = place == 0 ? OptionalDouble.empty() : settling.degreesAhead(place);
      if (settled.isPresent()) {
        double teeth = driverTeeth + teethOver(place);
        double degrees = teeth * 360 / chain.sprocketAt(place).teeth() + settled.getAsDouble();
        errors.put(chain.sprocketAt(place).shaft(), degrees + 0.0);
      }
    }
    return errors;
  }

  private int teethOver(int place) {
    Chain chain = datum.chain();
    return state.teethAt(new Seat(chain.name(), chain.sprocketAt(place).shaft()));
  }

  /** The strands to the marks where they now stand. */
  List<Strand> strands() {
    double grown = settling.grownPitches();
    return datum.strands().stream().map(s -> moved(s, s.taut() ? 0 : grown)).toList();
  }

  private Strand moved(Strand s, double grown) {
    return s.moved(teethOver(s.toPlace()) - teethOver(s.fromPlace()), grown);
  }
}
