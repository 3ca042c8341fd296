package tightside.readings;

/** Why a wrong lay stands where it does among the others, the most dangerous first. */
public enum LayReason {
  /** Possible with every shaft locked, and no check with the access at hand ever shows it. */
  NOTHING_SHOWS_IT,
  /** Possible with every shaft locked, and hidden until the engine is turned. */
  SHOWS_ONLY_ONCE_TURNED,
  /** Possible with every shaft locked, but a check shows it before anything turns. */
  SHOWS_WHILE_LOCKED,
  /** Possible once shafts are turned, by no more than slack and play excuse. */
  TURN_LOOKS_LIKE_SLACK,
  /** Possible once shafts are turned by more than the right tooth ever asks for. */
  TURN_IS_TOO_LARGE,
  /** No turn of these shafts gives the strand what it lacks. */
  NO_TURN_IS_ENOUGH;

  /** Whether the lay is possible with every shaft locked. */
  public boolean possibleWhileLocked() {
    return compareTo(SHOWS_WHILE_LOCKED) <= 0;
  }
}
