package tightside.picture;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import tightside.drive.Seen;
import tightside.drive.Tensioner;
import tightside.geometry.Bearing;
import tightside.geometry.Pose;
import tightside.geometry.Rotation;

/**
 * A veil with a few strokes across it, over everything of a chain that can't be seen with the
 * access at hand: sprockets by their marks, runs by themselves, and, with the cover on, the
 * tensioner's plunger. What lies under it stays to be made out. It stands still while all turns.
 */
final class Veil {

  /** From the line of the chain to the edge of the veil, in plate heights. */
  private static final double HALF = 0.95;

  /** From stroke to stroke, in plate heights. */
  private static final double STROKES = 2.6;

  /** Points along the edge, in pitches from one to the next. */
  private static final double STEP = 0.5;

  private final Draft draft;
  private final ChainView view;
  private final Seen access;
  private final double half;

  private Veil(Draft draft, ChainView view, Seen access) {
    this.draft = draft;
    this.view = view;
    this.access = access;
    half = HALF * view.plateMm();
  }

  static void draw(Draft draft, ChainView view, Seen access) {
    new Veil(draft, view, access).draw();
  }

  private void draw() {
    List<Integer> places = view.chain().sprocketPlaces();
    for (int i = 0; i < places.size(); i++) {
      if (hidden(view.chain().sprocketAt(places.get(i)).strandSeen())) {
        int next = places.get((i + 1) % places.size());
        int from = places.get(i);
        view.path().ifPresent(path -> run(new PathWalk(path), from, next));
      }
    }
    for (int place : places) {
      if (hidden(view.chain().sprocketAt(place).seen())) {
        disc(view.centre(place), view.clearRadiusMm(place) + 0.2 * view.plateMm());
      }
    }
    if (access == Seen.COVER_ON) {
      view.chain()
          .tensionerPlace()
          .ifPresent(
              place -> {
                Tensioner tensioner = view.chain().tensioner().orElseThrow();
                if (hidden(tensioner.seen())) {
                  draft.polygon(view.tag(Ink.VEIL), PlungerDrawing.outline(view, place, tensioner));
                }
              });
    }
  }

  private boolean hidden(Seen needed) {
    return needed.compareTo(access) > 0;
  }

  private void run(PathWalk walk, int from, int to) {
    double begins =
        view.path().orElseThrow().pitchesTo(from)
            + view.path().orElseThrow().wrap(from).degrees()
                * view.chain().sprocketAt(from).teeth()
                / 360;
    double length = view.path().orElseThrow().pitchesTo(to) - begins;
    length += length < 0 ? walk.pitches() : 0;
    int steps = Math.max(1, (int) Math.ceil(length / STEP));
    List<Vector2D> edge = new ArrayList<>();
    List<Vector2D> back = new ArrayList<>();
    for (int i = 0; i <= steps; i++) {
      double at = begins + length * i / steps;
      edge.add(beside(walk, at, half));
      back.add(0, beside(walk, at, -half));
    }
    edge.addAll(back);
    draft.polygon(view.tag(Ink.VEIL), edge);
    double apart = STROKES * view.plateMm() / view.pitchMm();
    double slant = half / view.pitchMm();
    for (double at = begins + slant; at < begins + length - slant; at += apart) {
      draft.line(
          view.tag(Ink.VEIL_STROKE),
          beside(walk, at - slant, -half),
          beside(walk, at + slant, half));
    }
  }

  private static Vector2D beside(PathWalk walk, double at, double mm) {
    Bearing across = walk.headingAt(at).plus(90, Rotation.CLOCKWISE);
    return walk.pointAt(at).add(across.direction().multiply(mm));
  }

  private void disc(Vector2D centre, double radius) {
    draft.circle(view.tag(Ink.VEIL), centre, radius);
    Pose slanting = new Pose(centre, new Bearing(45));
    double apart = STROKES * view.plateMm();
    int strokes = (int) Math.floor(radius / apart);
    for (int k = -strokes; k <= strokes; k++) {
      double x = k * apart;
      double y = Math.sqrt(radius * radius - x * x);
      draft.line(
          view.tag(Ink.VEIL_STROKE),
          slanting.apply(Vector2D.of(x, -y)),
          slanting.apply(Vector2D.of(x, y)));
    }
  }
}
