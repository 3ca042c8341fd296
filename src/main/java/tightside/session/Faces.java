package tightside.session;

import java.util.List;
import java.util.OptionalDouble;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import tightside.drive.Arm;
import tightside.drive.Chain;
import tightside.drive.Contact;
import tightside.drive.Face;
import tightside.drive.Guide;
import tightside.drive.Plan;
import tightside.drive.Plunger;
import tightside.drive.RouteEntry;
import tightside.drive.Seen;
import tightside.drive.Shaft;
import tightside.drive.Shoe;
import tightside.drive.Sprocket;
import tightside.drive.Tensioner;
import tightside.geometry.Bearing;
import tightside.geometry.FaceCurve;
import tightside.geometry.PitchCircle;
import tightside.geometry.Rotation;

/**
 * Faces for a person to begin with: beside the run where they are put, just touching it. Where they
 * belong is for the person to measure.
 */
final class Faces {

  /** What a face can be. */
  enum Kind {
    GUIDE,
    ARM,
    SHOE
  }

  /** How far the middle of a new face stands out toward the chain, as a share of its length. */
  private static final double BULGE = 0.02;

  /** How far out a new plunger goes, mm: to be measured. */
  private static final double TRAVEL_MM = 20;

  private Faces() {}

  static Kind kind(Face face) {
    return face instanceof Guide ? Kind.GUIDE : face instanceof Arm ? Kind.ARM : Kind.SHOE;
  }

  /** A face beside the run that is at a place of a route. */
  static Face beside(Plan plan, Chain chain, int place, Kind kind, String name) {
    Ends run = run(plan, chain, place);
    Vector2D along = run.from().vectorTo(run.to());
    Vector2D out = outward(plan, chain, along);
    double off = chain.plateHeightMm() / 2;
    FaceCurve curve =
        new FaceCurve(
            run.at(0.3).add(out.multiply(off)),
            run.at(0.5).add(out.multiply(off - BULGE * 0.4 * along.norm())),
            run.at(0.7).add(out.multiply(off)));
    return made(kind, name, Contact.OUTSIDE, curve, Seen.COVER_OFF, out);
  }

  /** The same face as another kind of part. */
  static Face as(Kind kind, Face face) {
    if (kind(face) == kind) {
      return face;
    }
    Vector2D chord = face.curve().start().vectorTo(face.curve().end());
    Vector2D bulge = chord.normalize();
    double side = face.curve().bulgeMm() >= 0 ? 1 : -1;
    Vector2D out = Vector2D.of(bulge.getY() * side, -bulge.getX() * side);
    if (face instanceof Tensioner tensioner && kind != Kind.GUIDE) {
      return kind == Kind.SHOE
          ? new Shoe(face.name(), face.contact(), face.curve(), tensioner.plunger(), face.seen())
          : arm(face.name(), face.contact(), face.curve(), tensioner.plunger(), face.seen(), out);
    }
    return made(kind, face.name(), face.contact(), face.curve(), face.seen(), out);
  }

  /**
   * @param out away from the chain
   */
  private static Face made(
      Kind kind, String name, Contact contact, FaceCurve curve, Seen seen, Vector2D out) {
    Bearing push = new Bearing(roundedDegrees(Bearing.of(out.negate())));
    Plunger plunger = new Plunger(push, TRAVEL_MM, OptionalDouble.empty());
    return switch (kind) {
      case GUIDE -> new Guide(name, contact, tenths(curve), seen);
      case SHOE -> new Shoe(name, contact, tenths(curve), plunger, seen);
      case ARM -> arm(name, contact, tenths(curve), plunger, seen, out);
    };
  }

  private static Arm arm(
      String name, Contact contact, FaceCurve curve, Plunger plunger, Seen seen, Vector2D out) {
    double length = curve.start().distance(curve.end());
    return new Arm(
        name,
        contact,
        tenths(curve.end().add(out.multiply(0.04 * length + 4))),
        curve,
        tenths(curve.start().lerp(curve.end(), 0.12).add(out.multiply(0.06 * length + 6))),
        plunger,
        seen);
  }

  private static double roundedDegrees(Bearing bearing) {
    return Math.rint(bearing.degrees());
  }

  private static FaceCurve tenths(FaceCurve curve) {
    return curve.moved(Faces::tenths);
  }

  static Vector2D tenths(Vector2D point) {
    return Vector2D.of(
        Math.rint(point.getX() * 10) / 10 + 0.0, Math.rint(point.getY() * 10) / 10 + 0.0);
  }

  /** A straight run, mm. */
  private record Ends(Vector2D from, Vector2D to) {

    Vector2D at(double share) {
      return from.lerp(to, share);
    }
  }

  /** Roughly where the chain runs between the sprockets before and after a place. */
  private static Ends run(Plan plan, Chain chain, int place) {
    List<Integer> places = chain.sprocketPlaces();
    int before = places.stream().filter(p -> p < place).reduce((a, b) -> b).orElse(0);
    int after = places.stream().filter(p -> p >= place).findFirst().orElse(places.get(0));
    Vector2D a = centre(plan, chain, before);
    Vector2D b = centre(plan, chain, after);
    if (a.distance(b) < 1) {
      return new Ends(a, a.add(Vector2D.of(0, 100)));
    }
    Vector2D out = outward(plan, chain, a.vectorTo(b));
    return new Ends(
        a.add(out.multiply(radius(chain, before))), b.add(out.multiply(radius(chain, after))));
  }

  private static Vector2D centre(Plan plan, Chain chain, int place) {
    return plan.shaft(chain.sprocketAt(place).shaft()).map(Shaft::at).orElse(Vector2D.ZERO);
  }

  private static double radius(Chain chain, int place) {
    RouteEntry entry = chain.route().get(place);
    return new PitchCircle(((Sprocket) entry).teeth(), chain.pitchMm()).radiusMm();
  }

  /** Away from the inside of the loop: to the left of a chain that travels clockwise. */
  private static Vector2D outward(Plan plan, Chain chain, Vector2D along) {
    Vector2D unit = along.normalize();
    boolean inside = chain.driver().contact() == Contact.INSIDE;
    boolean clockwise = (plan.rotation() == Rotation.CLOCKWISE) == inside;
    return clockwise
        ? Vector2D.of(-unit.getY(), unit.getX())
        : Vector2D.of(unit.getY(), -unit.getX());
  }
}
