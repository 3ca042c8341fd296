package tightside.geometry;

/**
 * How far the teeth of a sprocket for roller or bush chain stand out, between the least and the
 * most that the standard leaves.
 *
 * @param rollerDiameterMm roller or bush diameter d1
 */
public record ToothHeights(PitchCircle circle, double rollerDiameterMm) {

  public ToothHeights {
    if (!(rollerDiameterMm > 0) || rollerDiameterMm >= circle.pitchMm()) {
      throw new IllegalArgumentException(
          "rollers of " + rollerDiameterMm + " mm do not fit a pitch of " + circle.pitchMm());
    }
  }

  /** da = d + p (1 - 1.6 / z) - d1 (ISO 606, 5.3). */
  public double leastTipDiameterMm() {
    double p = circle.pitchMm();
    return circle.diameterMm() + p * (1 - 1.6 / circle.teeth()) - rollerDiameterMm;
  }

  /** da = d + 1.25 p - d1 (ISO 606, 5.3). */
  public double mostTipDiameterMm() {
    return circle.diameterMm() + 1.25 * circle.pitchMm() - rollerDiameterMm;
  }

  /** Half way between the two. */
  public double meanTipDiameterMm() {
    return (leastTipDiameterMm() + mostTipDiameterMm()) / 2;
  }

  /**
   * How far a seated roller has to move outwards to pass over the tip of a tooth, mm: tip radius -
   * pitch radius + roller radius, with the mean tip diameter.
   */
  public double liftMm() {
    return (meanTipDiameterMm() - circle.diameterMm() + rollerDiameterMm) / 2;
  }
}
