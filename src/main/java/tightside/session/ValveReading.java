package tightside.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tightside.engine.Clearance;
import tightside.engine.Engine;
import tightside.engine.Valve;
import tightside.session.Valves.Touch;
import tightside.words.Numbers;
import tightside.words.ValveWords;

/**
 * One valve of one cylinder, as the crankshaft and its camshaft stand.
 *
 * @param cylinder counted from 0
 * @param valve counted from 0 in the order of the model
 * @param now its room as its camshaft stands
 * @param before its room in the state that it is compared with: the one that was kept, or else
 *     right; nothing where it stands right
 * @param beforeName "A, as kept" or "as it should be"
 * @param beside the cylinder's other valves
 * @param degrees of the crank from that cylinder's top dead centre at gas exchange, within +-360
 * @param assumed whether it is assumed where the cylinder stands, for the model does not say it
 * @param touching what touches, this valve or another; nothing where none does
 */
public record ValveReading(
    Engine engine,
    int cylinder,
    int valve,
    Clearance now,
    Optional<Clearance> before,
    String beforeName,
    List<Clearance> beside,
    double degrees,
    boolean assumed,
    Optional<String> touching) {

  private static final double STANDS_RIGHT_DEGREES = 1e-6;

  public ValveReading {
    beside = List.copyOf(beside);
  }

  /** The valve that is looked at; nothing where the model says nothing of its engine. */
  public static Optional<ValveReading> of(SessionView view) {
    return of(view, view.snapshot().look().valves().valve());
  }

  /** Another valve of the cylinder that is looked at. */
  public static Optional<ValveReading> of(SessionView view, int valve) {
    return view.valves().map(valves -> of(view, valves, valve));
  }

  private static ValveReading of(SessionView view, Valves valves, int wanted) {
    Snapshot snapshot = view.snapshot();
    ValveLook look = snapshot.look().valves();
    int valve = Math.min(wanted, valves.engine().valves().size() - 1);
    int cylinder = Math.min(look.cylinder(), valves.cylinders() - 1);
    List<Clearance> all = valves.timed().clearances();
    List<Clearance> beside = new ArrayList<>(all);
    Clearance now = beside.remove(valve);
    Optional<Valves> kept = view.kept().flatMap(SessionView::valves);
    Optional<Clearance> right =
        Math.abs(now.advancedDegrees()) > STANDS_RIGHT_DEGREES
            ? Optional.of(new Clearance(now.gear(), now.valve(), 0))
            : Optional.empty();
    return new ValveReading(
        valves.engine(),
        cylinder,
        valve,
        now,
        kept.isPresent() ? kept.map(k -> k.timed().clearances().get(valve)) : right,
        kept.isPresent() ? "A, as kept" : "as it should be",
        beside,
        valves.degrees(cylinder, snapshot.crank().degrees()),
        !valves.referenceKnown(),
        valves
            .touch(snapshot.crank().degrees())
            .map(touch -> touching(valves, touch, cylinder, now)));
  }

  private static String touching(Valves valves, Touch touch, int cylinder, Clearance shown) {
    String valve =
        ValveWords.name(touch.clearance().valve())
            + (valves.cylinders() > 1 ? " of cylinder " + (touch.cylinder() + 1) : "");
    return touch.cylinder() == cylinder && touch.clearance().equals(shown)
        ? "Shown is the valve that touches."
        : "Not the one that touches: that is the %s.".formatted(valve);
  }

  /** Every valve of the cylinder, this one first. */
  public List<Clearance> cylinderValves() {
    List<Clearance> all = new ArrayList<>(List.of(now));
    all.addAll(beside);
    return all;
  }

  public double roomMm() {
    return now.mmAt(degrees);
  }

  /** The room, to be read large. */
  public String room() {
    return Numbers.mm(roomMm());
  }

  /** What the room is of, and where the crank stands. */
  public String where() {
    return "%s to piston%s, %s%s"
        .formatted(
            ValveWords.name(now.valve()),
            engine.phasesDegrees().size() > 1 ? " of cylinder " + (cylinder + 1) : "",
            ValveWords.fromTop(degrees),
            assumed ? " (assumed)" : "");
  }

  /** The cylinder, and where its crank stands. */
  String place() {
    return (engine.phasesDegrees().size() > 1 ? "cylinder " + (cylinder + 1) + ", " : "")
        + ValveWords.fromTop(degrees)
        + (assumed ? " (assumed)" : "");
  }

  /** The valves of a cylinder by their names, numbered where several are alike. */
  public static List<String> names(Engine engine) {
    List<String> names = new ArrayList<>();
    for (Valve valve : engine.valves()) {
      String side = valve.intake() ? "Intake" : "Exhaust";
      long alike = engine.valves().stream().filter(v -> v.intake() == valve.intake()).count();
      long before = names.stream().filter(n -> n.startsWith(side)).count();
      names.add(alike > 1 ? side + " " + (before + 1) : side);
    }
    return names;
  }
}
