package tightside.timing;

import tightside.drive.Chain;
import tightside.drive.Limits;

/** Stretch as measured with a calliper over some pitches of a chain pulled tight. */
public sealed interface CalliperStretch {

  /**
   * A reading that can be meant.
   *
   * @param percent elongation in percent of the new length; a little below 0 where a new chain is
   *     measured short
   */
  record Measured(double percent) implements CalliperStretch {

    /** The stretch to reckon with: a chain does not shrink. */
    public double stretchPercent() {
      return Math.max(0, percent);
    }
  }

  /** A reading that can't be used. */
  record Refused(Why why) implements CalliperStretch {}

  /** What is wrong with a reading. */
  enum Why {
    /** Nobody knows what the pitch was when new. */
    PITCH_NOT_KNOWN,
    /** Less than two pitches. */
    TOO_FEW_PITCHES,
    /** Wear grows alternate pitches: an odd number of them gives too much or too little. */
    ODD_PITCHES,
    /** More pitches than the chain has links. */
    MORE_THAN_THE_CHAIN,
    /** Shorter than a new chain: pitches left out, or the chain not pulled tight. */
    SHORTER_THAN_NEW,
    /** More than any chain lasts: pitches counted wrong, or the wrong unit. */
    LONGER_THAN_ANY_WEAR
  }

  /**
   * How far below new a reading may lie, percent. Common practice, no source: over ten pitches of 8
   * mm it is 0.4 mm, far more than a calliper errs and far less than one pitch.
   */
  double SHORTEST_PERCENT = -0.5;

  /**
   * The stretch from a length L over n pitches p: (L - n p) / (n p) x 100. Formula as printed at
   * jcs-hoisting.com, "answers to some questions about chain of manual".
   *
   * @param pitches an even number
   * @param lengthMm from roller centre to roller centre: half of the inside and the outside measure
   *     together
   */
  static CalliperStretch of(Chain chain, int pitches, double lengthMm) {
    if (pitches < 2) {
      return new Refused(Why.TOO_FEW_PITCHES);
    }
    if (pitches % 2 != 0) {
      return new Refused(Why.ODD_PITCHES);
    }
    if (pitches > chain.links()) {
      return new Refused(Why.MORE_THAN_THE_CHAIN);
    }
    if (chain.size().pitchMm().isEmpty()) {
      return new Refused(Why.PITCH_NOT_KNOWN);
    }
    double newMm = pitches * chain.pitchMm();
    double percent = (lengthMm - newMm) / newMm * 100;
    if (percent < SHORTEST_PERCENT) {
      return new Refused(Why.SHORTER_THAN_NEW);
    }
    boolean worn = percent < Limits.STRETCH_PERCENT.most();
    return worn ? new Measured(percent) : new Refused(Why.LONGER_THAN_ANY_WEAR);
  }
}
