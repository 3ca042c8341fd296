package tightside.lesson;

import java.util.List;
import tightside.timing.State;

/**
 * What comes out once a prediction is committed.
 *
 * @param state what is wrong with the drive
 * @param right the right answer
 * @param explained why, part by part
 * @param after what the belief of the lesson made of it
 */
public record Opened(
    State state, Diagnosis right, Marking marking, List<Explained> explained, List<String> after) {

  public Opened {
    explained = List.copyOf(explained);
    after = List.copyOf(after);
  }
}
