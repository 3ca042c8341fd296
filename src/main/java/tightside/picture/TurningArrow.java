package tightside.picture;

import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import tightside.geometry.Bearing;
import tightside.geometry.Curve;
import tightside.geometry.Rotation;

/** Which way a sprocket turns: on the crankshaft, and on every shaft that turns the other way. */
final class TurningArrow {

  /** Where the arrow runs, as a fraction of the sprocket's free face. */
  static final double RADIUS = 0.84;

  private static final double SWEEP_DEGREES = 90;

  private TurningArrow() {}

  static void draw(Draft draft, ChainView view, int place) {
    if (!view.showsTurning(place)) {
      return;
    }
    double radius = RADIUS * SprocketDrawing.rimMm(view, place);
    double head = Math.min(0.3 * radius, 0.8 * view.pitchMm());
    Rotation sense = view.sense(place);
    Bearing mark = view.chain().sprocketAt(place).mark().orElse(new Bearing(180));
    Bearing start = mark.plus(180).plus(-SWEEP_DEGREES / 2 - 5, sense);
    Tag tag = view.tag(Ink.TURNING, place);
    Curve.Arc arc = new Curve.Arc(view.centre(place), radius, start, sense.sign() * SWEEP_DEGREES);
    draft.open(tag, List.of(arc));
    Bearing along = start.plus(SWEEP_DEGREES + 90, sense);
    Vector2D tip = arc.to().add(along.direction().multiply(0.9 * head));
    draft.arrowhead(tag, tip, along.plus(8, sense), head, 0.75 * head);
  }
}
