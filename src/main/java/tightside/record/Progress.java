package tightside.record;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * How far a job is, as it stands now.
 *
 * @param answers by the step's id, for the steps that are done
 * @param typed by the step's id: what stands in a field and is not entered yet
 * @param note the person's own words on the job
 * @param stop the stop card that is in hand
 * @param leftOpen once the job is finished, the steps that were not done, as they were shown
 */
public record Progress(
    Map<String, Answer> answers,
    Map<String, String> typed,
    String note,
    Optional<String> stop,
    Optional<List<String>> leftOpen) {

  public Progress {
    answers = Map.copyOf(answers);
    typed = Map.copyOf(typed);
    leftOpen = leftOpen.map(List::copyOf);
  }

  /** Nothing done yet. */
  public static Progress none() {
    return new Progress(Map.of(), Map.of(), "", Optional.empty(), Optional.empty());
  }

  public boolean begun() {
    return !equals(none());
  }

  public boolean finished() {
    return leftOpen.isPresent();
  }

  public Optional<Answer> answer(String step) {
    return Optional.ofNullable(answers.get(step));
  }

  /** Enters an answer; what was typed at the step is used up. */
  public Progress entered(String step, Answer answer) {
    Map<String, Answer> more = new HashMap<>(answers);
    more.put(step, answer);
    return new Progress(more, without(typed, step), note, stop, leftOpen);
  }

  /** Takes the answer of a step back. */
  public Progress cleared(String step) {
    return new Progress(without(answers, step), without(typed, step), note, stop, leftOpen);
  }

  /** Notes what stands in a step's field; nothing where it is empty. */
  public Progress typed(String step, String text) {
    Map<String, String> more = without(typed, step);
    if (!text.isEmpty()) {
      more.put(step, text);
    }
    return new Progress(answers, more, note, stop, leftOpen);
  }

  public Progress noted(String text) {
    return new Progress(answers, typed, text, stop, leftOpen);
  }

  public Progress stopped(String card) {
    return new Progress(answers, typed, note, Optional.of(card), leftOpen);
  }

  /** Puts the stop card away. */
  public Progress wentOn() {
    return new Progress(answers, typed, note, Optional.empty(), leftOpen);
  }

  public Progress finished(List<String> open) {
    return new Progress(answers, typed, note, stop, Optional.of(open));
  }

  /** Goes on with a job that was finished. */
  public Progress reopened() {
    return new Progress(answers, typed, note, stop, Optional.empty());
  }

  private static <T> Map<String, T> without(Map<String, T> map, String step) {
    Map<String, T> rest = new HashMap<>(map);
    rest.remove(step);
    return rest;
  }
}
