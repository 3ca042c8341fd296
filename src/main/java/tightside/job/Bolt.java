package tightside.job;

import java.util.List;
import java.util.Optional;
import tightside.drive.Limits;
import tightside.drive.Texts;

/**
 * A bolt and how it is tightened, as its user notes it.
 *
 * @param name what it is called: it need not be the name of a shaft
 * @param thread which way it is tightened
 * @param mustBeNew whether it may be used once only
 * @param heldBy what holds the shaft against the torque; nothing where the user has not said
 * @param adapter that stands between wrench and bolt, if any
 * @param steps in order; none where the maker's are still to be looked up
 */
public record Bolt(
    String name,
    Thread thread,
    boolean mustBeNew,
    Optional<String> heldBy,
    Optional<Adapter> adapter,
    List<Tightening> steps) {

  /** Which way a bolt goes in. */
  public enum Thread {
    RIGHT,
    LEFT
  }

  public Bolt {
    steps = List.copyOf(steps);
    if (!Texts.title(name) || heldBy.filter(h -> !Texts.title(h)).isPresent()) {
      throw new IllegalArgumentException("a bolt and what holds it are said on one line");
    }
    if (!steps.isEmpty()) {
      Limits.TIGHTENINGS.refuseOutside("steps", steps.size());
    }
  }

  /** A bolt of which nothing is known but its name. */
  public static Bolt blank(String name) {
    return new Bolt(name, Thread.RIGHT, false, Optional.empty(), Optional.empty(), List.of());
  }
}
