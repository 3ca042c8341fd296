package tightside.engine;

import java.util.OptionalDouble;

/**
 * Compression of a cylinder.
 *
 * @param nominal over the whole stroke, to 1
 * @param closed from where the intake valve closes, to 1; nothing where no intake valve is known
 */
public record Squeeze(double nominal, OptionalDouble closed) {

  /**
   * The exponent that cranking is mostly reckoned with: real ones lie from 1.2 to 1.3, without loss
   * of heat it is 1.4 (Wikipedia, "Compression ratio").
   */
  public static final double USUAL_EXPONENT = 1.3;

  /** Standard atmosphere, bar. */
  public static final double ATMOSPHERE_BAR = 1.01325;

  /**
   * The compression that is left of a stroke: 1 + (nominal - 1) x share, from the volumes.
   *
   * @param share of the stroke by which the piston stands below top dead centre
   */
  public static double over(double nominal, double share) {
    return 1 + (nominal - 1) * share;
  }

  /** Absolute pressure after compression, p x ratio^exponent, in the unit of p. */
  public static double pressure(double from, double ratio, double exponent) {
    return from * Math.pow(ratio, exponent);
  }

  /**
   * An estimate of what a gauge shows when the engine is cranked, bar over the atmosphere. Leakage,
   * speed and heat move it by much; only comparing cylinders, or before and after, says anything.
   */
  public OptionalDouble crankingGaugeBar(double exponent) {
    return closed.isEmpty()
        ? OptionalDouble.empty()
        : OptionalDouble.of(
            pressure(ATMOSPHERE_BAR, closed.getAsDouble(), exponent) - ATMOSPHERE_BAR);
  }
}
