package tightside.session;

import java.util.Optional;

/** What came of something that a person typed where a number belongs. */
public sealed interface Typed {

  /** A number. */
  record Number(double value) implements Typed {}

  /**
   * No number that can be used.
   *
   * @param sentence what is wrong and what would be right
   */
  record Refused(String sentence) implements Typed {}

  /** The sentence of a refusal. */
  default Optional<String> refusal() {
    return this instanceof Refused refused ? Optional.of(refused.sentence()) : Optional.empty();
  }
}
