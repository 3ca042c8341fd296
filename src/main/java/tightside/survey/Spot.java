package tightside.survey;

/** A spot of a part from which or to which a ruler is laid. */
public enum Spot {
  /** The centre of a shaft. */
  CENTRE,
  /** The start of a rubbing face, in the direction of travel. */
  START,
  /** The middle of a rubbing face. */
  MIDDLE,
  /** The end of a rubbing face. */
  END,
  /** What a tensioner's arm turns on. */
  PIVOT,
  /** The centre of an arm's round pad. */
  PAD
}
