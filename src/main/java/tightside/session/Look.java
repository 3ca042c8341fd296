package tightside.session;

import java.util.Optional;

/**
 * How a person looks at a session. It changes nothing of the drive and is not undone.
 *
 * @param selected chain, or sprocket of a chain
 * @param counting how the next count is meant
 * @param textPercent size of all text, percent of the usual
 * @param valves which valve is looked at, and how
 * @param show what is shown large, for a class
 */
public record Look(
    Optional<Selection> selected,
    CountingWay counting,
    int textPercent,
    ValveLook valves,
    Show show) {

  public static final int SMALLEST_TEXT = 70;
  public static final int LARGEST_TEXT = 300;
  private static final int TEXT_STEP = 10;

  /**
   * @param shaft of the sprocket; none where the chain as a whole is meant
   */
  public record Selection(String chain, Optional<String> shaft) {}

  public Look {
    if (textPercent < SMALLEST_TEXT || textPercent > LARGEST_TEXT) {
      throw new IllegalArgumentException("text can't be shown at " + textPercent + " %");
    }
  }

  /** At the first valve, nothing shown large. */
  public Look(Optional<Selection> selected, CountingWay counting, int textPercent) {
    this(selected, counting, textPercent, ValveLook.first(), Show.bench());
  }

  public static Look usual() {
    return new Look(Optional.empty(), CountingWay.MARK_TO_MARK, 100);
  }

  public Look selecting(Optional<Selection> other) {
    return new Look(other, counting, textPercent, valves, show);
  }

  public Look counting(CountingWay other) {
    return new Look(selected, other, textPercent, valves, show);
  }

  /** Text larger (+) or smaller (-) by so many steps, as far as it goes. */
  public Look textSteps(int steps) {
    int wanted = textPercent + steps * TEXT_STEP;
    int percent = Math.max(SMALLEST_TEXT, Math.min(LARGEST_TEXT, wanted));
    return new Look(selected, counting, percent, valves, show);
  }

  public Look with(ValveLook other) {
    return new Look(selected, counting, textPercent, other, show);
  }

  public Look with(Show other) {
    return new Look(selected, counting, textPercent, valves, other);
  }
}
