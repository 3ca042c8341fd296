package tightside.session;

/**
 * One sentence to be shown.
 *
 * @param topic what it is about, so that it finds its place
 */
public record Sentence(Topic topic, String text) {

  /** What a sentence can be about. */
  public enum Topic {
    /** Something that can hurt people or engines, or makes what is shown worthless. */
    CAUTION,
    /** What the counts say. */
    COUNTS,
    /** What the counts leave open. */
    UNPROVED,
    /** Where a shaft stands. */
    SHAFT,
    /** Where a tensioner stands. */
    TENSIONER,
    /** Where the painted links are. */
    PAINT
  }
}
