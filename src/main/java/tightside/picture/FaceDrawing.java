package tightside.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import tightside.drive.Arm;
import tightside.drive.Face;
import tightside.drive.Shoe;
import tightside.drive.Tensioner;
import tightside.geometry.Bearing;
import tightside.geometry.Curve;
import tightside.geometry.OrientedCircle;
import tightside.geometry.Rotation;
import tightside.geometry.Tangent;

/** What rubs a chain: guides, and the arm or shoe of its tensioner. */
final class FaceDrawing {

  /** Depth of the material behind a face, in plate heights. */
  private static final double DEPTH = 0.85;

  private final Draft draft;
  private final ChainView view;
  private final int place;
  private final Band band;

  private FaceDrawing(Draft draft, ChainView view, int place, Face face) {
    this.draft = draft;
    this.view = view;
    this.place = place;
    band =
        new Band(
            face instanceof Tensioner t ? t.curveAt(view.extensionMm()) : face.curve(),
            view.sense(place),
            depthMm(view));
  }

  static void draw(Draft draft, ChainView view) {
    for (int place = 0; place < view.chain().route().size(); place++) {
      if (view.chain().route().get(place) instanceof Face face) {
        FaceDrawing drawing = new FaceDrawing(draft, view, place, face);
        drawing.draw(face);
        drawing.keepClear();
      }
    }
  }

  /** Depth of the material behind a chain's faces, mm. */
  static double depthMm(ChainView view) {
    return DEPTH * view.plateMm();
  }

  private Tag tag(Ink ink) {
    return view.tag(ink, place);
  }

  private void draw(Face face) {
    if (face instanceof Tensioner tensioner) {
      PlungerDrawing.draw(
          draft, view, place, tensioner.plunger(), pushedBack(view, place, tensioner));
    }
    if (face instanceof Arm arm) {
      arm(arm);
    } else if (face instanceof Shoe) {
      merged(List.of(band.outline()));
    } else {
      draft.closed(tag(Ink.GUIDE_BODY), band.outline());
      ground();
    }
    draft.open(tag(Ink.FACE), List.of(band.front()));
  }

  /** Short slanted lines behind a guide, the usual sign for what stands still. */
  private void ground() {
    int strokes = (int) Math.max(3, band.lengthMm() / (0.6 * view.plateMm()));
    for (int i = 0; i < strokes; i++) {
      double along = (i + 0.75) / strokes;
      Vector2D root = band.at(along, band.thicknessMm());
      Vector2D in = band.inward(along);
      Vector2D slant = Vector2D.of(in.getX() - in.getY(), in.getY() + in.getX());
      draft.line(tag(Ink.GROUND), root, root.add(slant.multiply(0.35 * view.plateMm())));
    }
  }

  /** Radius of an arm's round pad as it is drawn: as large as there is room, mm. */
  private static double padMm(ChainView view, int place, Arm arm) {
    Band asDrawn = new Band(arm.curve(), view.sense(place), depthMm(view));
    double toFace = asDrawn.at(asDrawn.nearestTo(arm.pad()), 0).distance(arm.pad());
    return Math.min(0.8 * view.plateMm(), Math.max(0.2 * view.plateMm(), toFace));
  }

  /** Where the end of a tensioner's plunger stands fully pushed back, mm. */
  static Vector2D pushedBack(ChainView view, int place, Tensioner tensioner) {
    if (tensioner instanceof Arm arm) {
      Vector2D push = arm.plunger().push();
      return arm.pad().subtract(push.multiply(padMm(view, place, arm)));
    }
    Band asDrawn = new Band(tensioner.curve(), view.sense(place), depthMm(view));
    return asDrawn.at(0.5, depthMm(view));
  }

  private void arm(Arm arm) {
    double extension = view.extensionMm();
    Vector2D pad = arm.carried(arm.pad(), extension);
    double padRadius = padMm(view, place, arm);
    double boss = 0.85 * view.plateMm();
    double depth = band.thicknessMm() / 2;
    double web = 0.42 * view.plateMm();
    Vector2D toPivot = band.at(band.nearestTo(arm.pivot()), depth);
    Vector2D toPad = band.at(band.nearestTo(pad), depth);
    List<List<Curve>> parts = new ArrayList<>();
    parts.add(band.outline());
    parts.add(capsule(arm.pivot(), boss, toPivot, web));
    parts.add(capsule(pad, padRadius, toPad, web));
    parts.add(capsule(arm.pivot(), boss * 0.8, pad, padRadius * 0.7));
    parts.add(web(arm.pivot(), pad));
    merged(parts);
    draft.circle(tag(Ink.PIVOT), arm.pivot(), 0.42 * view.plateMm());
    draft.circle(tag(Ink.PIVOT), arm.pivot(), 0.14 * view.plateMm());
    draft.keepClear(arm.pivot(), boss);
    draft.keepClear(pad, padRadius);
  }

  /** What fills the space between the band and the bar from pivot to pad. */
  private List<Curve> web(Vector2D pivot, Vector2D pad) {
    List<Curve> sides = new ArrayList<>();
    double from = band.nearestTo(pad);
    double to = band.nearestTo(pivot);
    int steps = 8;
    Vector2D last = pivot;
    for (Vector2D next :
        IntStream.rangeClosed(0, steps)
            .mapToObj(i -> band.at(to + (from - to) * i / steps, band.thicknessMm() / 2))
            .toList()) {
      sides.add(new Curve.Line(last, next));
      last = next;
    }
    sides.add(new Curve.Line(last, pad));
    sides.add(new Curve.Line(pad, pivot));
    return sides;
  }

  /** Several parts drawn as one: all their edges first, then all their insides over them. */
  private void merged(List<List<Curve>> parts) {
    parts.forEach(part -> draft.closed(tag(Ink.ARM_EDGE), part));
    parts.forEach(part -> draft.closed(tag(Ink.ARM_BODY), part));
  }

  /** A bar with round ends of two radii; one circle where one end lies inside the other. */
  private static List<Curve> capsule(Vector2D a, double ra, Vector2D b, double rb) {
    OrientedCircle first = new OrientedCircle(a, ra, Rotation.CLOCKWISE);
    OrientedCircle second = new OrientedCircle(b, rb, Rotation.CLOCKWISE);
    Optional<Tangent> there = Tangent.between(first, second);
    Optional<Tangent> back = Tangent.between(second, first);
    if (there.isEmpty() || back.isEmpty()) {
      OrientedCircle larger = ra > rb ? first : second;
      return List.of(
          new Curve.Arc(larger.centre(), larger.radiusMm(), new Bearing(0), 180),
          new Curve.Arc(larger.centre(), larger.radiusMm(), new Bearing(180), 180));
    }
    return List.of(
        new Curve.Line(there.get().from(), there.get().to()),
        turn(second, there.get(), back.get()),
        new Curve.Line(back.get().from(), back.get().to()),
        turn(first, back.get(), there.get()));
  }

  private static Curve turn(OrientedCircle circle, Tangent in, Tangent out) {
    return new Curve.Arc(
        circle.centre(),
        circle.radiusMm(),
        circle.bearingAt(in.heading()),
        in.heading().turnTo(out.heading(), Rotation.CLOCKWISE));
  }

  private void keepClear() {
    int discs = (int) Math.max(4, band.lengthMm() / band.thicknessMm());
    for (int i = 0; i <= discs; i++) {
      draft.keepClear(band.at(i / (double) discs, band.thicknessMm() * 0.7), band.thicknessMm());
    }
  }
}
