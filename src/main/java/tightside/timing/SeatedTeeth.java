package tightside.timing;

import java.util.Optional;
import tightside.drive.Chain;
import tightside.drive.ChainKind;
import tightside.geometry.PitchCircle;
import tightside.geometry.ToothHeights;

/** The teeth of the sprockets on a chain, as far as a standard knows them. */
final class SeatedTeeth {

  private SeatedTeeth() {}

  /**
   * @return nothing for a toothed chain, whose teeth are another standard's
   */
  static Optional<ToothHeights> at(Chain chain, int place) {
    boolean known = chain.kind() != ChainKind.TOOTHED && chain.rollerDiameterMm() < chain.pitchMm();
    return known
        ? Optional.of(
            new ToothHeights(
                new PitchCircle(chain.sprocketAt(place).teeth(), chain.pitchMm()),
                chain.rollerDiameterMm()))
        : Optional.empty();
  }

  /**
   * @throws IllegalArgumentException if the shaft has no sprocket on the chain
   */
  static int placeOf(Chain chain, String shaft) {
    return chain.sprocketPlaces().stream()
        .filter(place -> chain.sprocketAt(place).shaft().equals(shaft))
        .findFirst()
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "chain " + chain.name() + " has no sprocket on " + shaft));
  }
}
