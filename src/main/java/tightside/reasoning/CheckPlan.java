package tightside.reasoning;

import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import tightside.drive.Seen;

/**
 * What checks cost, and what has been done already.
 *
 * @param minutes by kind, once there is access; a kind that is left out is not to be proposed
 * @param access what can be seen as the engine stands
 * @param opening minutes that it takes to get access that is not there; access left out is not to
 *     be had
 * @param turnedByHand whether the engine was turned two turns by hand and felt free all the way
 */
public record CheckPlan(
    Map<CheckKind, Double> minutes,
    Set<Seen> access,
    Map<Seen, Double> opening,
    boolean turnedByHand) {

  public CheckPlan {
    minutes = Map.copyOf(minutes);
    access = Set.copyOf(access);
    opening = Map.copyOf(opening);
    for (Map<?, Double> all : List.of(minutes, opening)) {
      for (double some : all.values()) {
        if (!(some >= 0 && some <= 10_000)) {
          throw new IllegalArgumentException("minutes lie from 0 to 10000, not " + some);
        }
      }
    }
  }

  /** Cover on; minutes from memory. */
  public static CheckPlan usual() {
    Map<CheckKind, Double> minutes = new EnumMap<>(CheckKind.class);
    for (CheckKind kind : CheckKind.values()) {
      minutes.put(kind, (double) kind.usualMinutes());
    }
    return new CheckPlan(
        minutes,
        EnumSet.of(Seen.COVER_ON),
        Map.of(Seen.BORESCOPE, 20.0, Seen.COVER_OFF, 180.0),
        false);
  }

  public CheckPlan with(CheckKind kind, double some) {
    Map<CheckKind, Double> changed = new EnumMap<>(minutes);
    changed.put(kind, some);
    return new CheckPlan(changed, access, opening, turnedByHand);
  }

  public CheckPlan without(CheckKind kind) {
    Map<CheckKind, Double> changed = new EnumMap<>(CheckKind.class);
    changed.putAll(minutes);
    changed.remove(kind);
    return new CheckPlan(changed, access, opening, turnedByHand);
  }

  public CheckPlan seeing(Set<Seen> other) {
    return new CheckPlan(minutes, other, opening, turnedByHand);
  }

  public CheckPlan turned(boolean byHand) {
    return new CheckPlan(minutes, access, opening, byHand);
  }

  /** Whether something can be seen, with more taken off if need be. */
  boolean canSee(Seen seen) {
    return access.contains(seen) || opening.containsKey(seen);
  }

  double openingMinutes(Seen seen) {
    return access.contains(seen) ? 0 : opening.get(seen);
  }
}
