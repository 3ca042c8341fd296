package tightside.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import tightside.drive.Arm;
import tightside.drive.Chain;
import tightside.drive.Face;
import tightside.drive.Guide;
import tightside.drive.Plan;
import tightside.drive.RouteEntry;
import tightside.drive.Shaft;
import tightside.drive.Shoe;
import tightside.drive.Sprocket;
import tightside.geometry.Bearing;
import tightside.geometry.FaceCurve;
import tightside.geometry.PitchCircle;

/**
 * A point of a part that can be taken and moved.
 *
 * @param at mm
 */
public record Handle(PlanPart part, Kind kind, String words, Vector2D at) {

  /** Which point of the part it is. */
  public enum Kind {
    CENTRE("centre"),
    MARK("mark"),
    START("start of the face"),
    MIDDLE("middle of the face"),
    END("end of the face"),
    PIVOT("pivot"),
    PAD("pad");

    private final String word;

    Kind(String word) {
      this.word = word;
    }

    public String word() {
      return word;
    }
  }

  String id() {
    return kind + " " + part;
  }

  /** Every handle of a plan, those of shafts first. */
  public static List<Handle> all(Plan plan) {
    List<Handle> handles = new ArrayList<>();
    for (Shaft shaft : plan.shafts()) {
      handles.add(new Handle(PlanPart.shaft(shaft.name()), Kind.CENTRE, shaft.name(), shaft.at()));
    }
    for (Chain chain : plan.chains()) {
      for (int place = 0; place < chain.route().size(); place++) {
        PlanPart part = PlanPart.entry(chain.name(), place);
        RouteEntry entry = chain.route().get(place);
        if (entry instanceof Sprocket sprocket) {
          mark(plan, chain, sprocket, part).ifPresent(handles::add);
        } else {
          face((Face) entry, part, handles);
        }
      }
    }
    return handles;
  }

  private static Optional<Handle> mark(Plan plan, Chain chain, Sprocket sprocket, PlanPart part) {
    Optional<Shaft> shaft = plan.shaft(sprocket.shaft());
    if (shaft.isEmpty() || sprocket.mark().isEmpty()) {
      return Optional.empty();
    }
    double radius = new PitchCircle(sprocket.teeth(), chain.pitchMm()).radiusMm();
    Vector2D at = shaft.get().at().add(sprocket.mark().get().direction().multiply(radius));
    return Optional.of(new Handle(part, Kind.MARK, "the mark of " + sprocket.shaft(), at));
  }

  private static void face(Face face, PlanPart part, List<Handle> handles) {
    handles.add(of(part, Kind.START, face, face.curve().start()));
    handles.add(of(part, Kind.MIDDLE, face, face.curve().middle()));
    handles.add(of(part, Kind.END, face, face.curve().end()));
    if (face instanceof Arm arm) {
      handles.add(of(part, Kind.PIVOT, face, arm.pivot()));
      handles.add(of(part, Kind.PAD, face, arm.pad()));
    }
  }

  private static Handle of(PlanPart part, Kind kind, Face face, Vector2D at) {
    return new Handle(part, kind, "the %s of %s".formatted(kind.word(), face.name()), at);
  }

  /** The plan with this point elsewhere; nothing where the part can't be so. */
  Optional<Plan> moved(Plan plan, Vector2D to) {
    try {
      if (kind == Kind.CENTRE) {
        return Optional.of(
            plan.changing(part.shaft().orElseThrow(), s -> new Shaft(s.name(), s.role(), to)));
      }
      String chain = part.chain().orElseThrow();
      int place = part.place().orElseThrow();
      List<RouteEntry> route = new ArrayList<>(plan.chain(chain).orElseThrow().route());
      route.set(place, moved(plan, route.get(place), to));
      return Optional.of(plan.changingChain(chain, c -> c.withRoute(route)));
    } catch (IllegalArgumentException unsound) {
      return Optional.empty();
    }
  }

  private RouteEntry moved(Plan plan, RouteEntry entry, Vector2D to) {
    if (entry instanceof Sprocket sprocket) {
      Vector2D centre = plan.shaft(sprocket.shaft()).orElseThrow().at();
      double tenths = Math.rint(Bearing.of(centre.vectorTo(to)).degrees() * 10) / 10;
      return sprocket.withMark(Optional.of(new Bearing(tenths)));
    }
    Face face = (Face) entry;
    FaceCurve was = face.curve();
    FaceCurve curve =
        new FaceCurve(
            kind == Kind.START ? to : was.start(),
            kind == Kind.MIDDLE ? to : was.middle(),
            kind == Kind.END ? to : was.end());
    if (face instanceof Guide guide) {
      return new Guide(guide.name(), guide.contact(), curve, guide.seen());
    }
    if (face instanceof Shoe shoe) {
      return new Shoe(shoe.name(), shoe.contact(), curve, shoe.plunger(), shoe.seen());
    }
    Arm arm = (Arm) face;
    return new Arm(
        arm.name(),
        arm.contact(),
        kind == Kind.PIVOT ? to : arm.pivot(),
        curve,
        kind == Kind.PAD ? to : arm.pad(),
        arm.plunger(),
        arm.seen());
  }
}
