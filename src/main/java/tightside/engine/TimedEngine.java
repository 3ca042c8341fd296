package tightside.engine;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import java.util.stream.Stream;
import tightside.timing.Solution;

/**
 * An engine with its camshafts as they stand.
 *
 * @param advancedDegrees crank degrees by camshaft, positive = its valves open that much earlier; a
 *     camshaft not named stands right
 */
public record TimedEngine(Engine engine, Map<String, Double> advancedDegrees) {

  public TimedEngine {
    advancedDegrees = Map.copyOf(advancedDegrees);
    for (double degrees : advancedDegrees.values()) {
      if (!Double.isFinite(degrees)) {
        throw new IllegalArgumentException("a camshaft is advanced by a finite angle");
      }
    }
  }

  public static TimedEngine right(Engine engine) {
    return new TimedEngine(engine, Map.of());
  }

  /** An engine with its camshafts as a drive has them. */
  public static TimedEngine driven(Engine engine, Solution solution) {
    Map<String, Double> advanced = new HashMap<>();
    engine
        .camshafts()
        .forEach(s -> solution.shaft(s).ifPresent(t -> advanced.put(s, t.crankDegrees())));
    return new TimedEngine(engine, advanced);
  }

  /** The same with one camshaft advanced by so many crank degrees more. */
  public TimedEngine advanced(String shaft, double moreDegrees) {
    Map<String, Double> changed = new HashMap<>(advancedDegrees);
    changed.merge(shaft, moreDegrees, Double::sum);
    return new TimedEngine(engine, changed);
  }

  /** Every valve over its piston, in the order of the model. */
  public List<Clearance> clearances() {
    return engine.valves().stream().map(this::clearance).toList();
  }

  private Clearance clearance(Valve valve) {
    return new Clearance(
        engine.crankGear(), valve, advancedDegrees.getOrDefault(valve.shaft(), 0.0));
  }

  /** Where any valve of a camshaft comes nearest to its piston. */
  public Nearest least(String shaft) {
    return engine.valvesOn(shaft).stream()
        .map(v -> clearance(v).least())
        .reduce(Nearest::nearer)
        .orElseThrow(() -> new IllegalArgumentException(shaft + " opens no valve"));
  }

  /** Compression; it begins when the last intake valve closes. */
  public Squeeze squeeze() {
    OptionalDouble closes = timed(Valve::intake).mapToDouble(Clearance::closesDegrees).max();
    double ratio = engine.compressionRatio();
    return new Squeeze(
        ratio,
        closes.isEmpty()
            ? OptionalDouble.empty()
            : OptionalDouble.of(
                Squeeze.over(
                    ratio, engine.crankGear().dropMm(closes.getAsDouble()) / engine.strokeMm())));
  }

  /**
   * Crank degrees from the opening of the first intake valve to the closing of the last exhaust
   * valve, negative where neither is open between them; nothing where one of them is not known.
   */
  public OptionalDouble overlapDegrees() {
    OptionalDouble opens = timed(Valve::intake).mapToDouble(Clearance::opensDegrees).min();
    OptionalDouble closes = timed(v -> !v.intake()).mapToDouble(Clearance::closesDegrees).max();
    return opens.isEmpty() || closes.isEmpty()
        ? OptionalDouble.empty()
        : OptionalDouble.of(closes.getAsDouble() - opens.getAsDouble());
  }

  private Stream<Clearance> timed(Predicate<Valve> which) {
    return clearances().stream().filter(c -> which.test(c.valve()));
  }
}
