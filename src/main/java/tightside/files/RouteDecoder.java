package tightside.files;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import tightside.drive.Arm;
import tightside.drive.Contact;
import tightside.drive.Guide;
import tightside.drive.Joint;
import tightside.drive.Limits;
import tightside.drive.Plunger;
import tightside.drive.RouteEntry;
import tightside.drive.Seen;
import tightside.drive.Shoe;
import tightside.drive.Sprocket;
import tightside.geometry.Bearing;
import tightside.geometry.FaceCurve;

/** Reads what stands on a chain's route: sprockets, guides, arms and shoes. */
final class RouteDecoder {

  private static final List<String> KINDS = List.of("sprocket", "guide", "arm", "shoe");

  private RouteDecoder() {}

  static Optional<RouteEntry> entry(SectionReader s) {
    List<String> kinds = s.keys();
    kinds.retainAll(KINDS);
    if (kinds.size() != 1) {
      complainOfKind(s, kinds);
      return Optional.empty();
    }
    SectionReader entry = s.called(kinds.get(0));
    return switch (entry.name()) {
      case "sprocket" -> sprocket(entry);
      case "guide" -> guide(entry);
      case "arm" -> arm(entry);
      default -> shoe(entry);
    };
  }

  private static void complainOfKind(SectionReader s, List<String> kinds) {
    if (!kinds.isEmpty()) {
      Map<String, Object> facts = Map.of("first", kinds.get(0), "second", kinds.get(1));
      s.may(kinds.get(1)).orElseThrow().complainOfKey(Fault.ENTRY_OF_TWO_KINDS, facts);
      return;
    }
    for (String key : s.keys()) {
      Optional<String> near = NearMiss.of(key, KINDS);
      if (near.isPresent()) {
        Map<String, Object> facts = Map.of("key", key, "near", near.get());
        s.may(key).orElseThrow().complainOfKey(Fault.KEY_NEARLY, facts);
        return;
      }
    }
    s.complain(Fault.ENTRY_WITHOUT_KIND, Map.of("known", KINDS));
  }

  private static Optional<RouteEntry> sprocket(SectionReader s) {
    Optional<String> shaft = Words.name(s.need("sprocket"));
    Optional<Integer> teeth = Numbers.count(s.need("teeth"), Limits.TEETH);
    Optional<Bearing> mark = Numbers.bearing(s.may("mark"));
    Contact contact = contact(s, Contact.INSIDE);
    Joint joint = Words.choice(s.may("joint"), Joint.values()).orElse(Joint.DOWEL);
    Seen seen = seen(s, "seen");
    Seen strandSeen = seen(s, "strand-seen");
    if (!s.sound()) {
      return Optional.empty();
    }
    return Optional.of(
        new Sprocket(shaft.get(), teeth.get(), mark, contact, joint, seen, strandSeen));
  }

  private static Optional<RouteEntry> guide(SectionReader s) {
    Optional<String> name = Words.name(s.need("guide"));
    Contact contact = contact(s, Contact.OUTSIDE);
    Optional<FaceCurve> face = Lists.face(s.need("face"));
    Seen seen = seen(s, "seen");
    if (!s.sound()) {
      return Optional.empty();
    }
    return Optional.of(new Guide(name.get(), contact, face.get(), seen));
  }

  private static Optional<RouteEntry> arm(SectionReader s) {
    Optional<String> name = Words.name(s.need("arm"));
    Contact contact = contact(s, Contact.OUTSIDE);
    Optional<Vector2D> pivot = Lists.point(s.need("pivot"));
    Optional<FaceCurve> face = Lists.face(s.need("face"));
    Optional<Push> push = push(s.need("plunger"), true);
    Seen seen = seen(s, "seen");
    if (pivot.isPresent() && push.isPresent() && push.get().pad().equals(pivot)) {
      s.may("plunger").orElseThrow().complainOfKey(Fault.PAD_ON_PIVOT, Map.of());
    }
    if (!s.sound()) {
      return Optional.empty();
    }
    Vector2D pad = push.get().pad().get();
    Plunger plunger = push.get().plunger();
    return Optional.of(new Arm(name.get(), contact, pivot.get(), face.get(), pad, plunger, seen));
  }

  private static Optional<RouteEntry> shoe(SectionReader s) {
    Optional<String> name = Words.name(s.need("shoe"));
    Contact contact = contact(s, Contact.OUTSIDE);
    Optional<FaceCurve> face = Lists.face(s.need("face"));
    Optional<Push> push = push(s.need("plunger"), false);
    Seen seen = seen(s, "seen");
    if (!s.sound()) {
      return Optional.empty();
    }
    return Optional.of(new Shoe(name.get(), contact, face.get(), push.get().plunger(), seen));
  }

  private static Contact contact(SectionReader s, Contact usual) {
    return Words.choice(s.may("contact"), Contact.values()).orElse(usual);
  }

  private static Seen seen(SectionReader s, String key) {
    return Words.choice(s.may(key), Seen.values()).orElse(Seen.COVER_OFF);
  }

  /** A plunger, and the pad that it pushes if it pushes one. */
  private record Push(Optional<Vector2D> pad, Plunger plunger) {}

  private static Optional<Push> push(Optional<Value> value, boolean pushesPad) {
    Optional<SectionReader> section = SectionReader.of(value);
    if (section.isEmpty()) {
      return Optional.empty();
    }
    SectionReader s = section.get();
    Optional<Vector2D> pad = pushesPad ? Lists.point(s.need("pad")) : Optional.empty();
    Optional<Bearing> bearing = Numbers.bearing(s.need("bearing"));
    Optional<Double> travel = Numbers.number(s.need("travel"), Limits.TRAVEL_MM);
    Optional<Double> step = Numbers.number(s.may("step"), Limits.STEP_MM);
    if (!s.sound()) {
      return Optional.empty();
    }
    return Optional.of(
        new Push(pad, new Plunger(bearing.get(), travel.get(), Numbers.primitive(step))));
  }
}
