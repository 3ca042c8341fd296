package tightside.session;

import java.util.List;
import java.util.Optional;

/** Where a look goes by itself: to what touches, and large to what was looked at. */
public final class Looking {

  private Looking() {}

  /** At a valve of a cylinder; large too, where a valve is shown large. */
  public static Look at(SessionView view, int cylinder, int valve) {
    Look look = view.snapshot().look();
    Look at = look.with(look.valves().cylinder(cylinder).valve(valve));
    boolean large = ShowItem.shown(view).flatMap(ShowItem::valve).isPresent();
    return large ? at.with(at.show().item(strands(view) + valve)) : at;
  }

  /** At the valve that touches, if one does and the drawing is not turned past it on purpose. */
  public static Look atTouch(SessionView view) {
    Look look = view.snapshot().look();
    Optional<Valves.Touch> touch = look.valves().past() ? Optional.empty() : view.touch();
    return touch.map(t -> at(view, t.cylinder(), place(view, t))).orElse(look);
  }

  /** Whether a step sets the engine otherwise without turning it, so that a valve may touch. */
  public static boolean setOver(Snapshot now, Edit step) {
    Snapshot after = step.after();
    return after.engine().isPresent() && !Turns.turns(step) && !after.state().equals(now.state());
  }

  private static int place(SessionView view, Valves.Touch touch) {
    return view.valves().orElseThrow().timed().clearances().indexOf(touch.clearance());
  }

  /**
   * Large, at what was looked at: a valve, or the strand that arrives at the selected sprocket, or
   * else what was shown large last.
   *
   * @param atValves whether valves were looked at
   */
  public static Look large(SessionView view, boolean atValves) {
    Look look = view.snapshot().look();
    Show large = look.show().projected(true);
    int strands = strands(view);
    if (atValves && view.valves().isPresent()) {
      int last = view.valves().get().engine().valves().size() - 1;
      return look.with(large.item(strands + Math.min(look.valves().valve(), last)));
    }
    return look.with(large.item(selected(view).orElse(large.item() < strands ? large.item() : 0)));
  }

  private static Optional<Integer> selected(SessionView view) {
    List<ShowItem> items = ShowItem.all(view);
    return view.snapshot()
        .look()
        .selected()
        .flatMap(
            chosen ->
                items.stream().filter(i -> i.arrivesAt(chosen)).findFirst().map(items::indexOf));
  }

  /**
   * Large, at the next thing or the last; the bench turns to the same valve.
   *
   * @param way 1 or -1
   */
  public static Look next(SessionView view, int way) {
    Look look = view.snapshot().look();
    List<ShowItem> items = ShowItem.all(view);
    if (items.isEmpty()) {
      return look;
    }
    int item = Math.floorMod(look.show().item() + way, items.size());
    Look shown = look.with(look.show().item(item));
    return items
        .get(item)
        .valve()
        .map(valve -> shown.with(look.valves().valve(valve)))
        .orElse(shown);
  }

  private static int strands(SessionView view) {
    return (int) ShowItem.all(view).stream().filter(i -> i.valve().isEmpty()).count();
  }
}
