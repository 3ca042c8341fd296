package tightside.readings;

/** When a check is made. */
public enum Moment {
  /** The sprockets are back, the plunger is let go, the shafts are still locked. */
  BEFORE_TURNING,
  /** The tools are out and the engine has been turned forward by hand, two turns. */
  AFTER_TURNING
}
