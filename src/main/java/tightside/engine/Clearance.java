package tightside.engine;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.numbers.rootfinder.BrentSolver;

/**
 * The room between a valve and the piston below it, along the cylinder: gap + x - lift cos(tilt), x
 * being the piston's drop. A flat crown square to the cylinder is taken, and no play, heat or
 * stretch.
 *
 * @param advancedDegrees crank degrees by which the valve opens and closes earlier
 */
public record Clearance(CrankGear gear, Valve valve, double advancedDegrees) {

  /** A step in which the clearance turns round once at most, crank degrees. */
  private static final double BRACKET_DEGREES = 0.25;

  /** Crank angles are found to this: far below what moves the clearance by 1e-12 mm. */
  private static final double NEAR_DEGREES = 1e-11;

  public double opensDegrees() {
    return valve.opensDegrees() - advancedDegrees;
  }

  public double closesDegrees() {
    return valve.closesDegrees() - advancedDegrees;
  }

  /** The clearance at a crank angle from top dead centre at gas exchange, mm. */
  public double mmAt(double crankDegrees) {
    return valve.gapMm()
        + gear.dropMm(crankDegrees)
        - valve.liftMm(crankDegrees + advancedDegrees) * cosTilt();
  }

  private double perDegreeMm(double crankDegrees) {
    return gear.dropPerDegreeMm(crankDegrees)
        - valve.liftPerDegreeMm(crankDegrees + advancedDegrees) * cosTilt();
  }

  private double cosTilt() {
    return Math.cos(Math.toRadians(valve.tiltDegrees()));
  }

  /**
   * The least clearance while the valve is open: at its opening, at its closing, or where the slope
   * passes from falling to growing.
   */
  public Nearest least() {
    return knots().stream().map(this::at).reduce(Nearest::nearer).orElseThrow();
  }

  /**
   * The crank angles from opening to closing between which the clearance only falls or only grows:
   * both ends, and wherever it turns round.
   */
  List<Double> knots() {
    int steps = (int) Math.ceil(valve.durationDegrees() / BRACKET_DEGREES);
    double step = valve.durationDegrees() / steps;
    List<Double> knots = new ArrayList<>(List.of(opensDegrees()));
    double slope = perDegreeMm(opensDegrees());
    for (int i = 0; i < steps; i++) {
      double from = opensDegrees() + i * step;
      double to = i == steps - 1 ? closesDegrees() : from + step;
      double next = perDegreeMm(to);
      if (slope * next < 0) {
        knots.add(root(this::perDegreeMm, from, to));
      } else if (next == 0) {
        knots.add(to);
      }
      slope = next;
    }
    knots.add(closesDegrees());
    return knots;
  }

  /** Where the clearance is nothing, between an angle where it is more and one where it is not. */
  double zeroBetween(double from, double to) {
    return root(this::mmAt, from, to);
  }

  private static double root(DoubleUnaryOperator curve, double from, double to) {
    return new BrentSolver(1e-14, NEAR_DEGREES, 1e-18).findRoot(curve, from, to);
  }

  private Nearest at(double crankDegrees) {
    return new Nearest(mmAt(crankDegrees), crankDegrees);
  }
}
