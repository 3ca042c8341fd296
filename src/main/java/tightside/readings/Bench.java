package tightside.readings;

import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import tightside.drive.Seen;
import tightside.timing.LockingPlay;

/**
 * What a person has at hand.
 *
 * @param access what can be seen as the engine stands
 * @param play of the locking tools
 * @param minutes that checks take
 * @param compression what a compression test shows, from how far each shaft stands from its place
 *     in crank degrees (positive = advanced), in any unit; nothing where nobody knows
 */
public record Bench(
    Set<Seen> access,
    LockingPlay play,
    CheckMinutes minutes,
    Optional<ToDoubleFunction<Map<String, Double>>> compression) {

  public Bench {
    access = Set.copyOf(access);
  }

  /** Cover off, play unknown, minutes from memory, no compression law. */
  public static Bench coverOff() {
    return new Bench(
        Set.of(Seen.COVER_ON, Seen.COVER_OFF),
        LockingPlay.unknown(),
        CheckMinutes.fromMemory(),
        Optional.empty());
  }

  public Bench seeing(Set<Seen> other) {
    return new Bench(other, play, minutes, compression);
  }

  public Bench with(LockingPlay other) {
    return new Bench(access, other, minutes, compression);
  }

  public Bench with(ToDoubleFunction<Map<String, Double>> law) {
    return new Bench(access, play, minutes, Optional.of(law));
  }
}
