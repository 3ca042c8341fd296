package tightside.session;

import tightside.drive.Chain;
import tightside.drive.Limits;

/**
 * What a person counted on a strand.
 *
 * @param text as typed
 * @param way how it was counted
 */
public record Count(String text, CountingWay way) {

  /** The links from mark to mark, or what is wrong with what was typed. */
  public Typed links(Chain chain) {
    int less = way.toLinks();
    Limits limits = new Limits(1 - less, chain.links() - less, "links");
    Typed typed = Decimals.whole(text, "A count", limits);
    return typed instanceof Typed.Number n ? new Typed.Number(n.value() + less) : typed;
  }
}
