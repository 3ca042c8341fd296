package tightside.timing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tightside.drive.Chain;

/**
 * Names the lays of one chain, and what each does to the shafts.
 *
 * @param strands as they belong, in the direction of travel; strand i leaves sprocket i
 */
record LoopLays(Solver solver, Chain chain, List<Strand> strands) {

  LoopLays {
    strands = List.copyOf(strands);
  }

  /**
   * @param counted links by strand
   */
  CountedLoop loop(Map<Integer, Long> counted) {
    Map<Integer, Long> gained = new LinkedHashMap<>();
    counted.forEach((i, links) -> gained.put(i, links - strands.get(i).links()));
    return new CountedLoop(strands.size(), gained);
  }

  /** The simplest explanations of the counts, those that leave the driving sprocket alone first. */
  List<Lay> simplest(Map<Integer, Long> counted) {
    Comparator<long[]> driverStays =
        Comparator.comparing(t -> driver().filter(i -> t[i] != 0).isPresent());
    return loop(counted).simplest().stream().sorted(driverStays).map(this::lay).toList();
  }

  /** The number of the driving sprocket, if it bears a mark. */
  Optional<Integer> driver() {
    return strands.stream().findFirst().filter(s -> s.fromPlace() == 0).map(s -> 0);
  }

  /**
   * @param teeth of every marked sprocket
   */
  Lay lay(long[] teeth) {
    List<Lay.Moved> moved = new ArrayList<>();
    State state = State.reference();
    for (int i = 0; i < teeth.length; i++) {
      if (teeth[i] != 0) {
        int k = Math.toIntExact(teeth[i]);
        moved.add(new Lay.Moved(shaft(i), k));
        state = state.reseated(new Seat(chain.name(), shaft(i)), k);
      }
    }
    List<ShaftTiming> shafts = solver.solve(state).shafts();
    return new Lay(moved, shafts.stream().filter(s -> s.lag() != Lag.RIGHT).toList());
  }

  /** The lay with a group of sprockets moved on by so many teeth. */
  Lay moved(Lay lay, List<Integer> group, int by) {
    long[] teeth = new long[strands.size()];
    for (int i = 0; i < teeth.length; i++) {
      teeth[i] = lay.teethOf(shaft(i)) + (group.contains(i) ? by : 0);
    }
    return lay(teeth);
  }

  String shaft(int i) {
    return strands.get(i).from();
  }
}
