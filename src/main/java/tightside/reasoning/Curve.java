package tightside.reasoning;

import java.util.ArrayList;
import java.util.List;

/**
 * How quantities change with an amount: straight between points that were worked out.
 *
 * <p>The amounts rise; every point holds the change of every quantity from a drive that is right.
 */
final class Curve {

  private final double[] amounts;
  private final double[][] changes;

  Curve(double[] amounts, double[][] changes) {
    this.amounts = amounts.clone();
    this.changes = changes.clone();
    if (amounts.length < 1 || amounts.length != changes.length) {
      throw new IllegalArgumentException("a curve needs a point, and a change for each");
    }
  }

  /** A change without an amount. */
  static Curve fixed(double[] change) {
    return new Curve(new double[] {0}, new double[][] {change});
  }

  /** A change in proportion to the amount, from the least to the most. */
  static Curve straight(double least, double most, double[] perUnit) {
    double[][] ends = new double[2][perUnit.length];
    for (int i = 0; i < perUnit.length; i++) {
      ends[0][i] = least * perUnit[i];
      ends[1][i] = most * perUnit[i];
    }
    return new Curve(new double[] {least, most}, ends);
  }

  /** Whether it is one straight line through its whole range. */
  boolean straight() {
    return amounts.length == 2;
  }

  double least() {
    return amounts[0];
  }

  double most() {
    return amounts[amounts.length - 1];
  }

  /** Adds the change at an amount to the quantities. */
  void addTo(double[] quantities, double amount) {
    int piece = piece(amount);
    double[] from = changes[piece];
    if (amounts.length == 1) {
      for (int i = 0; i < from.length; i++) {
        quantities[i] += from[i];
      }
      return;
    }
    double[] to = changes[piece + 1];
    double share = (amount - amounts[piece]) / (amounts[piece + 1] - amounts[piece]);
    for (int i = 0; i < from.length; i++) {
      quantities[i] += from[i] + share * (to[i] - from[i]);
    }
  }

  private int piece(double amount) {
    int piece = 0;
    while (piece < amounts.length - 2 && amount > amounts[piece + 1]) {
      piece++;
    }
    return piece;
  }

  /** The amounts at which one quantity has changed by so much. */
  List<Double> amountsAt(int quantity, double change) {
    List<Double> found = new ArrayList<>();
    for (int i = 0; i + 1 < amounts.length; i++) {
      double from = changes[i][quantity] - change;
      double to = changes[i + 1][quantity] - change;
      if (from != to && from * to <= 0) {
        found.add(amounts[i] + (amounts[i + 1] - amounts[i]) * from / (from - to));
      }
    }
    return found;
  }

  /** Whether the quantity changes with the amount at all. */
  boolean moves(int quantity) {
    for (double[] change : changes) {
      if (change[quantity] != changes[0][quantity]) {
        return true;
      }
    }
    return false;
  }

  /** The same curve over its beginning alone. */
  static Curve upTo(List<Double> amounts, List<double[]> changes) {
    return new Curve(
        amounts.stream().mapToDouble(Double::doubleValue).toArray(),
        changes.toArray(double[][]::new));
  }
}
