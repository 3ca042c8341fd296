package tightside.record;

/**
 * What a person entered at a step, in the words that stood there, so that it is understood without
 * the program.
 *
 * @param asked the step, as it was shown
 * @param given as typed; empty where a step was only ticked
 * @param says the verdict in one sentence; empty where there is none
 */
public record Answer(String asked, String given, Verdict verdict, String says) {

  /** What was given, in words. */
  public String givenOrDone() {
    return given.isEmpty() ? "done" : given;
  }
}
