package tightside.sheet;

/**
 * A stretch of readings that say the same.
 *
 * @param from least reading, included
 * @param to largest reading, included
 */
public record Band(double from, double to, Judgement says) {

  public Band {
    if (!(from <= to)) {
      throw new IllegalArgumentException("a band runs upward, not from " + from + " to " + to);
    }
  }

  boolean holds(double reading) {
    return reading >= from && reading <= to;
  }
}
