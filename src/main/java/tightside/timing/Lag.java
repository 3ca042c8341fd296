package tightside.timing;

/** Where a shaft stands against its place, in its own direction of rotation. */
public enum Lag {
  ADVANCED,
  RIGHT,
  RETARDED;

  /** Within this many shaft degrees of its place a shaft is right: far below anything readable. */
  public static final double RIGHT_WITHIN_DEGREES = 1e-6;

  /**
   * @param shaftDegrees positive = ahead
   */
  public static Lag of(double shaftDegrees) {
    if (Math.abs(shaftDegrees) <= RIGHT_WITHIN_DEGREES) {
      return RIGHT;
    }
    return shaftDegrees > 0 ? ADVANCED : RETARDED;
  }
}
