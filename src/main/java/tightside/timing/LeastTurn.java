package tightside.timing;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * The least travel of the chain by which some shafts have to be turned from their locked places for
 * a lay to fit.
 *
 * <p>Turning a sprocket ahead takes chain from the strand that arrives and gives it to the one that
 * leaves. Let shafts move by up to t either way. A run of strands from X to Y, past movable
 * sprockets alone, can then be given t by each of its ends that is movable, so what the run lacks
 * must not be more than t times their number. Together these conditions are enough: they are the
 * simple cycles of a system of difference constraints. A run all round the loop can be given
 * nothing: no lay uses more than the slack of the loop.
 *
 * @param lackMm what the run lacks
 * @param strands how many it has
 * @param giving how many of its ends can be turned to give it chain
 */
record LeastTurn(double lackMm, int strands, int giving) {

  /**
   * @param strands in the direction of travel
   * @param lackMm what each strand lacks, below zero what it has over
   * @param playMm what a strand may lack without anything turning further
   * @param movable the shafts that are turned
   * @return mm of chain; nothing where no turn of these shafts is enough
   */
  static OptionalDouble mm(
      List<Strand> strands, List<Double> lackMm, double playMm, Set<String> movable) {
    List<LeastTurn> lacking =
        runs(strands, lackMm, movable).stream().filter(r -> r.lackMm > r.strands * playMm).toList();
    return lacking.stream().anyMatch(r -> r.giving == 0)
        ? OptionalDouble.empty()
        : OptionalDouble.of(lacking.stream().mapToDouble(r -> r.lackMm / r.giving).max().orElse(0));
  }

  /** Every run that the movable shafts have a part in. */
  private static List<LeastTurn> runs(
      List<Strand> strands, List<Double> lackMm, Set<String> movable) {
    List<LeastTurn> runs = new ArrayList<>();
    for (int first = 0; first < strands.size(); first++) {
      String start = strands.get(first).from();
      double lack = 0;
      boolean open = true;
      for (int length = 1; open && length <= strands.size(); length++) {
        int last = (first + length - 1) % strands.size();
        String end = strands.get(last).to();
        lack += lackMm.get(last);
        int free = (movable.contains(start) ? 1 : 0) + (movable.contains(end) ? 1 : 0);
        if (free > 0 || length > 1) {
          runs.add(new LeastTurn(lack, length, start.equals(end) ? 0 : free));
        }
        open = movable.contains(end);
      }
    }
    return runs;
  }
}
