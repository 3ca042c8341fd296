package tightside.drive;

/**
 * The range outside which a number can't be meant: wide enough for anything from a model engine to
 * a ship's, narrow enough to catch a slip of the decimal point or the unit.
 *
 * @param least smallest value taken
 * @param most largest value taken
 * @param unit in which both are meant
 */
public record Limits(double least, double most, String unit) {

  public static final Limits POSITION_MM = new Limits(-10_000, 10_000, "mm");
  public static final Limits PITCH_MM = new Limits(2, 120, "mm");
  public static final Limits PLATE_HEIGHT_MM = new Limits(0.5, 120, "mm");
  public static final Limits ROLLER_DIAMETER_MM = new Limits(0.5, 100, "mm");
  public static final Limits LINKS = new Limits(6, 2_000, "links");
  public static final Limits TEETH = new Limits(6, 300, "teeth");
  public static final Limits TRAVEL_MM = new Limits(0.1, 200, "mm");
  public static final Limits STEP_MM = new Limits(0.05, 50, "mm");
  public static final Limits BEARING_DEGREES = new Limits(-360, 360, "degrees");
  public static final Limits STRETCH_PERCENT = new Limits(0, 10, "percent");

  public boolean allow(double value) {
    return value >= least && value <= most;
  }

  void refuseOutside(String what, double value) {
    if (!allow(value)) {
      throw new IllegalArgumentException(
          what + " lies from " + least + " to " + most + " " + unit + ", not " + value);
    }
  }
}
