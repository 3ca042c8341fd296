package tightside.lesson;

/** Which way a shaft stands off, in its own rotation. */
public enum Way {
  ADVANCED,
  RETARDED,
  NEITHER;

  /**
   * @param degrees positive = advanced
   */
  static Way of(double degrees) {
    return degrees > 0 ? ADVANCED : degrees < 0 ? RETARDED : NEITHER;
  }

  public String words() {
    return switch (this) {
      case ADVANCED -> "advanced";
      case RETARDED -> "retarded";
      case NEITHER -> "neither";
    };
  }
}
