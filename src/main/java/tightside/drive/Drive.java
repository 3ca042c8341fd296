package tightside.drive;

import java.util.List;
import java.util.Optional;
import tightside.geometry.Rotation;

/**
 * A whole drive: the crankshaft's direction, the shafts, and the chains with their routes.
 *
 * <p>It has geometry (every shaft has a place, every chain all its sizes), or it is counted only
 * (no shaft has a place, every chain has its counts).
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
    if (shafts.stream().anyMatch(s -> s.place().isPresent())) {
      chains.forEach(Drive::refuseHalfMeasured);
    }
    List<Finding> findings = Audit.of(rotation, shafts, chains);
    if (!findings.isEmpty()) {
      throw new IllegalArgumentException(findings.get(0).toString());
    }
  }

  /** Where shafts have places, a chain has all its sizes and every face its own place. */
  private static void refuseHalfMeasured(Chain chain) {
    if (!chain.size().whole() || chain.route().stream().anyMatch(Listed.class::isInstance)) {
      throw new IllegalArgumentException(
          "the chain " + chain.name() + " lacks a size or a face among shafts that have places");
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

  /** Whether a sprocket of this shaft bears a mark. */
  public boolean marks(String shaftName) {
    return chainsOn(shaftName).stream()
        .anyMatch(c -> c.sprocketOn(shaftName).filter(Sprocket::marked).isPresent());
  }

  /** Whether it is known by its counts alone: then no shaft has a place, and no chain a path. */
  public boolean countedOnly() {
    return chains.stream().anyMatch(Chain::countedOnly);
  }

  public Gearing gearing() {
    return Gearing.from(crankshaft().name(), rotation, chains);
  }

  /**
   * One chain with all that its path depends on.
   *
   * @throws IllegalStateException in a drive that is counted only
   */
  public ChainInPlace inPlace(Chain chain) {
    return ChainInPlace.of(chain, shafts, gearing());
  }
}
