package tightside.lesson;

import tightside.drive.Limits;
import tightside.words.Numbers;

/** In what an amount is asked for. It has a size and no sign. */
public enum Quantity {
  CRANK_DEGREES("How far off?", new Limits(0, 720, "crank degrees"), 1),
  SHAFT_DEGREES("How far off, in degrees of that shaft?", new Limits(0, 360, "degrees"), 1),
  CRANK_TURNS("Paint meets the marks again after", new Limits(0, 1_000_000, "crank turns"), 0),
  COMPRESSION("Compression is then", new Limits(0, 40, "to 1"), 1);

  private final String question;
  private final Limits limits;
  private final int decimals;

  Quantity(String question, Limits limits, int decimals) {
    this.question = question;
    this.limits = limits;
    this.decimals = decimals;
  }

  public String question() {
    return question;
  }

  public Limits limits() {
    return limits;
  }

  /** With the digits that it deserves, and its unit. */
  public String words(double amount) {
    return Numbers.fixed(amount, decimals) + " " + limits.unit();
  }
}
