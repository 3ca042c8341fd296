package tightside.studies;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.LongAdder;
import java.util.stream.IntStream;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;
import tightside.drive.Drive;
import tightside.survey.Adjustment;
import tightside.survey.Detection;
import tightside.survey.Measured;
import tightside.survey.MeasuredDrives;
import tightside.survey.Measurement;
import tightside.survey.SureCount;
import tightside.survey.Survey;
import tightside.timing.Solver;
import tightside.timing.State;
import tightside.timing.Strand;

/**
 * Measures the demo drives again and again with drawn errors: how often counts are right, how well
 * their sureness is kept, how often a planted blunder is named.
 *
 * <p>Whether the data allow a blunder to be named is settled beforehand, from measurements without
 * error: it is at least as large as the smallest detectable one, and its normalised residual would
 * be the largest against every other with the same power.
 */
public final class Surveys {

  private static final double BLUNDER_MM = 5;
  private static final List<String> MODELS =
      List.of("two-cams-arm", "one-cam-no-tensioner", "counterclockwise-balancers");
  private static final double SURE = 0.99;
  private static final String ROW = "%-42s %8s %6s %8s %9s";
  private static final String SURENESS = " %10s %9s %10s %9s%n";
  private static final double BLUNDER_SHARE = 0.005;
  private static final double BLUNDER_SIZE = 10;

  private Surveys() {}

  /** A drive measured in one way. */
  private record Case(String name, Measured measured, Drive sketch) {}

  /**
   * @param words how many times each drive is measured, 1000 if nothing is said, and which models;
   *     three if none is named
   */
  public static void main(String[] words) {
    int times = words.length > 0 ? Integer.parseInt(words[0]) : 1000;
    System.out.printf(ROW, "Drive and way of measuring", "surveys", "lost", "counts", "right");
    System.out.printf(SURENESS, "99 % sure", "right", "less sure", "right");
    Tally clean = new Tally();
    Tally dirty = new Tally();
    List<String> named = new ArrayList<>();
    long[] blunders = new long[2];
    for (Case c : cases(words.length > 1 ? List.of(words).subList(1, words.length) : MODELS)) {
      Tally here = new Tally();
      measure(c, times, 0, here, 1);
      here.print(c.name());
      clean.add(here);
      Tally worse = new Tally();
      measure(c, times, BLUNDER_SHARE, worse, 2);
      worse.print("  1 reading in 200 a blunder");
      dirty.add(worse);
      named.add(blunders(c, times / 2, blunders));
    }
    clean.print("All, errors as stated");
    dirty.print("All, 1 reading in 200 a blunder");
    System.out.printf("%nBlunders of %.0f mm%n", BLUNDER_MM);
    named.forEach(System.out::println);
    System.out.println(named("All", "", blunders[0], blunders[1]));
    System.out.printf("%nSeeds 1 to 3, by %d.%n", times);
  }

  private static String named(String what, String where, long named, long planted) {
    String share = planted == 0 ? "-" : "%.1f %%".formatted(100.0 * named / planted);
    return "%-42s %-28s named %6d of %6d %8s".formatted(what, where, named, planted, share);
  }

  private static List<Case> cases(List<String> models) {
    List<Case> cases = new ArrayList<>();
    for (String name : models) {
      Drive truth = MeasuredDrives.model(name);
      Drive sketch = MeasuredDrives.sketched(truth, 2, 2);
      Measured sparing = Measured.sparing(truth);
      Measured thorough = Measured.thorough(truth);
      cases.add(new Case(name + ", thoroughly", thorough, sketch));
      if (!sparing.equals(thorough)) {
        cases.add(new Case(name + ", sparingly", sparing, sketch));
      }
    }
    return cases;
  }

  /** Counts by how sure they were, and how many of them were right. */
  private static final class Tally {
    private long surveys;
    private long lost;
    private final long[] made = new long[2];
    private final long[] right = new long[2];

    synchronized void survey(boolean settled) {
      surveys++;
      lost += settled ? 0 : 1;
    }

    synchronized void count(double sureness, boolean isRight) {
      int i = sureness >= SURE ? 0 : 1;
      made[i]++;
      right[i] += isRight ? 1 : 0;
    }

    void add(Tally other) {
      surveys += other.surveys;
      lost += other.lost;
      for (int i = 0; i < made.length; i++) {
        made[i] += other.made[i];
        right[i] += other.right[i];
      }
    }

