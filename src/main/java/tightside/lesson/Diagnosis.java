package tightside.lesson;

/**
 * What is wrong, in the four parts that are marked apart.
 *
 * @param shaft whose sprocket it is, or which stands off the most; empty for none
 * @param way in which that shaft stands off
 * @param amount in the quantity that is asked for
 */
public record Diagnosis(Cause cause, String shaft, Way way, double amount) {

  public static final String NO_SHAFT = "";

  public Diagnosis {
    if (!Double.isFinite(amount) || amount < 0) {
      throw new IllegalArgumentException("an amount has a size, not " + amount);
    }
  }

  /** The shaft in words. */
  public String shaftWords() {
    return shaft.isEmpty() ? "none" : shaft;
  }
}
