package tightside.engine;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;

/** Engines for tests, all invented. */
final class Engines {

  private Engines() {}

  /** The engine of the model format's description. */
  static Engine described() {
    return new Engine(78, 73, 128, 10.5, List.of(intake(), exhaust()));
  }

  static Valve intake() {
    return new Valve("intake", 9, 232, 108, LiftLaw.POLYNOMIAL_345, 17, 6);
  }

  static Valve exhaust() {
    return new Valve("exhaust", 8.6, 228, -110, LiftLaw.POLYNOMIAL_345, 18, 6.2);
  }

  /** An in-line four, firing 1-3-4-2, at a crank angle. */
  static Engine four(double atReference, List<Valve> valves) {
    return new Engine(
        78,
        73,
        128,
        10.5,
        valves,
        List.of(0.0, 540.0, 180.0, 360.0),
        OptionalDouble.of(atReference));
  }

  static Valve sprung(Valve v, double preload, double rate) {
    return new Valve(
        v.shaft(),
        v.liftMm(),
        v.durationDegrees(),
        v.centrelineDegrees(),
        v.law(),
        v.tiltDegrees(),
        v.gapMm(),
        Optional.of(new Spring(preload, rate)));
  }

  /** One intake and one exhaust valve of any law, with room or without. */
  static Engine any(Random random) {
    List<Valve> valves = new ArrayList<>();
    for (int side = 1; side >= -1; side -= 2) {
      valves.add(
          new Valve(
              side > 0 ? "intake" : "exhaust",
              6 + 6 * random.nextDouble(),
              180 + 140 * random.nextDouble(),
              side * (90 + 30 * random.nextDouble()),
              LiftLaw.values()[random.nextInt(LiftLaw.values().length)],
              30 * random.nextDouble(),
              1 + 6 * random.nextDouble()));
    }
    double stroke = 60 + 40 * random.nextDouble();
    return new Engine(80, stroke, stroke * (1.4 + random.nextDouble()), 10, valves);
  }
}
