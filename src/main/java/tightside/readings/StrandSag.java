package tightside.readings;

import java.util.List;
import java.util.OptionalDouble;
import tightside.timing.HoldBack;
import tightside.timing.LooseStrand;
import tightside.timing.Reseating;
import tightside.timing.Strand;

/**
 * What a thumb finds on a tight strand before anything turns, if the chain goes on with every shaft
 * locked.
 *
 * @param spareMm chain that is over in the wrong lay; below zero it lacks
 * @param rightMm sag of its longest straight run if the lay is right
 * @param wrongMm the same in the wrong lay; nothing where so much chain hangs in a loop
 */
public record StrandSag(
    Strand strand, double spareMm, OptionalDouble rightMm, OptionalDouble wrongMm) {

  /** Every tight strand, in the direction of travel. */
  public static List<StrandSag> of(HoldBack hold, Reseating lay) {
    return hold.strands().stream()
        .filter(loose -> loose.strand().taut())
        .map(loose -> of(loose, loose.slackMm(lay, hold.pitchMm())))
        .toList();
  }

  private static StrandSag of(LooseStrand loose, double spare) {
    return new StrandSag(loose.strand(), spare, loose.sagMm(loose.slackMm()), loose.sagMm(spare));
  }
}
