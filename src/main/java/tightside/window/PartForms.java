package tightside.window;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BiFunction;
import java.util.function.Function;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import tightside.drive.Arm;
import tightside.drive.Chain;
import tightside.drive.ChainKind;
import tightside.drive.Contact;
import tightside.drive.Face;
import tightside.drive.Guide;
import tightside.drive.Joint;
import tightside.drive.Limits;
import tightside.drive.Plan;
import tightside.drive.Plunger;
import tightside.drive.Role;
import tightside.drive.RouteEntry;
import tightside.drive.Seen;
import tightside.drive.Shaft;
import tightside.drive.Sprocket;
import tightside.drive.Tensioner;
import tightside.geometry.Bearing;
import tightside.session.Edit;
import tightside.session.Handle;
import tightside.session.PartKind;
import tightside.session.PlanEdits;
import tightside.session.PlanPart;
import tightside.session.Snapshot;

/** The form for each sort of part. */
record PartForms(Desk desk, PlanPart part) {

  private static final PartKind[] FACES = {PartKind.GUIDE, PartKind.ARM, PartKind.SHOE};

  /** What the form of a part has fields for; another sort of part needs another form. */
  static Object sort(Plan plan, PlanPart part) {
    return part.entryIn(plan).<Object>map(PartKind::of).orElse("");
  }

  PartForm of(Plan plan) {
    PartForm form = new PartForm(desk);
    Optional<RouteEntry> entry = part.entryIn(plan);
    if (part.shaft().isPresent()) {
      shaft(form, part.shaft().get());
    } else if (entry.isEmpty()) {
      chain(form, part.chain().orElseThrow());
    } else if (entry.get() instanceof Sprocket) {
      sprocket(form);
    } else {
      face(form, entry.get());
    }
    return form;
  }

  private void shaft(PartForm form, String shaft) {
    form.name(
        "build-name",
        "Name",
        p -> shaft,
        text -> PartForm.nameRefusal(desk.now().plan(), shaft, text),
        (now, text) -> PlanEdits.renameShaft(now, shaft, text));
    form.choice(
        "Kind of shaft",
        Role.values(),
        p -> p.shaft(shaft).map(Shaft::role).orElse(Role.IDLER),
        (now, role) -> PlanEdits.retypeShaft(now, shaft, role));
    point(
        form,
        "",
        "Centre",
        p -> p.shaft(shaft).map(Shaft::at),
        (now, to) -> PlanEdits.moveShaft(now, shaft, to));
  }

  private void point(
      PartForm form,
      String id,
      String words,
      Function<Plan, Optional<Vector2D>> of,
      BiFunction<Snapshot, Vector2D, Edit> move) {
    form.number(
        "build-" + id + "x",
        words + " x, mm to the right",
        Limits.POSITION_MM,
        p -> some(of.apply(p).map(Vector2D::getX)),
        (now, x) -> move.apply(now, Vector2D.of(x, of.apply(now.plan()).orElseThrow().getY())));
    form.number(
        "build-" + id + "y",
        words + " y, mm up",
        Limits.POSITION_MM,
        p -> some(of.apply(p).map(Vector2D::getY)),
        (now, y) -> move.apply(now, Vector2D.of(of.apply(now.plan()).orElseThrow().getX(), y)));
  }

  private static OptionalDouble some(Optional<Double> value) {
    return value.map(OptionalDouble::of).orElseGet(OptionalDouble::empty);
  }

  private void chain(PartForm form, String chain) {
    form.choice(
        "Kind of chain",
        ChainKind.values(),
        p -> p.chain(chain).map(Chain::kind).orElse(ChainKind.BUSH),
        (now, kind) -> PlanEdits.chain(now, chain, "kind", c -> c.withKind(kind)));
    size(form, chain, "links", Limits.LINKS, c -> c.links(), (c, v) -> c.withLinks(v.intValue()));
    size(form, chain, "pitch", Limits.PITCH_MM, Chain::pitchMm, Chain::withPitch);
    size(
        form,
        chain,
        "plate height",
        Limits.PLATE_HEIGHT_MM,
        Chain::plateHeightMm,
        Chain::withPlateHeight);
    size(
        form,
        chain,
        "roller diameter",
        Limits.ROLLER_DIAMETER_MM,
        Chain::rollerDiameterMm,
        Chain::withRollerDiameter);
  }

  private void size(
      PartForm form,
      String chain,
      String what,
      Limits limits,
      Function<Chain, Number> of,
      BiFunction<Chain, Double, Chain> with) {
    String unit = limits == Limits.LINKS ? "" : ", mm";
    form.number(
        "build-" + what.replace(' ', '-'),
        Character.toUpperCase(what.charAt(0)) + what.substring(1) + unit,
        limits,
        p -> some(p.chain(chain).map(c -> of.apply(c).doubleValue())),
        (now, value) -> PlanEdits.chain(now, chain, what, c -> with.apply(c, value)));
  }

  private Edit change(
      Snapshot now, String what, java.util.function.UnaryOperator<RouteEntry> change) {
    return PlanEdits.entry(
        now, part.chain().orElseThrow(), part.place().orElseThrow(), what, change);
  }

  private Optional<Sprocket> sprocketIn(Plan plan) {
    return part.in(plan)
        ? part.entryIn(plan).filter(Sprocket.class::isInstance).map(Sprocket.class::cast)
        : Optional.empty();
  }

