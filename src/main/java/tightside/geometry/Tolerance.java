package tightside.geometry;

/**
 * How near is near enough, and why.
 *
 * @param value positive
 * @param unit in which the value is meant
 * @param reason why this value
 */
public record Tolerance(String name, double value, String unit, String reason) {

  /** Below this a length is rounding, not geometry. */
  public static final Tolerance TOUCH =
      new Tolerance("touch", 1e-9, "mm", "a millionth of a micrometre: far above double rounding");

  /** Below this a turn of heading is rounding. */
  public static final Tolerance TURN =
      new Tolerance("turn", 1e-9, "degrees", "under 1e-8 mm of arc on the largest sprocket");

  /** A face whose middle lies nearer to its chord than this is straight. */
  public static final Tolerance STRAIGHT_FACE =
      new Tolerance("straight face", 0.01, "mm", "fixed by the model format, version 1");

  public Tolerance {
    if (!(value > 0)) {
      throw new IllegalArgumentException(name + ": a tolerance must be positive, not " + value);
    }
  }

  public boolean exceededBy(double amount) {
    return amount > value;
  }
}
