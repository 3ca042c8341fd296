package tightside.timing;

import java.util.List;
import java.util.Optional;
import tightside.drive.Drive;

/**
 * What a drive does in a state.
 *
 * @param chains in the order of the model
 * @param shafts every timed shaft, in the order of the model, the crankshaft included
 * @param unknowns what this solution does not know
 */
public record Solution(
    Drive drive,
    State state,
    List<ChainSolution> chains,
    List<ShaftTiming> shafts,
    List<Unknown> unknowns) {

  public Solution {
    chains = List.copyOf(chains);
    shafts = List.copyOf(shafts);
    unknowns = List.copyOf(unknowns);
  }

  /**
   * Shafts of a drive that is counted only whose timing is not known in this state: a measurement
   * is missing, which the unknowns name. In the order of the model.
   */
  public List<String> untimed() {
    return drive.countedOnly()
        ? drive.shafts().stream()
            .map(s -> s.name())
            .filter(name -> drive.marks(name) && shaft(name).isEmpty())
            .toList()
        : List.of();
  }

  public Optional<ChainSolution> chain(String name) {
    return chains.stream().filter(c -> c.chain().name().equals(name)).findFirst();
  }

  public Optional<ShaftTiming> shaft(String name) {
    return shafts.stream().filter(s -> s.shaft().equals(name)).findFirst();
  }
}
