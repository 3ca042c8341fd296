package tightside.drive;

import java.util.List;
import java.util.Optional;
import tightside.geometry.Rotation;

/**
 * A whole drive: the crankshaft's direction, the shafts, and the chains with their routes.
 *
 * <p>What is built hangs together: every chain is driven from the crankshaft, no shaft by two, and
 * every face can be run over. Whether the chains fit is for the solver to say.
 *
 * @param about what it is, for people
 * @param rotation of the crankshaft, as drawn
 */
public record Drive(
    String name, String about, Rotation rotation, List<Shaft> shafts, List<Chain> chains) {

  /**
   * @throws IllegalArgumentException with the first finding, if the parts do not make a drive;
   *     {@link Audit#of} gives all of them
   */
  public Drive {
    shafts = List.copyOf(shafts);
    chains = List.copyOf(chains);
    List<Finding> findings = Audit.of(rotation, shafts, chains);
    if (!findings.isEmpty()) {
      throw new IllegalArgumentException(findings.get(0).toString());
    }
  }

  public Shaft crankshaft() {
    return shafts.stream().filter(s -> s.role() == Role.CRANKSHAFT).findFirst().orElseThrow();
  }

  public Optional<Shaft> shaft(String shaftName) {
    return shafts.stream().filter(s -> s.name().equals(shaftName)).findFirst();
  }

  public Optional<Chain> chain(String chainName) {
    return chains.stream().filter(c -> c.name().equals(chainName)).findFirst();
  }

  /** The chains that carry a sprocket of this shaft. */
  public List<Chain> chainsOn(String shaftName) {
    return chains.stream().filter(c -> c.sprocketOn(shaftName).isPresent()).toList();
  }

  public Gearing gearing() {
    return Gearing.from(crankshaft().name(), rotation, chains);
  }

  /** One chain with all that its path depends on. */
  public ChainInPlace inPlace(Chain chain) {
    return ChainInPlace.of(chain, shafts, gearing());
  }
}
