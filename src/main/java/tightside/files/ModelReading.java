package tightside.files;

import java.util.List;
import java.util.Optional;

/**
 * What came of reading a model file.
 *
 * @param model present if and only if no problem is an error
 * @param problems by line and column; warnings travel with the model
 * @param unfinished what was read of a drive whose parts don't hang together yet
 */
public record ModelReading(
    Optional<Model> model, List<Problem> problems, Optional<Unfinished> unfinished) {

  public ModelReading {
    problems = List.copyOf(problems);
    if (model.isPresent() == problems.stream().anyMatch(Problem::error)) {
      throw new IllegalArgumentException("either a model or an error, not " + problems);
    }
  }
}
