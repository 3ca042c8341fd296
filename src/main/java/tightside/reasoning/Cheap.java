package tightside.reasoning;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/**
 * Cheap causes that are looked at before anything is taken apart. How often something is found
 * under each explanation is a guess: common practice, no source.
 */
public enum Cheap {
  /** Level, age and kind of the oil. */
  OIL,
  /** Plugs and wires of sensors and phaser valves. */
  WIRING;

  /** The probability that something is found wrong. */
  double foundUnder(Explanation explanation) {
    return explanation.parts().isEmpty()
        ? single(explanation)
        : explanation.parts().stream().mapToDouble(this::single).max().orElseThrow();
  }

  private double single(Explanation explanation) {
    boolean driven = explanation.manner().equals(Optional.of(Explanation.Manner.DRIVEN));
    if (this == WIRING) {
      return switch (explanation.cause()) {
        case PHASER -> driven ? 0.4 : 0.05;
        case SENSOR -> 0.3;
        case OTHER -> 0.2;
        default -> 0.05;
      };
    }
    return switch (explanation.cause()) {
      case PHASER -> driven ? 0.5 : 0.3;
      case TENSIONER -> 0.4;
      case STRETCH, GUIDE -> 0.25;
      case OTHER -> 0.2;
      default -> 0.1;
    };
  }

  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  public static Optional<Cheap> of(String word) {
    return Arrays.stream(values()).filter(c -> c.word().equals(word)).findFirst();
  }
}
