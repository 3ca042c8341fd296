package tightside.picture;

import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import tightside.drive.Plunger;
import tightside.drive.Tensioner;
import tightside.geometry.Pose;

/**
 * A plunger, its body, and the ratchet steps that it has passed. Own frame: the y axis is the way
 * it pushes, the origin is where its end stands fully pushed back.
 */
final class PlungerDrawing {

  private final Draft draft;
  private final ChainView view;
  private final int place;
  private final Pose pose;
  private final double half;
  private final double mouth;
  private final double bottom;

  private PlungerDrawing(
      Draft draft, ChainView view, int place, Plunger plunger, Vector2D pushedBack) {
    this.draft = draft;
    this.view = view;
    this.place = place;
    pose = new Pose(pushedBack, plunger.bearing());
    half = 0.5 * view.plateMm();
    mouth = -0.7 * view.plateMm();
    bottom = mouth - bodyMm(view, plunger);
  }

  /**
   * @param pushedBack where the plunger's end stands fully pushed back, mm
   */
  static void draw(Draft draft, ChainView view, int place, Plunger plunger, Vector2D pushedBack) {
    PlungerDrawing drawing = new PlungerDrawing(draft, view, place, plunger, pushedBack);
    double extension = view.extensionMm();
    drawing.rod(extension);
    drawing.steps(plunger, extension);
    drawing.body();
    drawing.keepClear(extension);
  }

  /** Length of the body, mm. */
  static double bodyMm(ChainView view, Plunger plunger) {
    return Math.max(0.9 * plunger.travelMm(), 2.4 * view.plateMm());
  }

  private void rod(double extension) {
    box(Ink.PLUNGER, half, mouth - 1, extension);
    box(Ink.PLUNGER, 1.35 * half, extension - 0.32 * view.plateMm(), extension);
  }

  /** One notch for each step passed, each where it stands now, and the pawl at the mouth. */
  private void steps(Plunger plunger, double extension) {
    if (plunger.stepMm().isEmpty()) {
      return;
    }
    double step = plunger.stepMm().getAsDouble();
    long passed = plunger.stepsAt(extension).orElse(0);
    for (int k = 1; k <= passed; k++) {
      double y = mouth + extension - k * step;
      draft.line(view.tag(Ink.RATCHET_STEP, place), at(half, y), at(0.35 * half, y - 0.15 * half));
    }
    draft.polygon(
        view.tag(Ink.PLUNGER_BODY, place),
        List.of(
            at(half, mouth),
            at(1.9 * half, mouth + 0.7 * half),
            at(1.9 * half, mouth - 0.4 * half)));
  }

  private void body() {
    box(Ink.PLUNGER_BODY, 1.7 * half, bottom, mouth);
    draft.line(view.tag(Ink.GROUND, place), at(-1.7 * half, bottom), at(1.7 * half, bottom));
  }

  private void box(Ink ink, double halfWidth, double from, double to) {
    draft.polygon(
        view.tag(ink, place),
        List.of(at(-halfWidth, from), at(-halfWidth, to), at(halfWidth, to), at(halfWidth, from)));
  }

  private Vector2D at(double x, double y) {
    return pose.apply(Vector2D.of(x, y));
  }

  private void keepClear(double extension) {
    for (double y = bottom; y < extension; y += 2 * half) {
      draft.keepClear(at(0, y), 2.1 * half);
    }
  }

  /** The corners of a box round a plunger and its body, mm. */
  static List<Vector2D> outline(ChainView view, int place, Tensioner tensioner) {
    Vector2D back = FaceDrawing.pushedBack(view, place, tensioner);
    PlungerDrawing own = new PlungerDrawing(new Draft(), view, place, tensioner.plunger(), back);
    double side = 2.1 * own.half;
    double end = view.extensionMm();
    return List.of(
        own.at(-side, own.bottom - own.half),
        own.at(-side, end),
        own.at(side, end),
        own.at(side, own.bottom - own.half));
  }

  /** The middle of a plunger's body, mm. */
  static Vector2D bodyOf(ChainView view, int place, Tensioner tensioner) {
    Vector2D back = FaceDrawing.pushedBack(view, place, tensioner);
    PlungerDrawing own = new PlungerDrawing(new Draft(), view, place, tensioner.plunger(), back);
    return own.at(0, (own.mouth + own.bottom) / 2);
  }
}
