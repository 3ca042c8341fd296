package tightside.files;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import tightside.drive.Arm;
import tightside.drive.Contact;
import tightside.drive.Guide;
import tightside.drive.Joint;
import tightside.drive.Limits;
import tightside.drive.Listed;
import tightside.drive.Plunger;
import tightside.drive.RouteEntry;
import tightside.drive.Seen;
import tightside.drive.Shoe;
import tightside.drive.Sprocket;
import tightside.files.Node.Scalar.Kind;
import tightside.geometry.Bearing;
import tightside.geometry.FaceCurve;

/** Reads what stands on a chain's route: sprockets, guides, arms and shoes. */
final class RouteDecoder {

  private static final List<String> KINDS = List.of("sprocket", "guide", "arm", "shoe");

  /** Keys that only a drive with geometry has a use for. */
  private static final List<String> GEOMETRY = List.of("face", "pivot", "plunger");

  private static final String NO_MARK = "none";
  private static final String MARK_SOMEWHERE = "somewhere";

  private final boolean placed;
  private final boolean markedUnlessSaid;

  /**
   * @param placed whether the drive has geometry: then every face has to have a place
   * @param markedUnlessSaid whether a sprocket that says nothing of its mark bears one
   */
  RouteDecoder(boolean placed, boolean markedUnlessSaid) {
    this.placed = placed;
    this.markedUnlessSaid = markedUnlessSaid;
  }

  /** Whether an entry of the route says at which bearing its mark stands. */
  static boolean givesBearing(SectionReader s) {
    return s.peek("mark")
        .filter(node -> !says(node, NO_MARK) && !says(node, MARK_SOMEWHERE))
        .isPresent();
  }

  private static boolean says(Node node, String word) {
    return node instanceof Node.Scalar scalar
        && scalar.kind() == Kind.TEXT
        && scalar.text().equals(word);
  }

  Optional<RouteEntry> entry(SectionReader s) {
    List<String> kinds = s.keys();
    kinds.retainAll(KINDS);
    if (kinds.size() != 1) {
      complainOfKind(s, kinds);
      return Optional.empty();
    }
    SectionReader entry = s.called(kinds.get(0));
    if (!placed && !entry.name().equals("sprocket") && listedOnly(entry)) {
      return listed(entry);
    }
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

  private static boolean listedOnly(SectionReader s) {
    return s.keys().stream().noneMatch(GEOMETRY::contains);
  }

  private static Optional<RouteEntry> listed(SectionReader s) {
    Listed.Kind kind = Listed.Kind.valueOf(s.name().toUpperCase(Locale.ROOT));
    Optional<String> name = Words.name(s.need(s.name()));
    Contact contact = contact(s, Contact.OUTSIDE);
    Seen seen = seen(s, "seen");
    return s.sound() ? Optional.of(new Listed(kind, name.get(), contact, seen)) : Optional.empty();
  }

  private Optional<RouteEntry> sprocket(SectionReader s) {
    Optional<String> shaft = Words.name(s.need("sprocket"));
    Optional<Integer> teeth = Numbers.count(s.need("teeth"), Limits.TEETH);
    boolean without = s.peek("mark").filter(node -> says(node, NO_MARK)).isPresent();
    boolean somewhere = s.peek("mark").filter(node -> says(node, MARK_SOMEWHERE)).isPresent();
    Optional<Value> given = s.may("mark");
    Optional<Bearing> mark = Numbers.bearing(without || somewhere ? Optional.empty() : given);
    boolean marked = given.isPresent() ? !without : markedUnlessSaid;
    Contact contact = contact(s, Contact.INSIDE);
    Joint joint = Words.choice(s.may("joint"), Joint.values()).orElse(Joint.DOWEL);
    Seen seen = seen(s, "seen");
    Seen strandSeen = seen(s, "strand-seen");
    Optional<Double> straight = Numbers.number(s.may("straight"), Limits.STRAIGHT_MM);
    if (!s.sound()) {
      return Optional.empty();
    }
    return Optional.of(
        new Sprocket(
            shaft.get(),
            teeth.get(),
            marked,
            mark,
            contact,
            joint,
            seen,
            strandSeen,
            Numbers.primitive(straight)));
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
