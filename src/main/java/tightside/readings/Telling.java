package tightside.readings;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * A check that tells a situation from the right one.
 *
 * @param minutes that it takes
 */
public record Telling(Check check, Moment moment, int minutes) {

  /** Before turning comes before after turning; then what takes less time. */
  private static final Comparator<Telling> SOONER =
      Comparator.comparing(Telling::moment).thenComparing(Telling::minutes);

  /** Everything that tells with the access at hand, the soonest first. */
  static List<Telling> all(Situation right, Situation other) {
    return Checks.of(right).stream()
        .filter(check -> right.bench().access().contains(check.access(right)))
        .flatMap(check -> first(check, right, other).stream())
        .sorted(SOONER)
        .toList();
  }

  /** At which moment a check first tells. */
  private static Optional<Telling> first(Check check, Situation right, Situation other) {
    for (Moment moment : Moment.values()) {
      if (check.tells(right, other, moment)) {
        return Optional.of(new Telling(check, moment, right.bench().minutes().of(check)));
      }
    }
    return Optional.empty();
  }
}
