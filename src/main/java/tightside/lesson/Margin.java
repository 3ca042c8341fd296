package tightside.lesson;

import tightside.words.Numbers;

/**
 * How near an amount has to be to count as right.
 *
 * @param absolute in the unit of the amount
 * @param share of the right amount; the larger of both holds
 */
public record Margin(double absolute, double share) {

  static final Margin EXACT = new Margin(0, 0);

  public Margin {
    if (!(absolute >= 0 && share >= 0 && share < 1)) {
      throw new IllegalArgumentException("a margin is no less than 0, and a share less than 1");
    }
  }

  boolean allows(double right, double predicted) {
    return Math.abs(predicted - right) <= Math.max(absolute, share * Math.abs(right)) + 1e-9;
  }

  /** It tells nothing of the right amount. */
  public String words() {
    if (share > 0) {
      return "right within " + Numbers.fixed(100 * share, 0) + " %";
    }
    return absolute == 0 ? "right if exact" : "right within " + Numbers.plain(absolute);
  }
}
