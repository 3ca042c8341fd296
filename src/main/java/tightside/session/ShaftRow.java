package tightside.session;

/**
 * A shaft as a row of text.
 *
 * @param shaftDegrees signed, positive = advanced
 * @param crankDegrees the same in degrees of the crankshaft
 * @param state advanced, right or retarded
 */
public record ShaftRow(
    String shaft, String role, String shaftDegrees, String crankDegrees, String state) {

  /** In place of an angle that is not known. */
  private static final String NONE = "\u2013";

  /** The same shaft, its timing not known. */
  ShaftRow unknown(String why) {
    return new ShaftRow(shaft, role, NONE, NONE, why);
  }

  public boolean known() {
    return !shaftDegrees.equals(NONE);
  }
}
