package tightside.reasoning;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** How probable the readings are in a state of the drive, worked out for one set of readings. */
final class Likelihood {

  private final Compiled compiled;
  private final double[] read;
  private final Map<Integer, Gauss> bent;
  private final Gauss usual;
  private final Gauss open;

  private Likelihood(Compiled compiled) {
    this.compiled = compiled;
    read = compiled.read();
    usual = new Gauss(compiled.covariance());
    open = new Gauss(compiled.covarianceOpen());
    bent = new HashMap<>();
    for (Row row : compiled.rows()) {
      if (row.edge() && row.wheel() >= 0) {
        bent.computeIfAbsent(row.wheel(), w -> new Gauss(compiled.covarianceBent(w)));
      }
    }
  }

  static Likelihood of(DriveFaults faults, Evidence evidence) {
    return new Likelihood(Compiled.of(faults, evidence));
  }

  Compiled compiled() {
    return compiled;
  }

  /** The covariance under a hypothesis. */
  Gauss gauss(Hypothesis hypothesis) {
    if (hypothesis.what().cause() == Cause.OTHER) {
      return open;
    }
    return hypothesis.bent().isPresent()
        ? bent.getOrDefault(hypothesis.bent().getAsInt(), usual)
        : usual;
  }

  /** Log of the probability of all readings; densities in crank degrees and percent. */
  double log(Gauss gauss, double[] quantities, Factor.Open left) {
    return gauss.logDensity(deviation(quantities)) + logFactors(quantities, left);
  }

  /** Of the readings that are no normal numbers alone. */
  double logFactors(double[] quantities, Factor.Open left) {
    double log = 0;
    for (Factor factor : compiled.factors()) {
      log += factor.log(quantities, left);
    }
    return log;
  }

  /** Whether the likelihood is normal in an amount: it changes normal readings alone, straight. */
  boolean normalAlong(Curve curve) {
    return curve.straight() && compiled.factors().stream().noneMatch(f -> f.heeds(curve));
  }

  double[] deviation(double[] quantities) {
    double[] deviation = new double[read.length];
    for (int i = 0; i < deviation.length; i++) {
      deviation[i] = read[i] - compiled.rows().get(i).expected(quantities);
    }
    return deviation;
  }

  double[] expected(double[] quantities) {
    double[] expected = new double[read.length];
    for (int i = 0; i < expected.length; i++) {
      expected[i] = compiled.rows().get(i).expected(quantities);
    }
    return expected;
  }

  /** How what is read changes by the amount of a curve, taken between two amounts. */
  double[] slope(Curve curve, double from, double to) {
    double[] one = new double[compiled.width()];
    double[] other = one.clone();
    curve.addTo(one, from);
    curve.addTo(other, to);
    double[] low = expected(one);
    double[] high = expected(other);
    for (int i = 0; i < low.length; i++) {
      high[i] = (high[i] - low[i]) / (to - from);
    }
    return high;
  }

  /** Square of the distance, in spreads, at which data of one state lie from another. */
  double squaredApart(double[] one, Hypothesis of, double[] other, Hypothesis against) {
    double[] apart = new double[read.length];
    for (int i = 0; i < apart.length; i++) {
      Row row = compiled.rows().get(i);
      apart[i] = row.expected(one) - row.expected(other);
    }
    double sum = gauss(against).squared(apart);
    for (Factor factor : compiled.factors()) {
      sum += factor.squaredApart(one, of.open(), other, against.open());
    }
    return sum;
  }

  /** The amounts of an effect between which all factors are smooth. */
  List<Double> breaks(double[] base, Curve curve) {
    List<Double> breaks = new ArrayList<>();
    compiled.factors().forEach(f -> breaks.addAll(f.breaks(base, curve)));
    return breaks;
  }

  /** What another reading shows in a state, with what the sensor has shown already in mind. */
  Candidate.Shown next(Row row, double[] quantities, Hypothesis hypothesis) {
    boolean everything = hypothesis.what().cause() == Cause.OTHER;
    double[] shared = new double[read.length];
    for (int i = 0; i < shared.length; i++) {
      Row other = compiled.rows().get(i);
      shared[i] = compiled.shared(row, other) + (everything ? Compiled.open(row, other) : 0);
    }
    Gauss gauss = gauss(hypothesis);
    double own = compiled.shared(row, row) + (everything ? Compiled.open(row, row) : 0);
    double variance = row.spread() * row.spread() + own - gauss.product(shared, shared);
    double mean = row.expected(quantities) + gauss.product(shared, deviation(quantities));
    return Candidate.Shown.normal(mean, Math.sqrt(variance));
  }
}
