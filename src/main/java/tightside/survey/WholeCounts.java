package tightside.survey;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.RealMatrix;

/**
 * The odds of every set of whole counts of a chain.
 *
 * <p>Whole numbers n are weighed by how well they meet the adjusted pitches, as carrier-phase
 * ambiguities are (Teunissen, Integer aperture estimation; Betti, Crespi and Sanso, 1993: Bayesian
 * approach; from memory): with Q the covariance of the pitches and d2 = (n - a)' Q^-1 (n - a), the
 * weight is (v0 + O + d2)^-((v0 + f + k) / 2), where O is the adjustment's sum of squares, f its
 * degrees of freedom, k the strands and v0 what the stated uncertainties are worth: a normal law
 * whose variance factor is not known for certain. To this are added the cases that one measurement
 * is a blunder, its variance enlarged by lambda: with redundancy r and normalised residual w, O
 * falls by w2 lambda r / (1 + lambda r), the case's weight by sqrt(1 + lambda r), and pitches and
 * covariance become those of the adjustment that all but leaves the measurement out.
 */
final class WholeCounts {

  private final FloatCounts floats;
  private final LeastSquaresFit fit;
  private final List<Integer> strands;
  private final double freedom;
  private final double squares;
  private final Map<List<Long>, Double> odds = new LinkedHashMap<>();

  private WholeCounts(FloatCounts floats, LeastSquaresFit fit, int measured, int checked) {
    this.floats = floats;
    this.fit = fit;
    strands = floats.determined();
    double sum = 0;
    double f = 0;
    for (int i = 0; i < checked; i++) {
      sum += fit.residuals()[i] * fit.residuals()[i];
      f += fit.redundancy()[i];
    }
    squares = sum;
    freedom = f;
    if (!strands.isEmpty()) {
      weigh(measured);
    }
  }

  /**
   * @param measured how many of the first observations are measurements, any of which may be wrong
   * @param checked how many of the first observations are measurements or facts
   */
  static WholeCounts of(FloatCounts floats, LeastSquaresFit fit, int measured, int checked) {
    return new WholeCounts(floats, fit, measured, checked);
  }

  /** A case: what the pitches and their covariance would be, and the log of its weight. */
  private record Case(double[] pitches, RealMatrix inverse, double squares, double log) {}

  private void weigh(int measured) {
    List<Case> cases = new ArrayList<>();
    cases.add(sound(measured));
    for (int i = 0; i < measured; i++) {
      cases.add(blunder(i));
    }
    List<long[]> sets = sets(cases.get(0));
    double[] logs = new double[sets.size()];
    double most = Double.NEGATIVE_INFINITY;
    double[][] all = new double[sets.size()][cases.size()];
    for (int s = 0; s < logs.length; s++) {
      for (int c = 0; c < cases.size(); c++) {
        all[s][c] = log(cases.get(c), sets.get(s));
        most = Math.max(most, all[s][c]);
      }
    }
    double total = 0;
    for (int s = 0; s < logs.length; s++) {
      for (double log : all[s]) {
        logs[s] += Math.exp(log - most);
      }
      total += logs[s];
    }
    for (int s = 0; s < logs.length; s++) {
      odds.put(Arrays.stream(sets.get(s)).boxed().toList(), logs[s] / total);
    }
  }

  private RealMatrix covariance() {
    int[] at = strands.stream().mapToInt(Integer::intValue).toArray();
    RealMatrix q = floats.covariance().getSubMatrix(at, at).copy();
    for (int i = 0; i < at.length; i++) {
      q.addToEntry(i, i, Facts.WHOLE_PITCHES * Facts.WHOLE_PITCHES);
    }
    return q;
  }

  private double[] pitches() {
    return strands.stream().mapToDouble(i -> floats.pitches()[i]).toArray();
  }

  private Case sound(int measured) {
    return made(
        pitches(),
        covariance(),
        squares,
        Math.log(Math.max(1e-3, 1 - measured * Doubt.BLUNDER_SHARE)));
  }

  private Case blunder(int i) {
    double lambda = Doubt.enlarged(fit.sigmas()[i]);
    double grown = 1 + lambda * fit.redundancy()[i];
    double[] q = fit.covariance().operate(fit.rows().getRow(i));
    double[] shift = floats.slopes().operate(q);
    double[] pitches = pitches();
    RealMatrix covariance = covariance();
    for (int a = 0; a < pitches.length; a++) {
      double sa = shift[strands.get(a)];
      pitches[a] -= sa * lambda / grown * fit.residuals()[i];
      for (int b = 0; b < pitches.length; b++) {
        covariance.addToEntry(a, b, lambda / grown * sa * shift[strands.get(b)]);
      }
    }
    double fall = fit.residuals()[i] * fit.residuals()[i] * lambda / grown;
    return made(
        pitches,
        covariance,
        Math.max(0, squares - fall),
        Math.log(Doubt.BLUNDER_SHARE) - Math.log(grown) / 2);
  }

  private static Case made(double[] pitches, RealMatrix covariance, double squares, double log) {
    CholeskyDecomposition root = new CholeskyDecomposition(covariance, 1e-6, 0);
    return new Case(
        pitches, root.getSolver().getInverse(), squares, log - Math.log(root.getDeterminant()) / 2);
  }

  private double log(Case c, long[] set) {
    double[] off = new double[set.length];
    for (int i = 0; i < off.length; i++) {
      off[i] = set[i] - c.pitches()[i];
    }
    double d2 = LeastSquaresFit.quadratic(c.inverse(), off, off);
    double v0 = Doubt.STATED_AS_GOOD_AS;
    return c.log() - (v0 + freedom + set.length) / 2 * Math.log1p((c.squares() + d2) / v0);
  }

  /** Every set of whole numbers that is worth weighing. */
  private List<long[]> sets(Case sound) {
    int k = strands.size();
    int reach = k <= 3 ? 5 : k == 4 ? 3 : k <= 6 ? 2 : 1;
    List<long[]> sets = new ArrayList<>(List.of(new long[0]));
    for (int i = 0; i < k; i++) {
      long middle = Math.round(sound.pitches()[i]);
      List<long[]> longer = new ArrayList<>();
      for (long[] set : sets) {
        for (long n = middle - reach; n <= middle + reach; n++) {
          long[] more = Arrays.copyOf(set, i + 1);
          more[i] = n;
          longer.add(more);
        }
      }
      sets = longer;
    }
    return sets;
  }

  /** The places of the strands that are weighed together, among those of {@link FloatCounts}. */
  List<Integer> strands() {
    return strands;
  }

  /** The odds of each count of one strand. */
  TreeMap<Long, Double> oddsOf(int strand) {
    TreeMap<Long, Double> counts = new TreeMap<>();
    int at = strands.indexOf(strand);
    odds.forEach((set, p) -> counts.merge(set.get(at), p, Double::sum));
    return counts;
  }

  /** The odds of the sum of all strands' links. */
  TreeMap<Long, Double> oddsOfSum() {
    TreeMap<Long, Double> sums = new TreeMap<>();
    odds.forEach(
        (set, p) -> sums.merge(set.stream().mapToLong(Long::longValue).sum(), p, Double::sum));
    return sums;
  }
}
