package tightside.survey;

/**
 * How far measurements are believed. A normal law alone is too sure of itself in its tails: people
 * misread rules by whole centimetres, and their idea of their own uncertainty is an estimate. Both
 * are taken into account when the odds of a count are worked out, with figures of common practice,
 * no source; the study of surveys shows what they lead to.
 */
final class Doubt {

  /** The share of readings that are blunders: misread, misplaced, written down wrong. */
  static final double BLUNDER_SHARE = 0.005;

  /** A blunder's own spread, mm or degrees. */
  static final double BLUNDER_SIZE = 10;

  /** The stated uncertainties are worth as much as a spread estimated from so many readings. */
  static final double STATED_AS_GOOD_AS = 30;

  /** From here on a count is called sure. */
  static final double SURE = 0.99;

  private Doubt() {}

  /** By how much a blunder enlarges a measurement's variance, in units of that variance. */
  static double enlarged(double sigma) {
    double times = BLUNDER_SIZE / sigma;
    return times * times;
  }
}