  private void sprocket(PartForm form) {
    form.number(
        "build-teeth",
        "Teeth",
        Limits.TEETH,
        p -> some(sprocketIn(p).map(s -> (double) s.teeth())),
        (now, v) -> change(now, "teeth", e -> ((Sprocket) e).withTeeth(v.intValue())));
    form.perhaps(
        "build-mark",
        "Mark, degrees clockwise from up; empty for none",
        Limits.BEARING_DEGREES,
        p -> some(sprocketIn(p).flatMap(Sprocket::mark).map(Bearing::degrees)),
        (now, v) ->
            change(
                now,
                "mark",
                e ->
                    ((Sprocket) e)
                        .withMark(
                            v.isPresent()
                                ? Optional.of(new Bearing(v.getAsDouble()))
                                : Optional.empty())));
    form.choice(
        "Touches the chain from",
        Contact.values(),
        p -> sprocketIn(p).map(Sprocket::contact).orElse(Contact.INSIDE),
        (now, v) -> change(now, "contact", e -> ((Sprocket) e).withContact(v)));
    form.choice(
        "Held on its shaft by",
        Joint.values(),
        p -> sprocketIn(p).map(Sprocket::joint).orElse(Joint.DOWEL),
        (now, v) -> change(now, "joint", e -> ((Sprocket) e).withJoint(v)));
    form.choice(
        "Its mark is seen with",
        Seen.values(),
        p -> sprocketIn(p).map(Sprocket::seen).orElse(Seen.COVER_OFF),
        (now, v) -> change(now, "sight", e -> ((Sprocket) e).withSeen(v)));
    form.choice(
        "The strand that leaves it is seen with",
        Seen.values(),
        p -> sprocketIn(p).map(Sprocket::strandSeen).orElse(Seen.COVER_OFF),
        (now, v) -> change(now, "strand's sight", e -> ((Sprocket) e).withStrandSeen(v)));
  }

  private Optional<Face> faceIn(Plan plan) {
    return part.in(plan)
        ? part.entryIn(plan).filter(Face.class::isInstance).map(Face.class::cast)
        : Optional.empty();
  }

  private void face(PartForm form, RouteEntry entry) {
    String chain = part.chain().orElseThrow();
    int place = part.place().orElseThrow();
    form.choice(
        "Kind of face",
        FACES,
        p -> faceIn(p).map(PartKind::of).orElse(PartKind.GUIDE),
        (now, kind) -> PlanEdits.retypeFace(now, chain, place, kind));
    form.choice(
        "Touches the chain from",
        Contact.values(),
        p -> faceIn(p).map(Face::contact).orElse(Contact.OUTSIDE),
        (now, v) -> change(now, "contact", e -> FaceParts.withContact((Face) e, v)));
    handle(form, Handle.Kind.START, "Start");
    handle(form, Handle.Kind.MIDDLE, "Middle");
    handle(form, Handle.Kind.END, "End");
    if (entry instanceof Arm) {
      handle(form, Handle.Kind.PIVOT, "Pivot");
      handle(form, Handle.Kind.PAD, "Pad");
    }
    if (entry instanceof Tensioner) {
      plunger(form);
    }
    form.choice(
        entry instanceof Guide ? "It is seen with" : "Its plunger is seen with",
        Seen.values(),
        p -> faceIn(p).map(Face::seen).orElse(Seen.COVER_OFF),
        (now, v) -> change(now, "sight", e -> FaceParts.withSeen((Face) e, v)));
  }

  private void handle(PartForm form, Handle.Kind kind, String words) {
    point(
        form,
        kind.name().toLowerCase(java.util.Locale.ROOT) + "-",
        words,
        p -> handleIn(p, kind).map(Handle::at),
        (now, to) -> PlanEdits.move(now, handleIn(now.plan(), kind).orElseThrow(), to));
  }

  private Optional<Handle> handleIn(Plan plan, Handle.Kind kind) {
    return Handle.all(plan).stream()
        .filter(h -> h.part().equals(part) && h.kind() == kind)
        .findFirst();
  }

  private Optional<Plunger> plungerIn(Plan plan) {
    return faceIn(plan).filter(Tensioner.class::isInstance).map(f -> ((Tensioner) f).plunger());
  }

  private void plunger(PartForm form) {
    form.number(
        "build-push",
        "Plunger pushes, degrees clockwise from up",
        Limits.BEARING_DEGREES,
        p -> some(plungerIn(p).map(x -> x.bearing().degrees())),
        (now, v) ->
            change(
                now,
                "plunger",
                e ->
                    FaceParts.withPlunger(
                        e, x -> new Plunger(new Bearing(v), x.travelMm(), x.stepMm()))));
    form.number(
        "build-travel",
        "Plunger's travel, mm",
        Limits.TRAVEL_MM,
        p -> some(plungerIn(p).map(Plunger::travelMm)),
        (now, v) ->
            change(
                now,
                "travel",
                e -> FaceParts.withPlunger(e, x -> new Plunger(x.bearing(), v, x.stepMm()))));
    form.perhaps(
        "build-step",
        "Ratchet step, mm; empty for none",
        Limits.STEP_MM,
        p -> plungerIn(p).map(Plunger::stepMm).orElse(OptionalDouble.empty()),
        (now, v) ->
            change(
                now,
                "step",
                e -> FaceParts.withPlunger(e, x -> new Plunger(x.bearing(), x.travelMm(), v))));
  }
}
