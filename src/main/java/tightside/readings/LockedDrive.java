package tightside.readings;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import tightside.drive.Chain;
import tightside.timing.HeldBack;
import tightside.timing.HoldBack;
import tightside.timing.LockingPlay;
import tightside.timing.SlackByExtension;
import tightside.timing.Solver;
import tightside.timing.State;

/**
 * A drive with all shafts locked, as it is worn, its tensioners held where a state holds them or
 * fully back.
 *
 * @param worn the state, with whatever is reseated in it
 * @param held by chain; a chain that can't be held back is left out
 * @param letGo the same chains as the plunger moves
 */
record LockedDrive(
    Solver solver, State worn, Map<String, HoldBack> held, Map<String, SlackByExtension> letGo) {

  static LockedDrive of(Solver solver, State worn, LockingPlay play) {
    Map<String, HoldBack> held = new LinkedHashMap<>();
    Map<String, SlackByExtension> letGo = new LinkedHashMap<>();
    for (Chain chain : solver.drive().chains()) {
      double stretch = worn.stretchOf(chain.name());
      OptionalDouble extension =
          Stream.ofNullable(worn.heldMm().get(chain.name()))
              .mapToDouble(Double::doubleValue)
              .findFirst();
      HeldBack back = HeldBack.of(solver.drive(), chain, extension, stretch, play);
      if (back instanceof HoldBack hold) {
        held.put(chain.name(), hold);
        SlackByExtension.of(solver.drive(), chain, stretch)
            .ifPresent(slack -> letGo.put(chain.name(), slack));
      }
    }
    return new LockedDrive(solver, worn, held, letGo);
  }

  Optional<HoldBack> held(String chain) {
    return Optional.ofNullable(held.get(chain));
  }

  Optional<SlackByExtension> letGo(String chain) {
    return Optional.ofNullable(letGo.get(chain));
  }

  /** The state once the plungers are let go. */
  State free() {
    return new State(
        worn.crankDegrees(), worn.arrived(), worn.reseats(), worn.stretchPercent(), Map.of());
  }
}
