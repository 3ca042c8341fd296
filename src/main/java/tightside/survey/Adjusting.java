package tightside.survey;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.TreeMap;
import java.util.function.IntPredicate;
import org.hipparchus.exception.MathRuntimeException;
import tightside.drive.Chain;
import tightside.drive.Drive;
import tightside.drive.Finding;

/** The steps of an adjustment. */
final class Adjusting {

  private final Drive drawn;
  private final Survey survey;
  private final Unknowns unknowns;
  private final List<Equation> equations = new ArrayList<>();

  Adjusting(Drive drawn, Survey survey) {
    this.drawn = drawn;
    this.survey = survey;
    Strangers.refuse(drawn, survey);
    unknowns = new Unknowns(drawn);
    survey.measurements().forEach(m -> equations.add(Facts.of(m)));
    equations.addAll(Facts.of(drawn, survey));
  }

  Optional<Adjustment> adjusted() {
    try {
      double[] start = unknowns.all().stream().mapToDouble(Unknown::start).toArray();
      LeastSquaresFit loose = fit(equations, start);
      List<SureCount> counts = new ArrayList<>();
      List<double[]> slopes = new ArrayList<>();
      for (Chain chain : drawn.chains()) {
        count(chain, loose, counts, slopes);
      }
      List<Equation> held = held(counts);
      LeastSquaresFit fixed = held.size() == equations.size() ? loose : fit(held, loose.unknowns());
      return Optional.of(result(fixed, held.size(), loose, counts, slopes));
    } catch (MathRuntimeException notSettled) {
      return Optional.empty();
    }
  }

  /** Equations first, then what the drawing says of each unknown, loosely. */
  private LeastSquaresFit fit(List<Equation> some, double[] start) {
    int m = some.size();
    int n = unknowns.all().size();
    double[] observed = new double[m + n];
    double[] sigmas = new double[m + n];
    for (int i = 0; i < m; i++) {
      observed[i] = some.get(i).observed();
      sigmas[i] = some.get(i).sigma();
    }
    for (int j = 0; j < n; j++) {
      observed[m + j] = unknowns.all().get(j).start();
      sigmas[m + j] = unknowns.all().get(j).loose();
    }
    double[] steps = unknowns.all().stream().mapToDouble(Unknown::step).toArray();
    return LeastSquares.fit(model(some), observed, sigmas, start, steps);
  }

  private LeastSquares.Model model(List<Equation> some) {
    boolean[][] bear = Bearings.of(drawn, unknowns, survey.measurements(), some);
    return new LeastSquares.Model() {
      @Override
      public double[] valuesAt(double[] x) {
        return values(some, x, i -> true);
      }

      @Override
      public double[] valuesAt(double[] x, int moved) {
        return values(some, x, i -> bear[i][moved]);
      }
    };
  }

  private double[] values(List<Equation> some, double[] x, IntPredicate asked) {
    Site site = unknowns.at(x);
    double[] values = new double[some.size() + x.length];
    for (int i = 0; i < some.size(); i++) {
      values[i] = asked.test(i) ? some.get(i).value().applyAsDouble(site) : 0;
    }
    System.arraycopy(x, 0, values, some.size(), x.length);
    return values;
  }

  private void count(
      Chain chain, LeastSquaresFit loose, List<SureCount> counts, List<double[]> slopes) {
    List<StrandPlan> plans = StrandPlan.of(chain);
    List<StrandPlan> taut = plans.stream().filter(StrandPlan::taut).toList();
    FloatCounts floats = FloatCounts.of(unknowns, loose, taut);
    WholeCounts whole =
        WholeCounts.of(floats, loose, survey.measurements().size(), equations.size());
    for (StrandPlan plan : plans) {
      if (plan.taut()) {
        int i = taut.indexOf(plan);
        boolean known = whole.strands().contains(i);
        counts.add(
            sure(
                plan,
                floats.pitches()[i],
                floats.sigma(i),
                known ? whole.oddsOf(i) : new TreeMap<>()));
        slopes.add(floats.slopes().getRow(i));
      } else {
        counts.add(slack(chain, plan, floats, whole));
        slopes.add(new double[0]);
      }
    }
  }

