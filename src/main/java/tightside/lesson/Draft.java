package tightside.lesson;

import java.util.Optional;

/**
 * A prediction that is being written.
 *
 * @param amount as typed
 */
public record Draft(
    Optional<Cause> cause, Optional<String> shaft, Optional<Way> way, String amount) {

  static Draft empty() {
    return new Draft(Optional.empty(), Optional.empty(), Optional.empty(), "");
  }

  public Draft with(Cause other) {
    return new Draft(Optional.of(other), shaft, way, amount);
  }

  /**
   * @param other {@link Diagnosis#NO_SHAFT} for none
   */
  public Draft shaft(String other) {
    return new Draft(cause, Optional.of(other), way, amount);
  }

  public Draft with(Way other) {
    return new Draft(cause, shaft, Optional.of(other), amount);
  }

  public Draft amount(String typed) {
    return new Draft(cause, shaft, way, typed);
  }
}
