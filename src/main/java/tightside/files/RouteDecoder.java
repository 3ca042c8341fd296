package tightside.files;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
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

  private static final Decoder<Contact> CONTACT = Words.choice(Contact.values());
  private static final Decoder<Seen> SEEN = Words.choice(Seen.values());

  private RouteDecoder() {}

  static Decoder<RouteEntry> entry() {
    return SectionReader.section(RouteDecoder::entry);
  }

  private static Optional<RouteEntry> entry(SectionReader s) {
    Set<String> kinds = new LinkedHashSet<>(s.keys());
    kinds.retainAll(KINDS);
    if (kinds.size() != 1) {
      complainOfKind(s, List.copyOf(kinds));
      return Optional.empty();
    }
    return switch (kinds.iterator().next()) {
      case "sprocket" -> sprocket(s);
      case "guide" -> guide(s);
      case "arm" -> arm(s);
      default -> shoe(s);
    };
  }

  private static void complainOfKind(SectionReader s, List<String> kinds) {
    if (!kinds.isEmpty()) {
      s.complainAt(
          kinds.get(1),
          Fault.ENTRY_OF_TWO_KINDS,
          Map.of("first", kinds.get(0), "second", kinds.get(1)));
      return;
    }
    for (String key : s.keys()) {
      Optional<String> near = NearMiss.of(key, KINDS);
      if (near.isPresent()) {
        s.complainAt(key, Fault.KEY_NEARLY, Map.of("key", key, "near", near.get()));
        return;
      }
    }
    s.complain(Fault.ENTRY_WITHOUT_KIND, Map.of("known", KINDS));
  }

  private static Optional<RouteEntry> sprocket(SectionReader s) {
    Optional<String> shaft = s.need("sprocket", Words.name());
    Optional<Integer> teeth = s.need("teeth", Numbers.count(Limits.TEETH));
    Optional<Bearing> mark = s.may("mark", Numbers.bearing());
    Contact contact = s.may("contact", CONTACT).orElse(Contact.INSIDE);
    Joint joint = s.may("joint", Words.choice(Joint.values())).orElse(Joint.DOWEL);
    Seen seen = s.may("seen", SEEN).orElse(Seen.COVER_OFF);
    Seen strandSeen = s.may("strand-seen", SEEN).orElse(Seen.COVER_OFF);
    return s.built(
        () -> new Sprocket(shaft.get(), teeth.get(), mark, contact, joint, seen, strandSeen));
  }

  private static Optional<RouteEntry> guide(SectionReader s) {
    Optional<String> name = s.need("guide", Words.name());
    Contact contact = contact(s);
    Optional<FaceCurve> face = s.need("face", Lists.face());
    Seen seen = seen(s);
    return s.built(() -> new Guide(name.get(), contact, face.get(), seen));
  }

  private static Optional<RouteEntry> arm(SectionReader s) {
    Optional<String> name = s.need("arm", Words.name());
    Contact contact = contact(s);
    Optional<Vector2D> pivot = s.need("pivot", Lists.point());
    Optional<FaceCurve> face = s.need("face", Lists.face());
    Optional<Push> push = s.need("plunger", plunger(true));
    Seen seen = seen(s);
    if (pivot.isPresent() && push.isPresent() && push.get().pad().equals(pivot)) {
      s.complainAt("plunger", Fault.PAD_ON_PIVOT, Map.of("arm", s.what()));
    }
    return s.built(
        () ->
            new Arm(
                name.get(),
                contact,
                pivot.get(),
                face.get(),
                push.get().pad().get(),
                push.get().plunger(),
                seen));
  }

  private static Optional<RouteEntry> shoe(SectionReader s) {
    Optional<String> name = s.need("shoe", Words.name());
    Contact contact = contact(s);
    Optional<FaceCurve> face = s.need("face", Lists.face());
    Optional<Push> push = s.need("plunger", plunger(false));
    Seen seen = seen(s);
    return s.built(() -> new Shoe(name.get(), contact, face.get(), push.get().plunger(), seen));
  }

  private static Contact contact(SectionReader face) {
    return face.may("contact", CONTACT).orElse(Contact.OUTSIDE);
  }

  private static Seen seen(SectionReader s) {
    return s.may("seen", SEEN).orElse(Seen.COVER_OFF);
  }

  /** A plunger, and the pad that it pushes if it pushes one. */
  private record Push(Optional<Vector2D> pad, Plunger plunger) {}

  private static Decoder<Push> plunger(boolean pushesPad) {
    return SectionReader.section(
        s -> {
          Optional<Vector2D> pad =
              pushesPad ? s.need("pad", Lists.point()) : Optional.<Vector2D>empty();
          Optional<Bearing> bearing = s.need("bearing", Numbers.bearing());
          Optional<Double> travel = s.need("travel", Numbers.number(Limits.TRAVEL_MM));
          Optional<Double> step = s.may("step", Numbers.number(Limits.STEP_MM));
          return s.built(() -> new Push(pad, plunger(bearing.get(), travel.get(), step)));
        });
  }

  private static Plunger plunger(Bearing bearing, double travel, Optional<Double> step) {
    return new Plunger(
        bearing, travel, step.map(OptionalDouble::of).orElseGet(OptionalDouble::empty));
  }
}
