package tightside.lesson;

import java.util.List;

/**
 * The question with which a lesson ends.
 *
 * @param options to choose the right belief from
 */
public record Closing(String question, List<String> options) {

  public Closing {
    options = List.copyOf(options);
  }
}
