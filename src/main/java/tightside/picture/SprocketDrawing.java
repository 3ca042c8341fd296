package tightside.picture;

import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import tightside.drive.Joint;
import tightside.drive.Sprocket;
import tightside.geometry.Bearing;
import tightside.geometry.Pose;
import tightside.geometry.ToothProfile;

/** One sprocket: body, teeth, hub, and what holds it on its shaft. */
final class SprocketDrawing {

  private SprocketDrawing() {}

  static void draw(Draft draft, ChainView view, int place) {
    ToothProfile profile = view.profile(place);
    Vector2D centre = view.centre(place);
    draft.circle(view.tag(Ink.SPROCKET, place), centre, profile.rootRadiusMm());
    Tag tooth = view.tag(Ink.TOOTH, place);
    Stencil stencil = tooth(profile);
    Bearing first = view.toothAt(place);
    for (int i = 0; i < profile.teeth(); i++) {
      Bearing out = first.plus(i * 360.0 / profile.teeth());
      Vector2D foot = centre.add(out.direction().multiply(profile.rootRadiusMm()));
      draft.placed(tooth, stencil, new Pose(foot, out));
    }
    hub(draft, view, place);
    draft.keepClear(centre, view.clearRadiusMm(place));
  }

  /** A tooth about the middle of its foot, on the circle at the bottom of the gaps. */
  private static Stencil tooth(ToothProfile profile) {
    Pose down = new Pose(Vector2D.of(0, -profile.rootRadiusMm()), new Bearing(0));
    return new Stencil(profile.tooth().stream().map(c -> c.placed(down)).toList(), false);
  }

  /** Radius of the hub, mm. */
  static double hubMm(ChainView view, int place) {
    return 0.18 * view.profile(place).rootRadiusMm();
  }

  /** How far out from a sprocket's centre the chain leaves its face free to be drawn on, mm. */
  static double rimMm(ChainView view, int place) {
    double underChain = view.pitchCircle(place).radiusMm() - 0.56 * view.plateMm();
    double root = view.profile(place).rootRadiusMm();
    return Math.max(0.5 * root, Math.min(root, underChain));
  }

  private static void hub(Draft draft, ChainView view, int place) {
    Tag tag = view.tag(Ink.SHAFT, place);
    Vector2D centre = view.centre(place);
    double hub = hubMm(view, place);
    draft.circle(tag, centre, hub);
    Sprocket sprocket = view.chain().sprocketAt(place);
    Bearing up =
        new Bearing(0)
            .plus(view.turnedDegrees(place) + view.errorDegrees(place), view.sense(place));
    Pose pose = new Pose(centre, up);
    if (sprocket.joint() == Joint.DOWEL) {
      draft.circle(tag, pose.apply(Vector2D.of(0, 0.66 * hub)), 0.17 * hub);
    } else if (sprocket.joint() == Joint.KEY) {
      double half = 0.2 * hub;
      draft.polygon(
          tag,
          List.of(
              pose.apply(Vector2D.of(-half, hub)),
              pose.apply(Vector2D.of(half, hub)),
              pose.apply(Vector2D.of(half, 0.6 * hub)),
              pose.apply(Vector2D.of(-half, 0.6 * hub))));
    }
    draft.circle(tag, centre, 0.3 * hub);
  }
}
