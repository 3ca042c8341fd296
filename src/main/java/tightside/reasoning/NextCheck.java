package tightside.reasoning;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import tightside.drive.Seen;

/**
 * Something to do next, and what it is expected to decide.
 *
 * @param chain that is looked at, where it is one
 * @param shaft that is looked at, where it is one
 * @param to the shaft at the far end of a run that is counted from {@code shaft}
 * @param access what has to be seen
 * @param minutes it takes, once there is access
 * @param openingMinutes it takes to get access
 * @param bits by how much it is expected to lessen the doubt among explanations, in bits
 * @param held whether it has to wait until the engine has been turned by hand
 * @param expects what to expect under each explanation, the most probable first
 */
public record NextCheck(
    CheckKind kind,
    Optional<String> chain,
    Optional<String> shaft,
    Optional<String> to,
    Seen access,
    double minutes,
    double openingMinutes,
    double bits,
    boolean held,
    List<Expect> expects) {

  public NextCheck {
    expects = List.copyOf(expects);
  }

  /** In what an outcome is told. */
  public enum Outcome {
    /** A length, mm. */
    MM,
    /** An angle, crank degrees. */
    CRANK_DEGREES,
    /** A stretch, or a share of what is expected, percent. */
    PERCENT,
    /** A number of links. */
    LINKS,
    /** Whether a tool goes in. */
    GOES_IN,
    /** Whether something is found wrong. */
    FAULT_FOUND,
    /** Whether edges stand unevenly. */
    UNEVEN
  }

  /**
   * What to expect under the foremost explanation of a group.
   *
   * @param low 5 in 100 lie below; the likeliest number of links
   * @param high 5 in 100 lie above
   * @param probability that the answer is yes, or of the likeliest number of links
   */
  public record Expect(
      Explanation what,
      Outcome outcome,
      OptionalDouble low,
      OptionalDouble high,
      OptionalDouble probability) {}

  public double bitsPerMinute() {
    return bits / Math.max(0.5, minutes + openingMinutes);
  }
}
