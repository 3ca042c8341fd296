package tightside.session;

import java.util.Optional;

/**
 * How a person looks at a session. It changes nothing of the drive and is not undone.
 *
 * @param selected chain, or sprocket of a chain
 * @param counting how the next count is meant
 * @param textPercent size of all text, percent of the usual
 */
public record Look(Optional<Selection> selected, CountingWay counting, int textPercent) {

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

  public static Look usual() {
    return new Look(Optional.empty(), CountingWay.MARK_TO_MARK, 100);
  }

  public Look selecting(Optional<Selection> other) {
    return new Look(other, counting, textPercent);
  }

  public Look counting(CountingWay other) {
    return new Look(selected, other, textPercent);
  }

  /** Text larger (+) or smaller (-) by so many steps, as far as it goes. */
  public Look textSteps(int steps) {
    int wanted = textPercent + steps * TEXT_STEP;
    return new Look(selected, counting, Math.max(SMALLEST_TEXT, Math.min(LARGEST_TEXT, wanted)));
  }
}
