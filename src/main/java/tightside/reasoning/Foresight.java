package tightside.reasoning;

import java.util.List;
import java.util.Optional;

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
    Mean mean = new Mean();
    for (double[] state : states) {
      Candidate.Shown shown = before.next(row, state, hypothesis);
      mean.add(shown.mean(), shown.spread());
    }
    return Optional.of(Foreseen.number(mean.mean(), mean.spread(), row.read()));
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
      Mean mean = new Mean();
      states.forEach(q -> mean.add(q[plunger.place()], plunger.spreadMm()));
      return Foreseen.number(mean.mean(), mean.spread(), plunger.middleMm());
    }
    if (factor instanceof CompressionFactor compression && !open.everything()) {
      Mean mean = new Mean();
      states.forEach(q -> mean.add(compression.percentAt(q), compression.spreadPercent()));
      return Foreseen.number(mean.mean(), mean.spread(), compression.percent());
    }
    if (factor instanceof CompressionFactor compression) {
      return Foreseen.number(
          100,
          Math.hypot(CompressionFactor.OPEN_PERCENT, compression.spreadPercent()),
          compression.percent());
    }
    double chance =
        states.stream().mapToDouble(q -> Math.exp(factor.log(q, open))).average().orElseThrow();
    return Foreseen.chance(chance);
  }

  /** Mean and spread of a mixture. */
  private static final class Mean {
    private int count;
    private double sum;
    private double squares;

    void add(double mean, double spread) {
      count++;
      sum += mean;
      squares += mean * mean + spread * spread;
    }

    double mean() {
      return sum / count;
    }

    double spread() {
      return Math.sqrt(Math.max(0, squares / count - mean() * mean()));
    }
  }
}
