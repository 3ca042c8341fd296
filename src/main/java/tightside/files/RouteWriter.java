package tightside.files;

import java.util.Optional;
import tightside.drive.Arm;
import tightside.drive.Chain;
import tightside.drive.Contact;
import tightside.drive.Guide;
import tightside.drive.Joint;
import tightside.drive.Listed;
import tightside.drive.Plunger;
import tightside.drive.RouteEntry;
import tightside.drive.Seen;
import tightside.drive.Shoe;
import tightside.drive.Sprocket;

/** Writes what stands on a chain's route. */
final class RouteWriter {

  private RouteWriter() {}

  /** One item of the route's list, without the hyphen. */
  static String entry(Chain chain, RouteEntry entry) {
    if (entry instanceof Sprocket sprocket) {
      return sprocket(chain, sprocket);
    }
    if (entry instanceof Listed listed) {
      return listed(listed);
    }
    if (entry instanceof Arm arm) {
      return arm(arm);
    }
    if (entry instanceof Shoe shoe) {
      return shoe(shoe);
    }
    return guide((Guide) entry);
  }

  private static String listed(Listed l) {
    return new Braces()
        .with(Terms.of(l.kind()), YamlText.text(l.name()))
        .unless(Contact.OUTSIDE, "contact", l.contact())
        .unless(Seen.COVER_OFF, "seen", l.seen())
        .toString();
  }

  private static String sprocket(Chain chain, Sprocket s) {
    Braces braces =
        new Braces().with("sprocket", YamlText.text(s.shaft())).with("teeth", s.teeth());
    mark(chain, s).ifPresent(mark -> braces.with("mark", mark));
    s.straightMm().ifPresent(mm -> braces.with("straight", mm));
    return braces
        .unless(Contact.INSIDE, "contact", s.contact())
        .unless(Joint.DOWEL, "joint", s.joint())
        .unless(Seen.COVER_OFF, "seen", s.seen())
        .unless(Seen.COVER_OFF, "strand-seen", s.strandSeen())
        .toString();
  }

  /** Nothing where it goes without saying. */
  private static Optional<String> mark(Chain chain, Sprocket s) {
    if (s.mark().isPresent()) {
      return Optional.of(YamlText.number(s.mark().get().degrees()));
    }
    boolean bearings = chain.sprockets().stream().anyMatch(o -> o.mark().isPresent());
    boolean markedUnlessSaid = chain.countedOnly() && !bearings;
    return s.marked() == markedUnlessSaid
        ? Optional.empty()
        : Optional.of(s.marked() ? "somewhere" : "none");
  }

  private static String guide(Guide g) {
    return new Braces()
        .with("guide", YamlText.text(g.name()))
        .unless(Contact.OUTSIDE, "contact", g.contact())
        .with("face", Braces.face(g.curve()))
        .unless(Seen.COVER_OFF, "seen", g.seen())
        .toString();
  }

  private static String arm(Arm a) {
    return "arm: "
        + YamlText.text(a.name())
        + contact(a.contact())
        + line("pivot", Braces.point(a.pivot()))
        + line("face", Braces.face(a.curve()))
        + line("plunger", plunger(new Braces().with("pad", Braces.point(a.pad())), a.plunger()))
        + seen(a.seen());
  }

  private static String shoe(Shoe s) {
    return "shoe: "
        + YamlText.text(s.name())
        + contact(s.contact())
        + line("face", Braces.face(s.curve()))
        + line("plunger", plunger(new Braces(), s.plunger()))
        + seen(s.seen());
  }

  private static String plunger(Braces braces, Plunger plunger) {
    braces.with("bearing", plunger.bearing().degrees()).with("travel", plunger.travelMm());
    plunger.stepMm().ifPresent(step -> braces.with("step", step));
    return braces.toString();
  }

  private static String contact(Contact contact) {
    return contact == Contact.OUTSIDE ? "" : line("contact", Terms.of(contact));
  }

  private static String seen(Seen seen) {
    return seen == Seen.COVER_OFF ? "" : line("seen", Terms.of(seen));
  }

  private static String line(String key, String value) {
    return "\n        " + key + ": " + value;
  }
}
