package tightside.why;

import java.util.Optional;
import tightside.picture.Picture;
import tightside.reasoning.Answer;

/**
 * The plane of what two camshafts read, or the rows of one: every explanation forces the readings
 * onto a line or a point, and there the readings are, with the room that their spread gives them.
 */
public final class WhyPicture {

  private WhyPicture() {}

  /** Nothing where no camshaft was read by its sensor. */
  public static Optional<Picture> of(Answer answer) {
    return answer
        .forced()
        .map(f -> f.up().isPresent() ? new TwoShafts(f).drawn() : new OneShaft(f).drawn());
  }
}
