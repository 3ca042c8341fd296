package tightside.command;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import tightside.drive.Seen;
import tightside.reasoning.Cause;
import tightside.reasoning.CheckKind;
import tightside.reasoning.CheckPlan;
import tightside.reasoning.Priors;

/** What the words of priors, minutes and access mean. */
final class PlanWords {

  private PlanWords() {}

  static Priors priors(List<String> words) {
    Priors priors = Priors.usual();
    for (String word : words) {
      Given given = Given.of("--prior", word, "CAUSE=WEIGHT, such as stretch=40");
      Cause cause =
          Cause.of(given.name())
              .orElseThrow(
                  () ->
                      new Refusal(
                          "there is no cause \"%s\"; the causes are %s"
                              .formatted(
                                  given.name(),
                                  Arrays.stream(Cause.values())
                                      .map(Cause::word)
                                      .collect(Collectors.joining(", ")))));
      priors = weighed(priors, cause, Given.number("--prior", given.value(), 0, 999_999));
    }
    return priors;
  }

  private static Priors weighed(Priors priors, Cause cause, double weight) {
    try {
      return priors.with(cause, weight);
    } catch (IllegalArgumentException all) {
      throw new Refusal("every cause has a prior weight of 0; give at least one more than that");
    }
  }

  static CheckPlan plan(List<String> minutes, List<String> openings) {
    CheckPlan plan = CheckPlan.usual();
    for (String word : minutes) {
      Given given = Given.of("--minutes", word, "CHECK=MIN, such as count=10");
      CheckKind kind =
          CheckKind.of(given.name())
              .orElseThrow(
                  () ->
                      new Refusal(
                          "there is no check \"%s\"; the checks are %s"
                              .formatted(
                                  given.name(),
                                  Arrays.stream(CheckKind.values())
                                      .map(CheckKind::word)
                                      .collect(Collectors.joining(", ")))));
      plan =
          given.value().equals("never")
              ? plan.without(kind)
              : plan.with(kind, Given.number("--minutes", given.value(), 0, 10_000));
    }
    return opened(plan, openings);
  }

  private static CheckPlan opened(CheckPlan plan, List<String> words) {
    Map<Seen, Double> opening = new EnumMap<>(Seen.class);
    opening.putAll(plan.opening());
    for (String word : words) {
      Given given = Given.of("--opening", word, "cover-off=MIN or borescope=MIN");
      Seen seen =
          switch (given.name()) {
            case "cover-off" -> Seen.COVER_OFF;
            case "borescope" -> Seen.BORESCOPE;
            default ->
                throw new Refusal(
                    "--opening: \"%s\" is no access; write cover-off or borescope"
                        .formatted(given.name()));
          };
      if (given.value().equals("never")) {
        opening.remove(seen);
      } else {
        opening.put(seen, Given.number("--opening", given.value(), 0, 10_000));
      }
    }
    return new CheckPlan(plan.minutes(), plan.access(), opening, plan.turnedByHand());
  }
}
