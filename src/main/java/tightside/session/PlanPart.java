package tightside.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import tightside.drive.Chain;
import tightside.drive.Face;
import tightside.drive.Part;
import tightside.drive.Plan;
import tightside.drive.RouteEntry;
import tightside.drive.Shaft;
import tightside.drive.Sprocket;

/**
 * A part that a person can lay a finger on.
 *
 * @param place on the chain's route; none where the chain as a whole is meant, or a shaft
 */
public record PlanPart(Optional<String> shaft, Optional<String> chain, OptionalInt place) {

  public static PlanPart shaft(String name) {
    return new PlanPart(Optional.of(name), Optional.empty(), OptionalInt.empty());
  }

  public static PlanPart chain(String name) {
    return new PlanPart(Optional.empty(), Optional.of(name), OptionalInt.empty());
  }

  public static PlanPart entry(String chain, int place) {
    return new PlanPart(Optional.empty(), Optional.of(chain), OptionalInt.of(place));
  }

  /** Every part, shafts first, then each chain with its route in the direction of travel. */
  public static List<PlanPart> all(Plan plan) {
    List<PlanPart> parts = new ArrayList<>();
    plan.shafts().forEach(s -> parts.add(shaft(s.name())));
    for (Chain chain : plan.chains()) {
      parts.add(chain(chain.name()));
      for (int place = 0; place < chain.route().size(); place++) {
        parts.add(entry(chain.name(), place));
      }
    }
    return parts;
  }

  /** Whether a plan still has this part. */
  public boolean in(Plan plan) {
    return shaft.map(s -> plan.shaft(s).isPresent()).orElse(true)
        && chain
            .map(
                c ->
                    plan.chain(c)
                        .filter(on -> place.isEmpty() || place.getAsInt() < on.route().size())
                        .isPresent())
            .orElse(true);
  }

  /** The part that something was found of; none for the drive as a whole. */
  public static Optional<PlanPart> of(Part part) {
    List<String> steps = part.steps();
    if (steps.size() >= 2 && steps.get(0).equals("shafts")) {
      return Optional.of(shaft(steps.get(1)));
    }
    if (steps.size() >= 4 && steps.get(2).equals("route")) {
      return Optional.of(entry(steps.get(1), Integer.parseInt(steps.get(3))));
    }
    return steps.size() >= 2 && steps.get(0).equals("chains")
        ? Optional.of(chain(steps.get(1)))
        : Optional.empty();
  }

  static String nameOf(RouteEntry entry) {
    return entry instanceof Sprocket sprocket ? sprocket.shaft() : ((Face) entry).name();
  }

  public Optional<RouteEntry> entryIn(Plan plan) {
    return place.isEmpty()
        ? Optional.empty()
        : plan.chain(chain.orElseThrow()).map(c -> c.route().get(place.getAsInt()));
  }

  public Optional<Shaft> shaftIn(Plan plan) {
    return shaft.flatMap(plan::shaft);
  }

  /** As a person would call it. */
  public String words(Plan plan) {
    if (shaft.isPresent()) {
      return shaft.get();
    }
    return entryIn(plan)
        .map(
            e ->
                e instanceof Sprocket s
                    ? "%s, %d teeth".formatted(s.shaft(), s.teeth())
                    : "%s (%s)".formatted(nameOf(e), PartKind.of(e).word()))
        .orElseGet(chain::orElseThrow);
  }
}
