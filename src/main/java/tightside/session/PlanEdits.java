package tightside.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import tightside.drive.Chain;
import tightside.drive.ChainKind;
import tightside.drive.Face;
import tightside.drive.Plan;
import tightside.drive.Role;
import tightside.drive.RouteEntry;
import tightside.drive.Shaft;
import tightside.drive.Sprocket;
import tightside.geometry.Bearing;
import tightside.geometry.Rotation;

/**
 * What a person does to the layout of a drive. Each leads to a new snapshot, whose drive is the
 * drawn one as soon as that makes a drive, and the last one that did until then.
 */
public final class PlanEdits {

  private PlanEdits() {}

  /** Goes on with a drive that was read before it was one. */
  public static Snapshot opened(Snapshot shown, String source, Plan plan, SlackSetup slack) {
    return Snapshot.opened(shown.drive(), source, slack).withUnfinished(Optional.of(plan));
  }

  /** Begins a drive from nothing. */
  public static Edit begin(Snapshot now) {
    return single(now.with(now.slack().withoutEngine()), "Begin a new drive", Plan.begun());
  }

  public static Edit call(Snapshot now, String name) {
    return gesture(now, "name", "Call the drive " + name, now.plan().called(name));
  }

  public static Edit turning(Snapshot now, Rotation rotation) {
    String way = rotation == Rotation.CLOCKWISE ? "clockwise" : "counterclockwise";
    return single(now, "Turn the crankshaft " + way, now.plan().turning(rotation));
  }

  /** Adds a shaft where there is room for it. */
  public static Edit addShaft(Snapshot now, Role role) {
    Plan plan = now.plan();
    String name = plan.freeName(shortName(role));
    Vector2D at =
        plan.shafts().stream()
            .map(Shaft::at)
            .reduce(
                (a, b) -> Vector2D.of(Math.max(a.getX(), b.getX()), Math.max(a.getY(), b.getY())))
            .orElse(Vector2D.ZERO)
            .add(Vector2D.of(120, 0));
    return single(now, "Add " + name, plan.adding(new Shaft(name, role, Faces.tenths(at))));
  }

  private static String shortName(Role role) {
    return switch (role) {
      case CRANKSHAFT -> "crank";
      case CAMSHAFT -> "cam";
      case IDLER -> "idler";
      case BALANCER -> "balancer";
      case PUMP -> "pump";
    };
  }

  public static Edit moveShaft(Snapshot now, String shaft, Vector2D to) {
    return gesture(
        now,
        "shaft " + shaft,
        "Move " + shaft,
        now.plan().changing(shaft, s -> new Shaft(s.name(), s.role(), to)));
  }

  public static Edit retypeShaft(Snapshot now, String shaft, Role role) {
    return single(
        now,
        "Make %s a %s".formatted(shaft, Words.role(role)),
        now.plan().changing(shaft, s -> new Shaft(s.name(), role, s.place())));
  }

  /**
   * @param name as {@link tightside.drive.Names} allows, and no other shaft's
   */
  public static Edit renameShaft(Snapshot now, String shaft, String name) {
    return gesture(
        now.with(now.slack().renamed(shaft, name)),
        "rename shaft",
        "Call %s %s".formatted(shaft, name),
        now.plan().changing(shaft, s -> new Shaft(name, s.role(), s.place())));
  }

  /** Takes a shaft away, its sprockets with it. */
  public static Edit deleteShaft(Snapshot now, String shaft) {
    return single(now, "Delete " + shaft, now.plan().withoutShaft(shaft));
  }

  /** Adds a chain that is driven by a shaft and goes nowhere yet. */
  public static Edit addChain(Snapshot now, String driver) {
    Plan plan = now.plan();
    Chain first = plan.chains().isEmpty() ? null : plan.chains().get(0);
    String name = plan.freeName("chain");
    Sprocket sprocket = Sprocket.inside(driver, 18, new Bearing(0));
    Chain chain =
        first == null
            ? new Chain(name, ChainKind.BUSH, 8, 118, 7.2, 5, List.of(sprocket))
            : new Chain(
                name,
                first.kind(),
                first.pitchMm(),
                first.links(),
                first.plateHeightMm(),
                first.rollerDiameterMm(),
                List.of(sprocket));
    return single(now, "Add the chain " + name, plan.adding(chain));
  }

  public static Edit deleteChain(Snapshot now, String chain) {
    return single(now, "Delete the chain " + chain, now.plan().withoutChain(chain));
  }

