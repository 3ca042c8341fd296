package tightside.survey;

/**
 * Links counted on the engine from one marked link to the next in the direction of travel.
 *
 * @param from shaft whose sprocket the strand leaves
 * @param to shaft whose sprocket it arrives at
 */
public record CountedLinks(String chain, String from, String to, long links) {

  public CountedLinks {
    if (links < 1) {
      throw new IllegalArgumentException("a strand has a link or more, not " + links);
    }
  }
}
