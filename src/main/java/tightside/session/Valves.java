package tightside.session;

import java.util.List;
import java.util.Optional;
import tightside.engine.Clearance;
import tightside.engine.Engine;
import tightside.engine.Obstacles;
import tightside.engine.TimedEngine;
import tightside.timing.Solution;
import tightside.timing.State;

/**
 * The valves of a session over the pistons of all cylinders, as the camshafts stand, wherever the
 * crankshaft is.
 *
 * @param timed the engine with its camshafts as they stand
 * @param obstacles by valve, in the order of the model
 * @param still the state they hold for, its crank at the reference position
 */
public record Valves(TimedEngine timed, List<Obstacles> obstacles, State still) {

  private static final double CYCLE_DEGREES = 720;

  /** Less room than this is none: an angle is found this well, mm. */
  private static final double NO_ROOM_MM = 1e-9;

  /** Turns smaller than this are none, degrees. */
  private static final double NO_TURN_DEGREES = 1e-9;

  /**
   * A valve that has no room now.
   *
   * @param cylinder counted from 0
   * @param degrees of the crank from that cylinder's top dead centre at gas exchange
   * @param roomMm nothing, or negative by how far the valve would stand in the piston
   */
  public record Touch(int cylinder, Clearance clearance, double degrees, double roomMm) {}

  public Valves {
    obstacles = List.copyOf(obstacles);
  }

  /** Nothing where the model says nothing of its engine. */
  static Optional<Valves> of(Snapshot snapshot, Solution solution) {
    return snapshot.engine().map(engine -> of(engine, solution));
  }

  private static Valves of(Engine engine, Solution solution) {
    TimedEngine timed = TimedEngine.driven(engine, solution);
    return new Valves(
        timed, timed.clearances().stream().map(Obstacles::of).toList(), still(solution.state()));
  }

  private static State still(State state) {
    return state.turnedTo(0, State.Arrived.FORWARD);
  }

  /** Whether the same holds for another snapshot of the same drive. */
  boolean holdFor(Snapshot other) {
    return other.engine().filter(timed.engine()::equals).isPresent()
        && still(other.state()).equals(still);
  }

  public Engine engine() {
    return timed.engine();
  }

  public int cylinders() {
    return engine().phasesDegrees().size();
  }

  /** Whether the model says where the engine stands at the reference position. */
  public boolean referenceKnown() {
    return engine().atReferenceDegrees().isPresent();
  }

  /**
   * Where a cylinder stands, crank degrees from its top dead centre at gas exchange, within +-360.
   * Where the model does not say how the engine stands at the reference position, the first
   * cylinder is taken to stand at that dead centre.
   */
  public double degrees(int cylinder, double crankDegrees) {
    return Math.IEEEremainder(crankDegrees + offset(cylinder), CYCLE_DEGREES);
  }

  private double offset(int cylinder) {
    return engine().atReferenceDegrees().orElse(0) - engine().phasesDegrees().get(cylinder);
  }

  /** The valve that has least room, if any has none. */
  public Optional<Touch> touch(double crankDegrees) {
    Touch worst = null;
    for (Clearance clearance : timed.clearances()) {
      for (int i = 0; i < cylinders(); i++) {
        double degrees = degrees(i, crankDegrees);
        double room = clearance.mmAt(degrees);
        if (room <= NO_ROOM_MM && (worst == null || room < worst.roomMm)) {
          worst = new Touch(i, clearance, degrees, room);
        }
      }
    }
    return Optional.ofNullable(worst);
  }

  /**
   * How far the crankshaft can be turned until a valve meets its piston.
   *
   * @param from crank degrees from the reference position
   * @param to where it is to be turned, forward or back
   */
  public double reach(double from, double to) {
    double reached = to;
    for (Obstacles valve : obstacles) {
      for (int i = 0; i < cylinders(); i++) {
        double offset = offset(i);
        double stop = valve.reach(from + offset, reached + offset);
        reached = stop == reached + offset ? reached : stop - offset;
      }
    }
    return Math.abs(reached - from) < NO_TURN_DEGREES ? from : reached;
  }
}
