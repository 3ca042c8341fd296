package tightside.readings;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tightside.drive.Chain;
import tightside.timing.DowelRule;
import tightside.timing.HoldBack;
import tightside.timing.Lag;
import tightside.timing.Reseating;
import tightside.timing.Reseatings;
import tightside.timing.ShaftTiming;
import tightside.timing.WrongLay;

/**
 * Every wrong lay of one or two sprockets of a chain, the most dangerous first: what is possible
 * and hidden comes before what is possible and shown, and that before what needs a shaft to be
 * turned. Of equals, the possible one that leaves a shaft further off comes first, and of the
 * others the one that needs less turn.
 */
public record LayTable(HoldBack hold, List<LayRow> rows) {

  private static final Comparator<LayRow> MOST_DANGEROUS =
      Comparator.comparing(LayRow::reason)
          .thenComparing(
              row ->
                  row.reason().possibleWhileLocked()
                      ? -row.worstCrankDegrees()
                      : row.largestTurn());

  public LayTable {
    rows = List.copyOf(rows);
  }

  /**
   * @param right the drive as it should be, worn as it is
   * @return nothing where the chain can't be held back
   */
  public static Optional<LayTable> of(Situation right, Chain chain) {
    return right
        .held(chain.name())
        .map(
            hold ->
                new LayTable(
                    hold,
                    Reseatings.ofUpToTwoSprockets(chain).stream()
                        .map(lay -> row(right, hold, lay))
                        .sorted(MOST_DANGEROUS)
                        .toList()));
  }

  private static LayRow row(Situation right, HoldBack hold, Reseating reseating) {
    Situation wrong = right.reseated(reseating);
    List<Telling> telling = Telling.all(right, wrong);
    WrongLay driverStays = hold.judge(reseating.fromDriver(hold.chain()));
    return new LayRow(
        hold.judge(reseating),
        driverStays,
        reason(hold, driverStays, telling),
        StrandSag.of(hold, reseating),
        off(right, wrong),
        telling);
  }

  /** What the lay puts off, beside what wear does. */
  private static List<ShaftTiming> off(Situation right, Situation wrong) {
    Map<String, Double> expected = right.crankDegrees();
    return wrong.turned().shafts().stream()
        .filter(
            t -> Math.abs(t.crankDegrees() - expected.get(t.shaft())) > Lag.RIGHT_WITHIN_DEGREES)
        .toList();
  }

  private static LayReason reason(HoldBack hold, WrongLay lay, List<Telling> telling) {
    if (!lay.possible()) {
      return turnReason(hold, lay);
    }
    if (telling.isEmpty()) {
      return LayReason.NOTHING_SHOWS_IT;
    }
    return telling.get(0).moment() == Moment.BEFORE_TURNING
        ? LayReason.SHOWS_WHILE_LOCKED
        : LayReason.SHOWS_ONLY_ONCE_TURNED;
  }

  private static LayReason turnReason(HoldBack hold, WrongLay lay) {
    if (lay.turnNeededDegrees().isEmpty()) {
      return LayReason.NO_TURN_IS_ENOUGH;
    }
    boolean excused =
        lay.turnNeededDegrees().entrySet().stream()
            .allMatch(turn -> turn.getValue() <= DowelRule.of(hold, turn.getKey()).limitDegrees());
    return excused ? LayReason.TURN_LOOKS_LIKE_SLACK : LayReason.TURN_IS_TOO_LARGE;
  }

  /** What no check with the access at hand shows, before turning or after. */
  public List<LayRow> neverShown() {
    return rows.stream().filter(row -> row.telling().isEmpty()).toList();
  }

  /** What can come about with every shaft locked and shows before turning by no check at hand. */
  public List<LayRow> hiddenUntilTurned() {
    return rows.stream()
        .filter(row -> row.reason().compareTo(LayReason.SHOWS_ONLY_ONCE_TURNED) <= 0)
        .toList();
  }
}
