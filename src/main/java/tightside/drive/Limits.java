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
  public static final Limits COUNT = new Limits(1, 2_000, "links");
  public static final Limits STRAIGHT_MM = new Limits(0, 10_000, "mm");
  public static final Limits TEETH = new Limits(6, 300, "teeth");
  public static final Limits TRAVEL_MM = new Limits(0.1, 200, "mm");
  public static final Limits STEP_MM = new Limits(0.05, 50, "mm");
  public static final Limits BEARING_DEGREES = new Limits(-360, 360, "degrees");
  public static final Limits STRETCH_PERCENT = new Limits(0, 10, "percent");
  public static final Limits BORE_MM = new Limits(5, 1_200, "mm");
  public static final Limits STROKE_MM = new Limits(5, 4_000, "mm");
  public static final Limits ROD_MM = new Limits(5, 6_000, "mm");
  public static final Limits COMPRESSION_RATIO = new Limits(2, 40, "to 1");
  public static final Limits LIFT_MM = new Limits(0.2, 150, "mm");
  public static final Limits DURATION_DEGREES = new Limits(30, 600, "crank degrees");
  public static final Limits CENTRELINE_DEGREES = new Limits(-360, 360, "crank degrees");
  public static final Limits TILT_DEGREES = new Limits(-60, 60, "degrees");
  public static final Limits GAP_MM = new Limits(0, 200, "mm");
  public static final Limits CRANK_DEGREES = new Limits(-720, 720, "crank degrees");
  public static final Limits SPRING_PRELOAD_N = new Limits(0, 50_000, "N");
  public static final Limits SPRING_RATE_N_PER_MM = new Limits(0, 5_000, "N/mm");
  public static final Limits PHASER_TRAVEL_DEGREES = new Limits(0.5, 120, "camshaft degrees");
  public static final Limits LOCKING_PLAY_DEGREES = new Limits(0, 15, "camshaft degrees");
  public static final Limits TORQUE = new Limits(0.1, 5_000, "of its unit");
  public static final Limits BOLT_DEGREES = new Limits(1, 1_080, "degrees");
  public static final Limits WRENCH_MM = new Limits(50, 3_000, "mm");
  public static final Limits ADAPTER_MM = new Limits(1, 1_000, "mm");
  public static final Limits ADAPTER_DEGREES = new Limits(0, 180, "degrees");

  public static final Limits SHAFTS = new Limits(1, 40, "shafts");
  public static final Limits CHAINS = new Limits(1, 12, "chains");
  public static final Limits ROUTE = new Limits(2, 40, "entries");
  public static final Limits CYLINDERS = new Limits(1, 24, "cylinders");
  public static final Limits BOLTS = new Limits(1, 24, "bolts");
  public static final Limits TIGHTENINGS = new Limits(1, 12, "steps");
  public static final Limits VALVES = new Limits(1, 64, "valves");

  public boolean allow(double value) {
    return value >= least && value <= most;
  }

  /**
   * @throws IllegalArgumentException for a value outside, or none at all
   */
  public void refuseOutside(String what, double value) {
    if (!allow(value)) {
      throw new IllegalArgumentException(
          what + " lies from " + least + " to " + most + " " + unit + ", not " + value);
    }
  }
}
