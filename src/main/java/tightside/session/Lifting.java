package tightside.session;

import tightside.timing.Lay;
import tightside.timing.Seat;

/**
 * A sprocket lifted and carried round by hand. However far it goes before it is let go, that is one
 * step; brought back to where it was, it is none.
 *
 * @param teeth where it sat when it was lifted
 * @param gesture its own, so that two liftings are two steps
 */
public record Lifting(Seat seat, int teeth, String gesture) {

  /**
   * @param number of the lifting, another for each
   */
  public static Lifting begun(Snapshot now, Seat seat, long number) {
    return new Lifting(seat, now.state().teethAt(seat), "lifting " + number);
  }

  /**
   * @param carried teeth since it was lifted, ahead (+) or behind (-); it goes no further off its
   *     place than {@link Lay#MOST_TEETH}
   */
  public Edit to(Snapshot now, int carried) {
    int wanted = Math.max(-Lay.MOST_TEETH, Math.min(Lay.MOST_TEETH, teeth + carried));
    Edit step = Edits.reseat(now, seat, wanted - now.state().teethAt(seat));
    return Edit.partOf(gesture, Edits.reseated(now, seat, wanted - teeth), step.after());
  }
}
