package tightside.timing;

/**
 * How far a shaft stands from its place.
 *
 * @param shaftDegrees the shaft's own degrees, positive = advanced in its own direction of rotation
 * @param crankDegrees the same in degrees of the crankshaft: shaft degrees x crank turns per turn
 *     of the shaft
 */
public record ShaftTiming(String shaft, double shaftDegrees, double crankDegrees) {

  public Lag lag() {
    return Lag.of(shaftDegrees);
  }
}
