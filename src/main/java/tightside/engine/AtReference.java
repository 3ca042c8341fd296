package tightside.engine;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import tightside.timing.Kick;

/**
 * The engine standing at the reference position: what the valve springs do to a camshaft that
 * nothing holds, and what room there is while a camshaft is turned and the crankshaft is not.
 *
 * <p>All cylinders are taken to hang on the same camshafts, one behind the other as the phases say.
 */
public final class AtReference {

  private AtReference() {}

  /**
   * The torque of the valve springs on a camshaft.
   *
   * @param crankTurns for one turn of the camshaft
   * @return unknown unless the engine says where it stands and every spring of that camshaft is
   *     given
   */
  public static Kick kick(Engine engine, String shaft, double crankTurns) {
    List<Valve> valves = engine.valvesOn(shaft);
    boolean sprung = valves.stream().allMatch(v -> v.spring().isPresent());
    if (engine.atReferenceDegrees().isEmpty() || !sprung) {
      return new Kick.Unknown();
    }
    return Kick.of(
        standing(engine).stream()
            .flatMap(theta -> valves.stream().map(v -> sprung(v, theta, crankTurns)))
            .toList());
  }

  /** Turning the camshaft ahead by an angle opens its valves earlier by that angle at the crank. */
  private static Kick.Valve sprung(Valve valve, double theta, double crankTurns) {
    Spring spring = valve.spring().orElseThrow();
    double perRadian = valve.liftPerDegreeMm(theta) * crankTurns * Math.toDegrees(1);
    return new Kick.Valve(valve.liftMm(theta), perRadian, spring.preloadN(), spring.rateNPerMm());
  }

  /**
   * The least clearance (mm) between a camshaft's valves and the pistons of all cylinders, by the
   * turn of that camshaft from the reference position (its own degrees, positive = ahead), the
   * crankshaft standing still.
   *
   * @param crankTurns for one turn of the camshaft
   * @return nothing unless the engine says where it stands and that camshaft opens a valve
   */
  public static Optional<DoubleUnaryOperator> clearance(
      Engine engine, String shaft, double crankTurns) {
    List<Valve> valves = engine.valvesOn(shaft);
    if (engine.atReferenceDegrees().isEmpty() || valves.isEmpty()) {
      return Optional.empty();
    }
    CrankGear gear = engine.crankGear();
    List<Double> standing = standing(engine);
    return Optional.of(
        turn ->
            valves.stream()
                .map(valve -> new Clearance(gear, valve, turn * crankTurns))
                .flatMap(c -> standing.stream().map(c::mmAt))
                .min(Double::compare)
                .orElseThrow());
  }

  /** Each cylinder's crank degrees past its own top dead centre at gas exchange. */
  private static List<Double> standing(Engine engine) {
    OptionalDouble at = engine.atReferenceDegrees();
    return engine.phasesDegrees().stream().map(phase -> at.orElseThrow() - phase).toList();
  }
}
