package tightside.drive;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import tightside.geometry.Bearing;
import tightside.geometry.Rotation;

/**
 * The parts of a drive as a person draws them, before it is known whether they make one: each part
 * is sound in itself, together they may be anything.
 */
public record Plan(
    String name, String about, Rotation rotation, List<Shaft> shafts, List<Chain> chains) {

  public Plan {
    shafts = List.copyOf(shafts);
    chains = List.copyOf(chains);
  }

  public static Plan of(Drive drive) {
    return new Plan(drive.name(), drive.about(), drive.rotation(), drive.shafts(), drive.chains());
  }

  /** The first shaft of a drive yet to be drawn, with a chain on it that goes nowhere yet. */
  public static Plan begun() {
    return new Plan(
        "New drive",
        "",
        Rotation.CLOCKWISE,
        List.of(new Shaft("crank", Role.CRANKSHAFT, Vector2D.ZERO)),
        List.of(
            new Chain(
                "main",
                ChainKind.BUSH,
                8,
                118,
                7.2,
                5,
                List.of(Sprocket.inside("crank", 18, new Bearing(180))))));
  }

  /** What keeps the parts from being a drive; the chains are not laid yet. */
  public List<Finding> findings() {
    return Audit.of(rotation, shafts, chains);
  }

  /** The drive that the parts make, if they make one. */
  public Optional<Drive> drive() {
    return findings().isEmpty()
        ? Optional.of(new Drive(name, about, rotation, shafts, chains))
        : Optional.empty();
  }

  public Optional<Shaft> shaft(String shaftName) {
    return shafts.stream().filter(s -> s.name().equals(shaftName)).findFirst();
  }

  public Optional<Chain> chain(String chainName) {
    return chains.stream().filter(c -> c.name().equals(chainName)).findFirst();
  }

  /** The crankshaft, if there is one. */
  public Optional<Shaft> crankshaft() {
    return shafts.stream().filter(s -> s.role() == Role.CRANKSHAFT).findFirst();
  }

  public Plan called(String other) {
    return new Plan(other, about, rotation, shafts, chains);
  }

  public Plan turning(Rotation other) {
    return new Plan(name, about, other, shafts, chains);
  }

  private Plan withShafts(List<Shaft> other) {
    return new Plan(name, about, rotation, other, chains);
  }

  private Plan withChains(List<Chain> other) {
    return new Plan(name, about, rotation, shafts, other);
  }

  public Plan adding(Shaft shaft) {
    return withShafts(Stream.concat(shafts.stream(), Stream.of(shaft)).toList());
  }

  public Plan adding(Chain chain) {
    return withChains(Stream.concat(chains.stream(), Stream.of(chain)).toList());
  }

  /** With a shaft changed; its sprockets follow a new name. */
  public Plan changing(String shaft, UnaryOperator<Shaft> change) {
    List<Shaft> changed = new ArrayList<>();
    Plan renamed = this;
    for (Shaft each : shafts) {
      Shaft next = each.name().equals(shaft) ? change.apply(each) : each;
      changed.add(next);
      if (!next.name().equals(each.name())) {
        renamed = renamed.sprocketsOf(each.name(), next.name());
      }
    }
    return renamed.withShafts(changed);
  }

  private Plan sprocketsOf(String before, String after) {
    return withChains(
        chains.stream()
            .map(
                chain ->
                    chain.withRoute(
                        chain.route().stream()
                            .map(
                                entry ->
                                    entry instanceof Sprocket s && s.shaft().equals(before)
                                        ? s.withShaft(after)
                                        : entry)
                            .toList()))
            .toList());
  }

  /** Without a shaft and its sprockets. */
  public Plan withoutShaft(String shaft) {
    return withShafts(shafts.stream().filter(s -> !s.name().equals(shaft)).toList())
        .withChains(
            chains.stream()
                .map(
                    chain ->
                        chain.withRoute(
                            chain.route().stream()
                                .filter(e -> !(e instanceof Sprocket s && s.shaft().equals(shaft)))
                                .toList()))
                .toList());
  }

  public Plan withoutChain(String chain) {
    return withChains(chains.stream().filter(c -> !c.name().equals(chain)).toList());
  }

  public Plan changingChain(String chain, UnaryOperator<Chain> change) {
    return withChains(
        chains.stream().map(c -> c.name().equals(chain) ? change.apply(c) : c).toList());
  }

  /** A name that begins with a word and that nothing of this plan has yet. */
  public String freeName(String word) {
    Set<String> taken = new HashSet<>();
    shafts.forEach(s -> taken.add(s.name()));
    for (Chain chain : chains) {
      taken.add(chain.name());
      chain.route().stream()
          .filter(Face.class::isInstance)
          .forEach(e -> taken.add(((Face) e).name()));
    }
    String name = word;
    for (int number = 2; taken.contains(name); number++) {
      name = word + "-" + number;
    }
    return name;
  }
}
