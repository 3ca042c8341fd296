package tightside.picture;

import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import tightside.geometry.Bearing;

/**
 * A few words and where they may stand.
 *
 * @param lines from top to bottom; the first is the heavier
 * @param spots places to try, the best first
 */
record Label(Tag first, Tag rest, List<String> lines, List<Spot> spots) {

  /**
   * A place for a label.
   *
   * @param names the point that the label speaks of, mm
   * @param away the unit vector from there to the label
   * @param startMm how far out the leader begins
   * @param gapMm how far out the label stands
   */
  record Spot(Vector2D names, Vector2D away, double startMm, double gapMm) {

    /** The same, aside from there round the point. */
    Spot turned(double clockwiseDegrees) {
      return clockwiseDegrees == 0
          ? this
          : new Spot(names, Bearing.of(away).plus(clockwiseDegrees).direction(), startMm, gapMm);
    }
  }

  double widthMm(double em) {
    return lines.stream().mapToDouble(line -> TextSize.widthMm(line, em)).max().orElse(0);
  }

  double heightMm(double em) {
    return lines.size() * LabelPlacer.LEADING * em;
  }
}
