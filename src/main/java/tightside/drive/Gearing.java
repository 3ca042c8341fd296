package tightside.drive;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import tightside.geometry.Rotation;

/**
 * Which chain drives which shaft, which way, and how fast.
 *
 * @param turns by shaft that is driven from the crankshaft: its way round, its speed, its chain
 * @param order the chains that are driven from the crankshaft, each after the one that drives it
 * @param travel by chain: the way it runs round its loop
 * @param disputes shafts that a second chain would drive as well
 */
public record Gearing(
    Map<String, Turning> turns,
    List<Chain> order,
    Map<String, Rotation> travel,
    List<Dispute> disputes) {

  /**
   * How a shaft turns.
   *
   * @param perCrankTurn turns of this shaft for one of the crankshaft, positive, exact
   * @param chain the chain that drives it; none for the crankshaft
   */
  public record Turning(Rotation rotation, BigFraction perCrankTurn, Optional<String> chain) {}

  /**
   * A shaft that is driven already.
   *
   * @param chain the second chain
   * @param place of its sprocket there
   * @param first what drives the shaft already
   */
  public record Dispute(String chain, int place, String shaft, Optional<String> first) {}

  public Gearing {
    turns = Map.copyOf(turns);
    order = List.copyOf(order);
    travel = Map.copyOf(travel);
    disputes = List.copyOf(disputes);
  }

  /** Follows the chains from the crankshaft outwards; what can't be reached is left out. */
  static Gearing from(String crank, Rotation rotation, List<Chain> chains) {
    Map<String, Turning> turns = new LinkedHashMap<>();
    turns.put(crank, new Turning(rotation, BigFraction.ONE, Optional.empty()));
    List<Chain> order = new ArrayList<>();
    Map<String, Rotation> travel = new LinkedHashMap<>();
    List<Dispute> disputes = new ArrayList<>();
    boolean found = true;
    while (found) {
      found = false;
      for (Chain chain : chains) {
        Turning driving = turns.get(chain.driver().shaft());
        if (driving != null && !travel.containsKey(chain.name())) {
          order.add(chain);
          travel.put(chain.name(), follow(chain, driving, turns, disputes));
          found = true;
        }
      }
    }
    return new Gearing(turns, order, travel, disputes);
  }

  private static Rotation follow(
      Chain chain, Turning driving, Map<String, Turning> turns, List<Dispute> disputes) {
    Rotation travel = sense(chain.driver(), driving.rotation());
    for (int place : chain.sprocketPlaces()) {
      Sprocket sprocket = chain.sprocketAt(place);
      if (place == 0) {
        continue;
      }
      Turning known = turns.get(sprocket.shaft());
      if (known != null) {
        disputes.add(new Dispute(chain.name(), place, sprocket.shaft(), known.chain()));
        continue;
      }
      BigFraction ratio = BigFraction.of(chain.driver().teeth(), sprocket.teeth());
      turns.put(
          sprocket.shaft(),
          new Turning(
              sense(sprocket, travel),
              driving.perCrankTurn().multiply(ratio),
              Optional.of(chain.name())));
    }
    return travel;
  }

  /**
   * A sprocket touched from inside turns as the chain travels, one touched from outside against.
   */
  private static Rotation sense(RouteEntry entry, Rotation other) {
    return entry.contact() == Contact.INSIDE ? other : other.opposite();
  }

  /** The way the chain turns as it passes an entry of its route. */
  public Rotation senseAt(Chain chain, int place) {
    return sense(chain.route().get(place), travel.get(chain.name()));
  }

  public Rotation rotationOf(String shaft) {
    return turns.get(shaft).rotation();
  }

  /** Turns of the shaft for one turn of the crankshaft, exact and positive. */
  public BigFraction perCrankTurn(String shaft) {
    return turns.get(shaft).perCrankTurn();
  }

  /** The chain that drives a shaft; none for the crankshaft. */
  public Optional<String> drivenBy(String shaft) {
    return turns.get(shaft).chain();
  }
}
