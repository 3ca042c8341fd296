package tightside.readings;

import java.util.List;
import java.util.Optional;
import tightside.timing.ShaftTiming;
import tightside.timing.WrongLay;

/**
 * A wrong lay and what shows it.
 *
 * @param lay said with as few sprockets as it takes
 * @param withDriverStaying the same links with the driving sprocket right, and the turns that the
 *     other shafts then need
 * @param tightStrands where spare chain would lie before anything turns
 * @param off the shafts that stand wrong once the engine is turned
 * @param telling the checks that show it with the access at hand, the soonest first
 */
public record LayRow(
    WrongLay lay,
    WrongLay withDriverStaying,
    LayReason reason,
    List<StrandSag> tightStrands,
    List<ShaftTiming> off,
    List<Telling> telling) {

  public LayRow {
    tightStrands = List.copyOf(tightStrands);
    off = List.copyOf(off);
    telling = List.copyOf(telling);
  }

  /** The check that shows it soonest; nothing where none with the access at hand does. */
  public Optional<Telling> soonest() {
    return telling.stream().findFirst();
  }

  /** The largest error of a shaft once turned, crank degrees. */
  public double worstCrankDegrees() {
    return off.stream().mapToDouble(t -> Math.abs(t.crankDegrees())).max().orElse(0);
  }

  /** The largest turn that a shaft needs for the lay, its own degrees. */
  double largestTurn() {
    return withDriverStaying.turnNeededDegrees().values().stream()
        .mapToDouble(Double::doubleValue)
        .max()
        .orElse(Double.POSITIVE_INFINITY);
  }
}
