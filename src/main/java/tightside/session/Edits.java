package tightside.session;

import java.util.HashMap;
import java.util.Map;
import tightside.drive.Seen;
import tightside.timing.Lay;
import tightside.timing.Seat;
import tightside.timing.State;
import tightside.words.Numbers;

/** What a person can do to a drive besides turning it. Each is pure: it leads to a new snapshot. */
public final class Edits {

  private Edits() {}

  /**
   * Puts a sprocket back by so many teeth further ahead (+) or behind (-) than it sits now, no
   * further off its place than {@link Lay#MOST_TEETH}.
   */
  public static Edit reseat(Snapshot now, Seat seat, int teeth) {
    int sits = now.state().teethAt(seat);
    int wanted = Math.max(-Lay.MOST_TEETH, Math.min(Lay.MOST_TEETH, sits + teeth));
    return Edit.single(
        reseated(now, seat, wanted - sits), now.with(now.state().reseated(seat, wanted)));
  }

  static String reseated(Snapshot now, Seat seat, int teeth) {
    return "Reseat %s by %+d".formatted(Words.sprocket(now.drive(), seat), teeth);
  }

  /** Puts a sprocket where it belongs. */
  public static Edit putRight(Snapshot now, Seat seat) {
    return Edit.single(
        "Put %s right".formatted(Words.sprocket(now.drive(), seat)),
        now.with(now.state().reseated(seat, 0)));
  }

  /** Puts every sprocket where it belongs. */
  public static Edit putAllRight(Snapshot now) {
    State state = now.state();
    for (Seat seat : now.reseats().keySet()) {
      state = state.reseated(seat, 0);
    }
    return Edit.single("Put every sprocket right", now.with(state));
  }

  /**
   * @param percent within the limits of stretch; 0 is a new chain
   */
  public static Edit stretch(Snapshot now, String chain, double percent) {
    Map<String, Double> stretches = new HashMap<>(now.stretchPercent());
    stretches.remove(chain);
    if (percent != 0) {
      stretches.put(chain, percent);
    }
    State state = now.state();
    return Edit.partOf(
        "stretch " + chain,
        percent == 0
            ? "Fit %s new".formatted(chain)
            : "Stretch %s to %s %%".formatted(chain, Numbers.fixed(percent, 2)),
        now.with(
            new State(
                state.crankDegrees(),
                state.arrived(),
                state.reseats(),
                stretches,
                state.heldMm())));
  }

  /** Holds the plunger of a chain at an extension within its travel. */
  public static Edit hold(Snapshot now, String chain, double extensionMm) {
    return Edit.partOf(
        "hold " + chain,
        "Hold the plunger of %s at %s mm".formatted(chain, Numbers.fixed(extensionMm, 1)),
        now.with(now.state().held(chain, extensionMm)));
  }

  /** Lets the plunger of a chain go. */
  public static Edit release(Snapshot now, String chain) {
    State state = now.state();
    Map<String, Double> held = new HashMap<>(state.heldMm());
    held.remove(chain);
    return Edit.single(
        "Let the plunger of %s go".formatted(chain),
        now.with(
            new State(
                state.crankDegrees(),
                state.arrived(),
                state.reseats(),
                state.stretchPercent(),
                held)));
  }

  /**
   * Notes what was counted on a strand, in the way that counting is set to; nothing typed takes the
   * count away.
   */
  public static Edit count(Snapshot now, StrandId strand, String text) {
    Map<StrandId, Count> counts = new HashMap<>(now.counts());
    counts.remove(strand);
    if (!text.isBlank()) {
      counts.put(strand, new Count(text, now.look().counting()));
    }
    return Edit.partOf(
        "count %s %s".formatted(strand.chain(), strand.from()),
        "Count %s to %s".formatted(strand.from(), strand.to()),
        now.withCounts(counts));
  }

  public static Edit clearCounts(Snapshot now) {
    return Edit.single("Clear the counts", now.withCounts(Map.of()));
  }

  /**
   * @param cover anything but {@link Seen#NEVER}
   */
  public static Edit cover(Snapshot now, Seen cover) {
    return Edit.single(
        switch (cover) {
          case COVER_ON -> "Put the cover on";
          case COVER_OFF -> "Take the cover off";
          default -> "Look with a borescope";
        },
        now.with(cover));
  }
}
