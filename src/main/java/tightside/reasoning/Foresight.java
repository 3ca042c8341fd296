package tightside.reasoning;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** What explanations lead one to expect of the next reading. */
final class Foresight {

  /** States that stand for what is still open. */
  private static final int STATES = 60;

  private final DriveFaults faults;
  private final Likelihood before;
  private final Compiled next;

  /**
   * @param before the readings so far
   */
  Foresight(DriveFaults faults, Evidence before, Reading reading) {
    this.faults = faults;
    this.before = Likelihood.of(faults, before);
    next = Compiled.of(faults, new Evidence(List.of(reading), before.spreads()));
  }

  /**
   * Of one hypothesis; nothing where its amounts were not worked out.
   *
   * @param marginal its amounts after the readings so far
   */
  Optional<Foreseen> of(Hypothesis hypothesis, Marginal marginal) {
    if (!hypothesis.amounts().isEmpty() && marginal.weights().length == 0) {
      return Optional.empty();
    }
    List<double[]> states = States.of(hypothesis, marginal, faults.base(), STATES);
    if (next.rows().isEmpty()) {
      return Optional.of(byFactor(next.factors().get(0), hypothesis, states));
    }
    Row row = next.rows().size() == 1 ? next.rows().get(0) : mean(next.rows());
    return Optional.of(Mixture.of(states, q -> before.next(row, q, hypothesis)).beside(row.read()));
  }

  /** All edges of one wheel as one reading: their mean. */
  private static Row mean(List<Row> edges) {
    Row first = edges.get(0);
    double read = edges.stream().mapToDouble(Row::read).average().orElseThrow();
    double spread = first.spread() / Math.sqrt(edges.size());
    return new Row(first.places(), read, spread, first.wheel(), false, false, first.openTo());
  }

  private static Foreseen byFactor(Factor factor, Hypothesis hypothesis, List<double[]> states) {
    Factor.Open open = hypothesis.open();
    if (factor instanceof PlungerFactor plunger && !open.frees(plunger.place())) {
      double spread = plunger.spreadMm();
      return Mixture.of(states, q -> Candidate.Shown.normal(q[plunger.place()], spread))
          .beside(plunger.middleMm());
    }
    if (factor instanceof CompressionFactor compression && !open.everything()) {
      double spread = compression.spreadPercent();
      return Mixture.of(states, q -> Candidate.Shown.normal(compression.percentAt(q), spread))
          .beside(compression.percent());
    }
    if (factor instanceof CompressionFactor compression) {
      double spread = Math.hypot(CompressionFactor.OPEN_PERCENT, compression.spreadPercent());
      return Foreseen.number(100, spread, compression.percent());
    }
    double chance =
        states.stream().mapToDouble(q -> Math.exp(factor.log(q, open))).average().orElseThrow();
    return Foreseen.chance(chance);
  }

  /**
   * Mean and spread of a mixture, as sums.
   *
   * @param squares of means and spreads
   */
  private record Mixture(int count, double sum, double squares) {

    static Mixture of(List<double[]> states, Function<double[], Candidate.Shown> shows) {
      double sum = 0;
      double squares = 0;
      for (double[] state : states) {
        Candidate.Shown shown = shows.apply(state);
        sum += shown.mean();
        squares += shown.mean() * shown.mean() + shown.spread() * shown.spread();
      }
      return new Mixture(states.size(), sum, squares);
    }

    Foreseen beside(double read) {
      double mean = sum / count;
      return Foreseen.number(mean, Math.sqrt(Math.max(0, squares / count - mean * mean)), read);
    }
  }
}
