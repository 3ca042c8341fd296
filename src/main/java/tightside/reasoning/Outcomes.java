package tightside.reasoning;

import java.util.Collection;
import java.util.List;

/** The outcomes of a check, told apart as finely as it can tell. */
final class Outcomes {

  private static final int BINS = 60;

  private final double low;
  private final double width;
  private final int count;
  private final boolean numbers;

  private Outcomes(double low, double width, int count, boolean numbers) {
    this.low = low;
    this.width = width;
    this.count = count;
    this.numbers = numbers;
  }

  static Outcomes of(List<List<Candidate.Shown>> shown) {
    int several = shown.get(0).get(0).chances().length;
    if (several > 0) {
      return new Outcomes(0, 1, several, false);
    }
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (List<Candidate.Shown> some : shown) {
      for (Candidate.Shown one : some) {
        low = Math.min(low, one.mean() - 3 * one.spread());
        high = Math.max(high, one.mean() + 3 * one.spread());
      }
    }
    return new Outcomes(low, (high - low) / BINS, BINS, true);
  }

  double[] empty() {
    return new double[count];
  }

  /** Adds an outcome's probabilities, times a weight. */
  void addTo(double[] joint, Candidate.Shown shown, double weight) {
    if (!numbers) {
      for (int i = 0; i < count; i++) {
        joint[i] += weight * shown.chances()[i];
      }
      return;
    }
    double before = 0;
    for (int i = 0; i < count; i++) {
      double edge = low + (i + 1) * width;
      double below = i == count - 1 ? 1 : Normal.below((edge - shown.mean()) / shown.spread());
      joint[i] += weight * (below - before);
      before = below;
    }
  }

  /** Mutual information of row and column of a table of joint weights, bits. */
  static double mutualBits(Collection<double[]> rows) {
    double all = 0;
    int columns = rows.iterator().next().length;
    double[] byColumn = new double[columns];
    for (double[] row : rows) {
      for (int i = 0; i < columns; i++) {
        byColumn[i] += row[i];
        all += row[i];
      }
    }
    double bits = 0;
    for (double[] row : rows) {
      double sum = 0;
      for (double value : row) {
        sum += value;
      }
      for (int i = 0; i < columns; i++) {
        if (row[i] > 0) {
          bits += row[i] / all * Math.log(row[i] * all / (sum * byColumn[i])) / Math.log(2);
        }
      }
    }
    return Math.max(0, bits);
  }
}
