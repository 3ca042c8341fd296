package tightside.geometry;

/**
 * The circle on which the pins of a chain sit round a sprocket.
 *
 * @param teeth 3 or more
 * @param pitchMm the chain's mean pitch as it is, stretch included
 */
public record PitchCircle(int teeth, double pitchMm) {

  public PitchCircle {
    if (teeth < 3) {
      throw new IllegalArgumentException("a sprocket needs 3 teeth or more, not " + teeth);
    }
    if (!(pitchMm > 0) || Double.isInfinite(pitchMm)) {
      throw new IllegalArgumentException("a pitch must be positive, not " + pitchMm + " mm");
    }
  }

  /** r = p / (2 sin(180/z)): the pins are the corners of a regular polygon of side p. */
  public double radiusMm() {
    return pitchMm / (2 * Math.sin(Math.PI / teeth));
  }

  /** d = p / sin(180/z) (ISO 606, 5.3). */
  public double diameterMm() {
    return 2 * radiusMm();
  }

  /**
   * Diameter over the roots as a calliper meets them, less the roller: d for an even number of
   * teeth, d cos(90/z) for an odd one, where no gap stands opposite another (ASME B29.1, calliper
   * diameter plus roller diameter).
   */
  public double calliperDiameterMm() {
    return teeth % 2 == 0 ? diameterMm() : diameterMm() * Math.cos(Math.PI / (2 * teeth));
  }

  /** The angle from one tooth to the next, degrees. */
  public double toothDegrees() {
    return 360.0 / teeth;
  }
}
