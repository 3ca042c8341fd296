package tightside.lesson;

/** How far a lesson has come. */
public enum Stage {
  /** A prediction is being written; nothing moves and nothing is told. */
  PREDICT,
  /** It is written and can't be changed; still nothing is told. */
  COMMITTED,
  /** The engine may be turned and looked at from all sides. */
  TURNED,
  /** The prediction is marked and explained. */
  EXPLAINED;

  /** Whether what is wrong is still hidden. */
  public boolean hides() {
    return compareTo(TURNED) < 0;
  }
}
