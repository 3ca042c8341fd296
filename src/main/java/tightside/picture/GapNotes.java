package tightside.picture;

import java.util.List;
import java.util.OptionalDouble;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import tightside.engine.Nearest;
import tightside.engine.Obstacles;
import tightside.words.ValveWords;

/** What a chart of room against crank angle names: the least room, and the first touch. */
final class GapNotes {

  /** A chart narrower than this has no room for two notes. */
  private static final double ROOM_FOR_TWO_EMS = 24;

  private final Draft draft;
  private final GapFrame frame;
  private final double em;

  /** Nor has one less high or wide than this, for any. */
  private static final double HEIGHT_FOR_ONE_EMS = 7;

  private static final double WIDTH_FOR_ONE_EMS = 16;

  private GapNotes(Draft draft, GapFrame frame, double em) {
    this.draft = draft;
    this.frame = frame;
    this.em = em;
  }

  static void draw(Draft draft, GapFrame frame, GapScene scene) {
    GapNotes notes = new GapNotes(draft, frame, scene.emMm());
    Nearest least = scene.now().least();
    Vector2D at = frame.at(least.atDegrees(), Math.max(least.clearanceMm(), frame.leastMm()));
    Ink ink = least.contact() ? Ink.WARNING : Ink.COUNT;
    if (frame.plot().height() < HEIGHT_FOR_ONE_EMS * notes.em
        || frame.plot().width() < WIDTH_FOR_ONE_EMS * notes.em) {
      draft.circle(GapChart.tag(Ink.NAMED), at, 0.3 * notes.em);
      return;
    }
    notes.named(at, GapChart.least(least), ink, 1);
    OptionalDouble touch = Obstacles.of(scene.now()).firstTouchDegrees();
    if (frame.plot().width() < ROOM_FOR_TWO_EMS * notes.em) {
      return;
    }
    touch.ifPresent(
        degrees ->
            notes.named(
                frame.at(degrees, 0),
                List.of("stops there", "at " + ValveWords.angle(degrees)),
                Ink.WARNING,
                -1));
  }

  /**
   * A place and its words, in the corner that the curve leaves free.
   *
   * @param side 1 to the right, -1 to the left
   */
  private void named(Vector2D place, List<String> words, Ink ink, int side) {
    double width = words.stream().mapToDouble(w -> TextSize.widthMm(w, em)).max().orElse(0);
    double middle = frame.x(side * 180.0) - width / 2;
    double least = frame.plot().left() + 0.5 * em;
    double most = frame.plot().right() - width - 0.5 * em;
    double left =
        frame.reachDegrees() > 200
            ? Math.max(least, Math.min(most, middle))
            : side > 0 ? most : least;
    double y = frame.y(0) + 1.9 * em;
    Vector2D edge = Vector2D.of(side > 0 ? left - 0.3 * em : left + width + 0.3 * em, y);
    if ((edge.getX() - place.getX()) * side > 0) {
      draft.line(GapChart.tag(Ink.LEADER), place, edge);
    }
    draft.circle(GapChart.tag(Ink.NAMED), place, 0.3 * em);
    for (String line : words) {
      draft.text(GapChart.tag(ink), Vector2D.of(left, y), line, em, Shape.Align.LEFT);
      y -= 1.2 * em;
    }
  }
}
