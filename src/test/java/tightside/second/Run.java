package tightside.second;

import java.util.Optional;
import java.util.function.DoubleUnaryOperator;

/**
 * A straight run from one shape to the next.
 *
 * @param direction of travel, radians counterclockwise from x
 */
public record Run(double direction, Spot from, Spot to) {

  private static final int LOOKS = 48;
  private static final int HALVINGS = 52;

  /**
   * Seeks the direction in which one line rests on both shapes: there the point on the second lies
   * neither left nor right of the line through the point on the first. Going forward along the run,
   * it goes from left to right as the direction turns counterclockwise.
   */
  static Optional<Run> between(Shape first, Shape second) {
    double ahead = second.midst().minus(first.midst()).direction();
    double quarter = Math.PI / 2;
    if (left(first, second, ahead - quarter) > 0 && left(first, second, ahead + quarter) <= 0) {
      return Optional.of(halved(first, second, ahead - quarter, ahead + quarter));
    }
    double most = farthest(direction -> left(first, second, direction));
    double least = farthest(direction -> -left(first, second, direction));
    return left(first, second, most) > 0 && left(first, second, least) <= 0
        ? Optional.of(halved(first, second, most, least < most ? least + 2 * Math.PI : least))
        : Optional.empty();
  }

  /** The direction in which a quantity is greatest. */
  private static double farthest(DoubleUnaryOperator quantity) {
    double step = 2 * Math.PI / LOOKS;
    double best = 0;
    for (int i = 1; i < LOOKS; i++) {
      if (quantity.applyAsDouble(i * step) > quantity.applyAsDouble(best)) {
        best = i * step;
      }
    }
    double low = best - step;
    double high = best + step;
    for (int i = 0; i < HALVINGS; i++) {
      double third = (high - low) / 3;
      if (quantity.applyAsDouble(low + third) < quantity.applyAsDouble(high - third)) {
        low += third;
      } else {
        high -= third;
      }
    }
    return (low + high) / 2;
  }

  private static Run halved(Shape first, Shape second, double from, double to) {
    double low = from;
    double high = to;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (low + high) / 2;
      if (left(first, second, middle) > 0) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return new Run(low, first.touch(low), second.touch(low));
  }

  private static double left(Shape first, Shape second, double direction) {
    return second
        .touch(direction)
        .minus(first.touch(direction))
        .along(Spot.towards(direction).leftTurned());
  }

  public double length() {
    return to.minus(from).along(Spot.towards(direction));
  }

  /** Whether the ends of each run lie on different sides of the other. */
  boolean crosses(Run other) {
    return leftOf(other.from) * leftOf(other.to) < 0 && other.leftOf(from) * other.leftOf(to) < 0;
  }

  private double leftOf(Spot spot) {
    return spot.minus(from).along(Spot.towards(direction).leftTurned());
  }

  /** How deep a face stands in the way of this run, mm; negative where it is clear of it. */
  double blockedBy(Rail rail) {
    double worst = blockedAt(rail, rail.touch(direction));
    for (int i = 0; i <= LOOKS; i++) {
      worst = Math.max(worst, blockedAt(rail, rail.touch(rail.directionAt((double) i / LOOKS))));
    }
    return worst;
  }

  private double blockedAt(Rail rail, Spot point) {
    Spot ahead = Spot.towards(direction);
    double along = point.minus(from).along(ahead);
    return along > 0 && along < length()
        ? rail.side() * point.minus(from).along(ahead.leftTurned())
        : Double.NEGATIVE_INFINITY;
  }
}
