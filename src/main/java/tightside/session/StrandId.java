package tightside.session;

import tightside.timing.Strand;

/** Which strand, by its chain and the shafts at its ends in the direction of travel. */
public record StrandId(String chain, String from, String to) {

  public static StrandId of(String chain, Strand strand) {
    return new StrandId(chain, strand.from(), strand.to());
  }
}
