package tightside.reasoning;

import java.util.List;
import java.util.Optional;

/**
 * One way to explain readings, but for its amount.
 *
 * @param chain where one chain is meant
 * @param shaft where one shaft is meant
 * @param teeth of a reseat: further ahead (+) or behind (-); 0 for all else
 * @param manner where a cause works in more than one way
 * @param parts the two explanations of {@link Cause#SEVERAL}
 */
public record Explanation(
    Cause cause,
    Optional<String> chain,
    Optional<String> shaft,
    int teeth,
    Optional<Manner> manner,
    List<Explanation> parts) {

  /** How a cause works. */
  public enum Manner {
    /** A phaser that stays where it stuck, whatever drives it. */
    STUCK,
    /** A phaser that oil, its valve or its wiring drives off its rest. */
    DRIVEN,
    /** A wheel that sits turned, or a sensor that sits off. */
    TURNED,
    /** A wheel that is bent or runs out. */
    BENT
  }

  /** In what an amount is told. */
  public enum Unit {
    NOTHING,
    PERCENT,
    CRANK_DEGREES,
    MM
  }

  public Explanation {
    parts = List.copyOf(parts);
  }

  static Explanation of(Cause cause) {
    return new Explanation(
        cause, Optional.empty(), Optional.empty(), 0, Optional.empty(), List.of());
  }

  static Explanation chain(Cause cause, String chain) {
    return new Explanation(
        cause, Optional.of(chain), Optional.empty(), 0, Optional.empty(), List.of());
  }

  static Explanation shaft(Cause cause, String shaft, Manner manner) {
    return new Explanation(
        cause, Optional.empty(), Optional.of(shaft), 0, Optional.ofNullable(manner), List.of());
  }

  static Explanation reseat(String chain, String shaft, int teeth) {
    return new Explanation(
        Cause.RESEAT, Optional.of(chain), Optional.of(shaft), teeth, Optional.empty(), List.of());
  }

  static Explanation both(Explanation one, Explanation other) {
    return new Explanation(
        Cause.SEVERAL,
        Optional.empty(),
        Optional.empty(),
        0,
        Optional.empty(),
        List.of(one, other));
  }

  /** Whether a sprocket would be off its tooth: then valves may meet pistons. */
  public boolean jumped() {
    return cause == Cause.RESEAT || parts.stream().anyMatch(Explanation::jumped);
  }

  public Unit unit() {
    return switch (cause) {
      case STRETCH -> Unit.PERCENT;
      case PHASER, JOINT, SENSOR -> Unit.CRANK_DEGREES;
      case GUIDE, CENTRE -> Unit.MM;
      default -> Unit.NOTHING;
    };
  }
}
