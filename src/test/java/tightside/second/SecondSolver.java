package tightside.second;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The second solver: a plan, how far each chain is stretched, and what was reseated. */
public final class SecondSolver {

  private final Plan plan;
  private final Map<String, Boolean> clockwise = new HashMap<>();
  private final Map<String, Fit> fits = new HashMap<>();
  private final List<Plan.Loop> order = new ArrayList<>();

  public SecondSolver(Plan plan) {
    this.plan = plan;
    clockwise.put(plan.crank(), plan.clockwise());
    while (order.size() < plan.loops().size()) {
      order.add(takeNext());
    }
  }

  private Plan.Loop takeNext() {
    for (Plan.Loop loop : plan.loops()) {
      if (!order.contains(loop) && clockwise.containsKey(driver(loop).shaft())) {
        boolean travel = travel(loop);
        loop.route().stream()
            .filter(item -> item instanceof Plan.Wheel)
            .forEach(item -> clockwise.put(((Plan.Wheel) item).shaft(), travel != item.outside()));
        return loop;
      }
    }
    throw new IllegalArgumentException("a chain that nothing drives");
  }

  private static Plan.Wheel driver(Plan.Loop loop) {
    return (Plan.Wheel) loop.route().get(0);
  }

  private boolean travel(Plan.Loop loop) {
    return clockwise.get(driver(loop).shaft()) != driver(loop).outside();
  }

  /**
   * @param stretch percent by chain; a chain not named is new
   * @param reseats teeth by chain and shaft, as "chain/shaft"
   */
  public Answer solve(Map<String, Double> stretch, Map<String, Integer> reseats) {
    Map<String, Double> errors = new HashMap<>(Map.of(plan.crank(), 0.0));
    Map<String, Answer.Looped> loops = new HashMap<>();
    for (Plan.Loop loop : order) {
      Fit fit = fit(loop, stretch.getOrDefault(loop.name(), 0.0));
      Timing timing = new Timing(loop, fit(loop, 0), fit, reseats);
      loops.put(loop.name(), timing.looped());
      errors.putAll(timing.errors(errors.getOrDefault(driver(loop).shaft(), 0.0)));
    }
    return new Answer(errors, loops);
  }

  private Fit fit(Plan.Loop loop, double percent) {
    return fits.computeIfAbsent(
        loop.name() + " " + percent,
        unknown -> Fit.of(loop, travel(loop), loop.pitch() * (1 + percent / 100)));
  }

  /** The line of a new chain with the plunger held, where there is one. */
  public Optional<Line> line(String name, double extension) {
    Plan.Loop loop = loop(name);
    return Fit.line(loop, travel(loop), loop.pitch(), extension);
  }

  /** Chain that is over in a new loop with the plunger held, mm; negative where it lacks. */
  public double slack(String name, double extension) {
    Plan.Loop loop = loop(name);
    return (loop.links() - line(name, extension).orElseThrow().pitches()) * loop.pitch();
  }

  private Plan.Loop loop(String name) {
    return plan.loops().stream().filter(l -> l.name().equals(name)).findFirst().orElseThrow();
  }
}