  /** The slack side takes what the taut strands leave of the whole loop. */
  private SureCount slack(Chain chain, StrandPlan plan, FloatCounts floats, WholeCounts whole) {
    double pitches = chain.links();
    double variance = 0;
    for (int i = 0; i < floats.strands().size(); i++) {
      pitches -= floats.pitches()[i];
      for (int j = 0; j < floats.strands().size(); j++) {
        variance += floats.covariance().getEntry(i, j);
      }
    }
    TreeMap<Long, Double> odds = new TreeMap<>();
    if (whole.strands().size() == floats.strands().size() && !floats.strands().isEmpty()) {
      whole.oddsOfSum().forEach((sum, p) -> odds.put(chain.links() - sum, p));
    }
    return sure(plan, pitches, Math.sqrt(variance), odds);
  }

  private SureCount sure(
      StrandPlan plan, double pitches, double sigma, TreeMap<Long, Double> odds) {
    long links =
        odds.entrySet().stream()
            .max(java.util.Map.Entry.comparingByValue())
            .map(java.util.Map.Entry::getKey)
            .orElse(Double.isNaN(pitches) ? 0 : Math.round(pitches));
    OptionalLong counted =
        survey.counted().stream()
            .filter(c -> c.chain().equals(plan.chain()) && c.from().equals(plan.from()))
            .mapToLong(CountedLinks::links)
            .findFirst();
    return new SureCount(plan, pitches, sigma, links, odds.getOrDefault(links, 0.0), odds, counted);
  }

  /** The equations, and a whole number for every taut strand whose count is sure or counted. */
  private List<Equation> held(List<SureCount> counts) {
    List<Equation> held = new ArrayList<>(equations);
    for (SureCount count : counts) {
      if (!count.strand().taut() || Double.isNaN(count.pitches())) {
        continue;
      }
      if (count.counted().isPresent() && !count.contradicted()) {
        held.add(Facts.whole(count.strand(), count.counted().getAsLong()));
      } else if (count.sure()) {
        held.add(Facts.whole(count.strand(), count.links()));
      }
    }
    return held;
  }

  private Adjustment result(
      LeastSquaresFit fit,
      int weighed,
      LeastSquaresFit loose,
      List<SureCount> counts,
      List<double[]> slopes) {
    List<Checked> checked = new ArrayList<>();
    for (int i = 0; i < survey.measurements().size(); i++) {
      Measurement m = survey.measurements().get(i);
      checked.add(
          new Checked(
              i,
              m,
              m.reading().value() - fit.residual(i),
              fit.residual(i),
              fit.normalised(i),
              fit.redundancy()[i],
              Detection.smallestFound(fit.sigmas()[i], fit.redundancy()[i])));
    }
    double squares = 0;
    double freedom = 0;
    for (int i = 0; i < weighed; i++) {
      squares += fit.residuals()[i] * fit.residuals()[i];
      freedom += fit.redundancy()[i];
    }
    Optional<Checked> suspect =
        checked.stream()
            .filter(c -> !c.unchecked() && Math.abs(c.normalised()) > Detection.CRITICAL)
            .max(Comparator.comparingDouble(c -> Math.abs(c.normalised())));
    Site site = unknowns.at(fit.unknowns());
    List<Finding> trouble = site.trouble(drawn);
    Optional<Drive> drive = trouble.isEmpty() ? Optional.of(site.drive(drawn)) : Optional.empty();
    return new Adjustment(
        drawn,
        survey,
        fit,
        checked,
        Detection.Global.of(squares, freedom),
        suspect,
        counts,
        next(loose, counts, slopes),
        drive,
        trouble);
  }

  private Optional<Adjustment.Next> next(
      LeastSquaresFit loose, List<SureCount> counts, List<double[]> slopes) {
    SureCount least = null;
    for (SureCount c : counts) {
      if (c.strand().taut() && !c.sure() && (least == null || worse(c, least))) {
        least = c;
      }
    }
    if (least == null) {
      return Optional.empty();
    }
    Proposals proposals = new Proposals(drawn, unknowns, loose, survey.measurements().size());
    return Optional.of(
        new Adjustment.Next(least, proposals.best(slopes.get(counts.indexOf(least)))));
  }

  private static boolean worse(SureCount a, SureCount b) {
    return a.probability() != b.probability()
        ? a.probability() < b.probability()
        : a.sigma() > b.sigma();
  }
}
