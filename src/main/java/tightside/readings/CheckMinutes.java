package tightside.readings;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * How long each kind of check takes, minutes, once there is access to it.
 *
 * @param byKind every kind
 */
public record CheckMinutes(Map<Check.Kind, Integer> byKind) {

  public CheckMinutes {
    byKind = Map.copyOf(byKind);
    for (Check.Kind kind : Check.Kind.values()) {
      if (!byKind.containsKey(kind) || byKind.get(kind) < 0) {
        throw new IllegalArgumentException("every check takes 0 minutes or more: " + kind);
      }
    }
  }

  /** Common practice, from memory; a person knows his own. */
  public static CheckMinutes fromMemory() {
    return new CheckMinutes(
        Arrays.stream(Check.Kind.values())
            .collect(Collectors.toMap(Function.identity(), Check.Kind::minutesFromMemory)));
  }

  public CheckMinutes with(Check.Kind kind, int minutes) {
    Map<Check.Kind, Integer> changed = new EnumMap<>(byKind);
    changed.put(kind, minutes);
    return new CheckMinutes(changed);
  }

  public int of(Check check) {
    return byKind.get(check.kind());
  }
}
