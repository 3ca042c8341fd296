package tightside.lesson;

/** The parts of a prediction, each marked on its own. */
public enum Part {
  CAUSE,
  SPROCKET,
  DIRECTION,
  AMOUNT;

  public String words() {
    return name().charAt(0) + name().substring(1).toLowerCase(java.util.Locale.ROOT);
  }
}
