package tightside.engine;

import java.util.ArrayList;
import java.util.List;

/**
 * The least clearance of a camshaft's valves anywhere in its phaser's travel. The model's valve
 * timing is that of the phaser at rest.
 *
 * @param nearest over the whole travel
 * @param advancedDegrees crank degrees by which the phaser stands ahead of its rest there
 */
public record PhaserTravel(String shaft, Nearest nearest, double advancedDegrees) {

  /**
   * @param timed the engine with every phaser at rest
   * @param crankTurns for one turn of the camshaft
   */
  public static PhaserTravel of(TimedEngine timed, String shaft, Phaser phaser, double crankTurns) {
    return timed.engine().valvesOn(shaft).stream()
        .flatMap(valve -> standings(timed, valve, phaser, crankTurns).stream())
        .map(degrees -> at(timed, shaft, degrees))
        .reduce((a, b) -> b.nearest.clearanceMm() < a.nearest.clearanceMm() ? b : a)
        .orElseThrow(() -> new IllegalArgumentException(shaft + " opens no valve"));
  }

  private static PhaserTravel at(TimedEngine timed, String shaft, double degrees) {
    return new PhaserTravel(shaft, timed.advanced(shaft, degrees).least(shaft), degrees);
  }

  /**
   * Where a valve can come nearest: as the phaser turns, its lift at a crank angle is greatest at
   * an end of the travel or at the cam's nose, and under the nose the piston is nearest at top dead
   * centre. So it is at an end, or where full lift falls on a top dead centre.
   */
  private static List<Double> standings(
      TimedEngine timed, Valve valve, Phaser phaser, double crankTurns) {
    double least = phaser.leastDegrees() * crankTurns;
    double most = least + phaser.travelDegrees() * crankTurns;
    List<Double> standings = new ArrayList<>(List.of(0.0, least, most));
    double centreline =
        valve.centrelineDegrees() - timed.advancedDegrees().getOrDefault(valve.shaft(), 0.0);
    double first = Math.ceil((centreline - most) / 360) * 360;
    for (double deadCentre = first; deadCentre <= centreline - least; deadCentre += 360) {
      standings.add(centreline - deadCentre);
    }
    return standings;
  }
}
