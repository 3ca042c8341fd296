package tightside.session;

/**
 * What is shown large, for a class.
 *
 * @param projected whether bench and bars make way for one thing, one number and one question
 * @param item which thing: strands first, in the order of the model, then valves
 * @param answered whether the number is shown yet
 * @param sideBySide whether two states that are compared stand side by side, or one on the other
 */
public record Show(boolean projected, int item, boolean answered, boolean sideBySide) {

  public Show {
    if (item < 0) {
      throw new IllegalArgumentException("what is shown is counted from 0");
    }
  }

  /** The bench with all that lies on it. */
  public static Show bench() {
    return new Show(false, 0, true, false);
  }

  public Show projected(boolean other) {
    return new Show(other, item, answered, sideBySide);
  }

  /** Another thing; its number is shown if the last one's was. */
  public Show item(int other) {
    return new Show(projected, other, answered, sideBySide);
  }

  public Show answered(boolean other) {
    return new Show(projected, item, other, sideBySide);
  }

  public Show sideBySide(boolean other) {
    return new Show(projected, item, answered, other);
  }
}