  /**
   * Changes what a chain is.
   *
   * @param what as in "Change the pitch of main"
   */
  public static Edit chain(Snapshot now, String chain, String what, UnaryOperator<Chain> change) {
    return gesture(
        now,
        "chain %s %s".formatted(chain, what),
        "Change the %s of %s".formatted(what, chain),
        now.plan().changingChain(chain, change));
  }

  /** Puts a sprocket of a shaft on a route, behind so many entries. */
  public static Edit addSprocket(Snapshot now, String chain, int place, String shaft) {
    boolean cam =
        now.plan().shaft(shaft).map(Shaft::role).filter(r -> r == Role.CAMSHAFT).isPresent();
    int teeth =
        now.plan()
            .chain(chain)
            .filter(c -> !c.sprocketPlaces().isEmpty())
            .map(c -> cam ? 2 * c.sprockets().get(0).teeth() : c.sprockets().get(0).teeth())
            .orElse(18);
    Sprocket sprocket = Sprocket.inside(shaft, Math.min(300, teeth), new Bearing(0));
    return single(
        now,
        "Put %s on %s".formatted(shaft, chain),
        now.plan().changingChain(chain, c -> c.withRoute(inserted(c.route(), place, sprocket))));
  }

  /** Puts a face beside the run at a place of a route. */
  public static Edit addFace(Snapshot now, String chain, int place, PartKind kind) {
    Plan plan = now.plan();
    String name = plan.freeName(kind == PartKind.GUIDE ? "guide" : "tensioner");
    Chain on = plan.chain(chain).orElseThrow();
    Face face = Faces.beside(plan, on, place, kind.face(), name);
    return single(
        now,
        "Add %s to %s".formatted(name, chain),
        plan.changingChain(chain, c -> c.withRoute(inserted(c.route(), place, face))));
  }

  private static List<RouteEntry> inserted(List<RouteEntry> route, int place, RouteEntry entry) {
    List<RouteEntry> longer = new ArrayList<>(route);
    longer.add(Math.min(place, route.size()), entry);
    return longer;
  }

  /** Changes an entry of a route. */
  public static Edit entry(
      Snapshot now, String chain, int place, String what, UnaryOperator<RouteEntry> change) {
    Chain on = now.plan().chain(chain).orElseThrow();
    List<RouteEntry> route = new ArrayList<>(on.route());
    String name = PlanPart.nameOf(route.get(place));
    route.set(place, change.apply(route.get(place)));
    return gesture(
        now,
        "entry %s %d %s".formatted(chain, place, what),
        "Change the %s of %s".formatted(what, name),
        now.plan().changingChain(chain, c -> c.withRoute(route)));
  }

  /** Makes a face another kind of part. */
  public static Edit retypeFace(Snapshot now, String chain, int place, PartKind kind) {
    return entry(now, chain, place, "kind", e -> Faces.as(kind.face(), (Face) e));
  }

  /** Moves an entry so many places on along its route. */
  public static Edit reorder(Snapshot now, String chain, int place, int by) {
    Chain on = now.plan().chain(chain).orElseThrow();
    int to = Math.max(0, Math.min(on.route().size() - 1, place + by));
    List<RouteEntry> route = new ArrayList<>(on.route());
    RouteEntry moved = route.remove(place);
    route.add(to, moved);
    return single(
        now,
        "Move %s along %s".formatted(PlanPart.nameOf(moved), chain),
        now.plan().changingChain(chain, c -> c.withRoute(route)));
  }

  public static Edit deleteEntry(Snapshot now, String chain, int place) {
    Chain on = now.plan().chain(chain).orElseThrow();
    List<RouteEntry> route = new ArrayList<>(on.route());
    RouteEntry gone = route.remove(place);
    return single(
        now,
        "Take %s off %s".formatted(PlanPart.nameOf(gone), chain),
        now.plan().changingChain(chain, c -> c.withRoute(route)));
  }

  /** Moves one point of a part. */
  public static Edit move(Snapshot now, Handle handle, Vector2D to) {
    Optional<Plan> moved = handle.moved(now.plan(), to);
    return gesture(now, "move " + handle.id(), "Move " + handle.words(), moved.orElse(now.plan()));
  }

  private static Edit single(Snapshot now, String name, Plan plan) {
    return Edit.single(name, after(now, plan));
  }

  private static Edit gesture(Snapshot now, String gesture, String name, Plan plan) {
    return Edit.partOf("plan " + gesture, name, after(now, plan));
  }

  private static Snapshot after(Snapshot now, Plan plan) {
    return PlanCheck.of(plan)
        .drive()
        .map(now::redrawn)
        .orElseGet(() -> now.withUnfinished(Optional.of(plan)));
  }
}
