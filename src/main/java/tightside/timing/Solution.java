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

  public Optional<ChainSolution> chain(String name) {
    return chains.stream().filter(c -> c.chain().name().equals(name)).findFirst();
  }

  public Optional<ShaftTiming> shaft(String name) {
    return shafts.stream().filter(s -> s.shaft().equals(name)).findFirst();
  }
}
