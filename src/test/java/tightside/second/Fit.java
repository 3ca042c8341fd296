package tightside.second;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;

/**
 * How a chain of a pitch fits its loop.
 *
 * @param how in words
 * @param extension of the plunger, mm
 * @param amount chain that is over or that lacks, mm
 * @param line where there is one
 */
public record Fit(How how, double extension, double amount, Optional<Line> line) {

  /** How it fits. */
  public enum How {
    FITS,
    TOO_SHORT,
    OUT_OF_TRAVEL,
    NO_PATH
  }

  private static final int STEPS = 24;
  private static final int HALVINGS = 44;

  /**
   * @param clockwise whether the chain travels so
   */
  static Fit of(Plan.Loop loop, boolean clockwise, double pitch) {
    double travel = travel(loop);
    double before = 0;
    for (int i = 0; i <= STEPS; i++) {
      double here = travel * i / STEPS;
      Optional<Line> line = line(loop, clockwise, pitch, here);
      if (line.isEmpty()) {
        return i == 0 ? nowhere() : stopped(loop, clockwise, pitch, before, here);
      }
      double over = loop.links() - line.get().pitches();
      if (over == 0 || over < 0 && i > 0) {
        return meeting(loop, clockwise, pitch, before, here);
      }
      if (over < 0) {
        return new Fit(How.TOO_SHORT, 0, -over * pitch, line);
      }
      if (travel == 0 || i == STEPS) {
        return new Fit(travel == 0 ? How.FITS : How.OUT_OF_TRAVEL, here, over * pitch, line);
      }
      before = here;
    }
    throw new AssertionError();
  }

  private static Fit nowhere() {
    return new Fit(How.NO_PATH, 0, 0, Optional.empty());
  }

  /** The line is there at first and gone at last: the chain may close just before that. */
  private static Fit stopped(
      Plan.Loop loop, boolean clockwise, double pitch, double from, double to) {
    double gone =
        bisect(e -> line(loop, clockwise, pitch, e).isPresent() ? -1 : 1, from, to) - 1e-9;
    Optional<Line> last = line(loop, clockwise, pitch, gone);
    boolean closes = last.isPresent() && last.get().pitches() >= loop.links();
    return closes ? meeting(loop, clockwise, pitch, from, gone) : nowhere();
  }

  private static Fit meeting(
      Plan.Loop loop, boolean clockwise, double pitch, double from, double to) {
    double extension =
        bisect(
            e -> line(loop, clockwise, pitch, e).orElseThrow().pitches() - loop.links(), from, to);
    return new Fit(How.FITS, extension, 0, line(loop, clockwise, pitch, extension));
  }

  /** Where a quantity that is below zero at first reaches it. */
  static double bisect(DoubleUnaryOperator quantity, double from, double to) {
    double low = from;
    double high = to;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (low + high) / 2;
      if (quantity.applyAsDouble(middle) < 0) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return high;
  }

  private static double travel(Plan.Loop loop) {
    return loop.route().stream()
        .filter(item -> item instanceof Plan.Rub rub && rub.push().isPresent())
        .mapToDouble(item -> ((Plan.Rub) item).push().orElseThrow().travel())
        .findFirst()
        .orElse(0);
  }

  static Optional<Line> line(Plan.Loop loop, boolean clockwise, double pitch, double extension) {
    List<Shape> shapes = new ArrayList<>();
    for (Plan.Item item : loop.route()) {
      int side = clockwise != item.outside() ? 1 : -1;
      if (item instanceof Plan.Wheel wheel) {
        shapes.add(Round.of(wheel, pitch, side));
      } else {
        shapes.add(new Rail(Pushed.by((Plan.Rub) item, extension), loop.plate(), pitch, side));
      }
    }
    return Line.round(shapes, pitch);
  }
}