    void print(String title) {
      long all = made[0] + made[1];
      System.out.printf(ROW, title, surveys, lost, all, percent(right[0] + right[1], all));
      System.out.printf(
          SURENESS, made[0], percent(right[0], made[0]), made[1], percent(right[1], made[1]));
    }

    private static String percent(long some, long all) {
      return all == 0 ? "-" : "%.2f %%".formatted(100.0 * some / all);
    }
  }

  private static long rightLinks(Drive truth, SureCount count) {
    return Solver.of(truth)
        .solve(State.reference())
        .chain(count.strand().chain())
        .orElseThrow()
        .strands()
        .stream()
        .filter(s -> s.from().equals(count.strand().from()))
        .mapToLong(Strand::links)
        .findFirst()
        .orElseThrow();
  }

  private static void measure(Case c, int times, double blunders, Tally tally, long seed) {
    Adjustment exact = Adjustment.of(c.sketch(), Survey.of(c.measured().exact())).orElseThrow();
    List<Long> right =
        exact.counts().stream().map(k -> rightLinks(c.measured().truth(), k)).toList();
    IntStream.range(0, times)
        .parallel()
        .forEach(
            i -> {
              UniformRandomProvider random = Measured.seeded(seed * 1_000_003 + i);
              Optional<Adjustment> a =
                  Adjustment.of(c.sketch(), Survey.of(blundered(c.measured(), random, blunders)));
              tally.survey(a.isPresent());
              if (a.isEmpty()) {
                return;
              }
              for (int k = 0; k < right.size(); k++) {
                SureCount count = a.get().counts().get(k);
                if (count.strand().taut()) {
                  tally.count(count.probability(), count.links() == right.get(k));
                }
              }
            });
  }

  private static List<Measurement> blundered(
      Measured measured, UniformRandomProvider random, double share) {
    var normal = ZigguratSampler.NormalizedGaussian.of(random);
    return measured.drawn(random).stream()
        .map(
            m ->
                random.nextDouble() < share ? Measured.moved(m, BLUNDER_SIZE * normal.sample()) : m)
        .toList();
  }

  private static String blunders(Case c, int times, long[] sums) {
    Adjustment exact = Adjustment.of(c.sketch(), Survey.of(c.measured().exact())).orElseThrow();
    List<Integer> allowed =
        IntStream.range(0, c.measured().exact().size())
            .filter(i -> allowed(exact, i))
            .boxed()
            .toList();
    LongAdder here = new LongAdder();
    if (!allowed.isEmpty()) {
      IntStream.range(0, times)
          .parallel()
          .forEach(
              i -> {
                UniformRandomProvider random = Measured.seeded(3_000_017L + i);
                int place = allowed.get(i % allowed.size());
                List<Measurement> read = new ArrayList<>(c.measured().drawn(random));
                double by = random.nextBoolean() ? BLUNDER_MM : -BLUNDER_MM;
                read.set(place, Measured.moved(read.get(place), by));
                boolean found =
                    Adjustment.of(c.sketch(), Survey.of(read))
                        .flatMap(Adjustment::suspect)
                        .filter(s -> s.place() == place)
                        .isPresent();
                here.add(found ? 1 : 0);
              });
    }
    long planted = allowed.isEmpty() ? 0 : times;
    sums[0] += here.sum();
    sums[1] += planted;
    String where =
        "%d of %d lengths allow it"
            .formatted(
                allowed.size(), c.measured().exact().stream().filter(m -> !m.angle()).count());
    return named(c.name(), where, here.sum(), planted);
  }

  /** A length whose blunder would be found, and told from every other. */
  private static boolean allowed(Adjustment a, int i) {
    Measurement m = a.measurements().get(i).measurement();
    if (m.angle() || a.measurements().get(i).smallestFound() > BLUNDER_MM) {
      return false;
    }
    double r = a.fit().redundancy()[i];
    double expected = BLUNDER_MM * Math.sqrt(r) / m.reading().sigma();
    for (int j = 0; j < a.measurements().size(); j++) {
      if (j != i
          && !a.measurements().get(j).unchecked()
          && Detection.toldApart(expected, a.fit().correlation(i, j)) < Detection.POWER) {
        return false;
      }
    }
    return true;
  }
}
