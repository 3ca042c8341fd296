package tightside.picture;

import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import tightside.drive.Arm;
import tightside.drive.Chain;
import tightside.drive.Face;
import tightside.drive.Part;
import tightside.drive.Plan;
import tightside.drive.Plunger;
import tightside.drive.RouteEntry;
import tightside.drive.Shaft;
import tightside.drive.Sprocket;
import tightside.drive.Tensioner;
import tightside.geometry.Bearing;
import tightside.geometry.Curve;
import tightside.geometry.FaceCurve;
import tightside.geometry.PitchCircle;
import tightside.geometry.Rotation;

/**
 * The parts of a drive that makes no drive yet: pitch circles, faces as thin lines, plungers as
 * arrows, and no chain.
 */
public final class PlanPicture {

  /** Size of a shaft that carries no sprocket yet, mm. */
  private static final double BARE_SHAFT_MM = 8;

  private final Draft draft = new Draft();
  private final Plan plan;
  private final double em;

  private PlanPicture(Plan plan, double em) {
    this.plan = plan;
    this.em = em;
  }

  /**
   * @param em size of its words, mm
   */
  public static Picture of(Plan plan, double em) {
    PlanPicture picture = new PlanPicture(plan, em);
    for (Chain chain : plan.chains()) {
      for (int place = 0; place < chain.route().size(); place++) {
        picture.entry(chain, place);
      }
    }
    plan.shafts().forEach(picture::shaft);
    Draft draft = picture.draft;
    if (draft.shapes().isEmpty()) {
      draft.circle(tag(Ink.SHAFT, Part.whole()), Vector2D.ZERO, BARE_SHAFT_MM);
    }
    Bounds bounds = draft.bounds();
    double size = Math.max(60, Math.max(bounds.width(), bounds.height()));
    return new Picture(
        draft.shapes(),
        bounds.grown(0.05 * size),
        size / 900,
        plan.name(),
        "The parts as drawn; they make no drive yet.");
  }

  private static Tag tag(Ink ink, Part part) {
    return new Tag(ink, part, Plane.FRONT);
  }

  private void shaft(Shaft shaft) {
    Part part = Part.shaft(shaft.name());
    draft.circle(tag(Ink.SHAFT, part), shaft.at(), BARE_SHAFT_MM / 2);
    Vector2D below = shaft.at().add(Vector2D.of(0, -BARE_SHAFT_MM / 2 - 1.1 * em));
    draft.text(tag(Ink.LABEL, part), below, shaft.name(), em, Shape.Align.MIDDLE);
  }

  private void entry(Chain chain, int place) {
    RouteEntry entry = chain.route().get(place);
    Part part = Part.route(chain.name(), place);
    if (entry instanceof Sprocket sprocket) {
      plan.shaft(sprocket.shaft()).ifPresent(s -> sprocket(chain, sprocket, s.at(), part));
    } else {
      face((Face) entry, part);
    }
  }

  private void sprocket(Chain chain, Sprocket sprocket, Vector2D centre, Part part) {
    double radius = new PitchCircle(sprocket.teeth(), chain.pitchMm()).radiusMm();
    draft.circle(tag(Ink.SPROCKET, part), centre, radius);
    draft.open(
        tag(Ink.NO_CHAIN, part), List.of(new Curve.Arc(centre, radius, new Bearing(0), 359.9)));
    sprocket
        .mark()
        .ifPresent(
            mark ->
                draft.arrowhead(
                    tag(Ink.MARK, part),
                    centre.add(mark.direction().multiply(radius)),
                    mark,
                    0.25 * radius,
                    0.2 * radius));
  }

  private void face(Face face, Part part) {
    draft.open(tag(Ink.FACE, part), List.of(curve(face.curve())));
    Vector2D middle = face.curve().middle();
    Vector2D beside = middle.add(Vector2D.of(0.8 * em, 0));
    draft.text(tag(Ink.LABEL, part), beside, face.name(), em, Shape.Align.LEFT);
    if (face instanceof Arm arm) {
      draft.line(tag(Ink.LEADER, part), arm.pivot(), arm.curve().end());
      draft.line(tag(Ink.LEADER, part), arm.pivot(), arm.pad());
      draft.circle(tag(Ink.PIVOT, part), arm.pivot(), 4);
      draft.circle(tag(Ink.PIVOT, part), arm.pad(), 3);
      plunger(arm.plunger(), arm.pad(), part);
    } else if (face instanceof Tensioner tensioner) {
      plunger(tensioner.plunger(), middle, part);
    }
  }

  private void plunger(Plunger plunger, Vector2D at, Part part) {
    Vector2D from = at.subtract(plunger.push().multiply(plunger.travelMm() + 10));
    draft.line(tag(Ink.TURNING, part), from, at);
    draft.arrowhead(tag(Ink.TURNING, part), at, plunger.bearing(), 6, 5);
  }

  /** The arc through a face's three points, whichever way it bulges. */
  private static Curve curve(FaceCurve face) {
    if (face.straight()) {
      return new Curve.Line(face.start(), face.end());
    }
    Vector2D centre = face.centre();
    Bearing start = Bearing.of(centre.vectorTo(face.start()));
    Bearing end = Bearing.of(centre.vectorTo(face.end()));
    Rotation sense = face.bulge().orElseThrow();
    return new Curve.Arc(
        centre, centre.distance(face.middle()), start, sense.sign() * start.turnTo(end, sense));
  }
}
