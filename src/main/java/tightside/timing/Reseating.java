package tightside.timing;

import java.util.Collection;
import java.util.HashMap;
import java.util.Map;
import java.util.stream.Collectors;
import tightside.drive.Chain;
import tightside.drive.Sprocket;

/**
 * How a chain was laid back on its sprockets: the teeth by which each was put back further ahead
 * (+) or behind (-) on the chain than it belongs.
 *
 * @param teeth by shaft; a shaft not named is right, and none is named with 0
 */
public record Reseating(String chain, Map<String, Integer> teeth) {

  public Reseating {
    teeth =
        teeth.entrySet().stream()
            .filter(e -> e.getValue() != 0)
            .collect(Collectors.toUnmodifiableMap(Map.Entry::getKey, Map.Entry::getValue));
  }

  public static Reseating right(String chain) {
    return new Reseating(chain, Map.of());
  }

  public static Reseating of(String chain, String shaft, int teeth) {
    return new Reseating(chain, Map.of(shaft, teeth));
  }

  /** The lay of a chain in a state. */
  public static Reseating in(State state, String chain) {
    return new Reseating(
        chain,
        state.reseats().entrySet().stream()
            .filter(e -> e.getKey().chain().equals(chain))
            .collect(Collectors.toMap(e -> e.getKey().shaft(), Map.Entry::getValue)));
  }

  public int teethAt(String shaft) {
    return teeth.getOrDefault(shaft, 0);
  }

  /** Links that a strand has more than it should: it gains at its end, it loses at its start. */
  public int linksGained(Strand strand) {
    return teethAt(strand.to()) - teethAt(strand.from());
  }

  /**
   * The same lay with the driving sprocket right: every sprocket shifted alike leaves every strand
   * as it is, so all shifted one way is the driver shifted the other.
   */
  public Reseating fromDriver(Chain laid) {
    int driver = teethAt(laid.driver().shaft());
    Map<String, Integer> shifted = new HashMap<>();
    for (Sprocket sprocket : laid.sprockets()) {
      if (sprocket.marked()) {
        shifted.put(sprocket.shaft(), teethAt(sprocket.shaft()) - driver);
      }
    }
    return new Reseating(chain, shifted);
  }

  /**
   * Whether painted links would still meet the marks of all painted sprockets: paint compares those
   * sprockets with each other and with nothing else.
   */
  public boolean paintStillMeets(Collection<String> painted) {
    return painted.stream().map(this::teethAt).distinct().count() <= 1;
  }

  /** The same lay put into a state. */
  public State appliedTo(State state) {
    State laid = state;
    for (Map.Entry<String, Integer> entry : teeth.entrySet()) {
      laid = laid.reseated(new Seat(chain, entry.getKey()), entry.getValue());
    }
    return laid;
  }
}
