package tightside.window;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import tightside.drive.Drive;
import tightside.picture.DrivePicture;
import tightside.picture.Ink;
import tightside.picture.Picture;
import tightside.picture.PictureOptions;
import tightside.picture.Shape;
import tightside.picture.Standing;
import tightside.timing.Solution;
import tightside.timing.State;

/**
 * The words in a picture. They keep clear of everything that turns, wherever it has turned to, so
 * they are found their places once and stay there while the engine turns.
 *
 * @param still the state they hold for, but for the crank
 * @param cycles whole cycles of the crank that they tell of
 * @param options of the picture, for its words
 * @param leaders the lines from the words to what they name
 * @param standing what else stays of the picture in which they found their places
 */
record Captions(
    Drive drive,
    State still,
    long cycles,
    PictureOptions options,
    List<Shape> leaders,
    List<Shape> words,
    Standing standing) {

  private static final Set<Ink> WORDS = EnumSet.of(Ink.COUNT, Ink.LABEL, Ink.WARNING);

  static Captions of(Solution solution, PictureOptions options) {
    Standing standing = DrivePicture.standing(solution, options);
    Picture full = standing.picture();
    return new Captions(
        solution.drive(),
        still(solution),
        cycles(solution),
        options,
        full.shapes().stream().filter(s -> s.tag().ink() == Ink.LEADER).toList(),
        full.shapes().stream().filter(s -> WORDS.contains(s.tag().ink())).toList(),
        standing);
  }

  /** None: where they would have no room to be read. */
  static Captions none(Solution solution, PictureOptions options) {
    return new Captions(
        solution.drive(),
        still(solution),
        cycles(solution),
        options,
        List.of(),
        List.of(),
        DrivePicture.standing(solution, options.withoutWords()));
  }

  private static long cycles(Solution solution) {
    return DrivePicture.wholeCycles(solution.state());
  }

  private static State still(Solution solution) {
    return solution.state().turnedTo(0, solution.state().arrived());
  }

  /** Whether they can stay for another solution. */
  boolean hold(Solution other, PictureOptions asked) {
    return drive == other.drive()
        && cycles == cycles(other)
        && options.equals(asked)
        && still.equals(still(other));
  }

  /** The picture of a solution with these words on it. */
  Picture over(Solution solution) {
    Picture bare = DrivePicture.moved(standing, solution, options);
    List<Shape> all = new ArrayList<>(bare.shapes());
    all.addAll(leaders);
    all.addAll(words);
    return new Picture(all, bare.bounds(), bare.lineMm(), bare.title(), bare.description());
  }

  /** The shapes of such a picture that lie under its words: all that moves, and the leaders. */
  List<Shape> under(Picture picture) {
    return picture.shapes().subList(0, picture.shapes().size() - words.size());
  }
}
