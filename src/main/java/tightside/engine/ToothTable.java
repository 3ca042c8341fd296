package tightside.engine;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import tightside.drive.Chain;
import tightside.drive.Drive;
import tightside.drive.Sprocket;

/**
 * What each tooth of a camshaft does to the valves, from 4 behind to 4 ahead.
 *
 * @param degreesPerTooth crank degrees
 * @param rows from the furthest behind to the furthest ahead
 */
public record ToothTable(String shaft, double degreesPerTooth, List<Row> rows) {

  /** The table's reach, in teeth both ways. */
  public static final int TEETH = 4;

  /**
   * One lay.
   *
   * @param teeth by which the camshaft's sprocket sits further ahead
   * @param nearest of that camshaft's valves to their piston
   * @param closed compression as closed by the intake valve, to 1
   * @param overlapDegrees as {@link TimedEngine#overlapDegrees}
   */
  public record Row(
      int teeth, Nearest nearest, OptionalDouble closed, OptionalDouble overlapDegrees) {}

  public ToothTable {
    rows = List.copyOf(rows);
  }

  /**
   * @param timed the engine from which the teeth are counted
   * @return nothing for a shaft that no chain drives, or that opens no valve
   */
  public static Optional<ToothTable> of(Drive drive, TimedEngine timed, String shaft) {
    if (timed.engine().valvesOn(shaft).isEmpty()) {
      return Optional.empty();
    }
    return drive
        .gearing()
        .drivenBy(shaft)
        .flatMap(drive::chain)
        .flatMap((Chain chain) -> chain.sprocketOn(shaft))
        .map(sprocket -> of(timed, sprocket, crankTurns(drive, shaft)));
  }

  /** Crank turns for one turn of a shaft. */
  public static double crankTurns(Drive drive, String shaft) {
    return 1 / drive.gearing().perCrankTurn(shaft).doubleValue();
  }

  private static ToothTable of(TimedEngine timed, Sprocket sprocket, double crankTurns) {
    double perTooth = crankTurns * 360 / sprocket.teeth();
    String shaft = sprocket.shaft();
    return new ToothTable(
        shaft,
        perTooth,
        IntStream.rangeClosed(-TEETH, TEETH)
            .mapToObj(teeth -> row(timed.advanced(shaft, teeth * perTooth), shaft, teeth))
            .toList());
  }

  private static Row row(TimedEngine laid, String shaft, int teeth) {
    return new Row(teeth, laid.least(shaft), laid.squeeze().closed(), laid.overlapDegrees());
  }
}
