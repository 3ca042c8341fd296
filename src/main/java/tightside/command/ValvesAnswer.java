package tightside.command;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import tightside.engine.Clearance;
import tightside.engine.Engine;
import tightside.engine.PhaserTravel;
import tightside.engine.TimedEngine;
import tightside.engine.ToothTable;
import tightside.files.Model;

/**
 * All that is said of an engine's valves.
 *
 * @param teeth of every camshaft that opens a valve and is driven by a chain
 * @param phasers of every camshaft that opens a valve and carries one
 */
record ValvesAnswer(TimedEngine timed, List<ToothTable> teeth, List<PhaserTravel> phasers) {

  static ValvesAnswer of(Model model, TimedEngine timed) {
    Engine engine = timed.engine();
    return new ValvesAnswer(
        timed,
        engine.camshafts().stream()
            .map(shaft -> ToothTable.of(model.drive(), timed, shaft))
            .flatMap(Optional::stream)
            .toList(),
        model.phasers().entrySet().stream()
            .filter(e -> engine.camshafts().contains(e.getKey()))
            .sorted(Map.Entry.comparingByKey())
            .map(
                e ->
                    PhaserTravel.of(
                        timed,
                        e.getKey(),
                        e.getValue(),
                        ToothTable.crankTurns(model.drive(), e.getKey())))
            .toList());
  }

  List<Clearance> valves() {
    return timed.clearances();
  }

  /**
   * Whether a valve touches its piston wherever its camshaft can stand. A phaser goes to the end of
   * its travel in every drive, so a contact there is as wrong as one at rest.
   */
  boolean contact() {
    return valves().stream().anyMatch(c -> c.least().contact())
        || phasers.stream().anyMatch(p -> p.nearest().contact());
  }
}
