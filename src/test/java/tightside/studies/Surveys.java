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
  private static final double[] CLAIMS = {0.99, 0.95, 0.8, 0};
  private static final double BLUNDER_SHARE = 0.005;
  private static final double BLUNDER_SIZE = 10;

  private Surveys() {}

  /** A drive measured in one way. */
  private record Case(String name, Measured measured, Drive sketch) {}

  /**
   * @param words how many times each drive is measured; 1000 if nothing is said
   */
  public static void main(String[] words) {
    int times = words.length > 0 ? Integer.parseInt(words[0]) : 1000;
    Tally clean = new Tally();
    Tally dirty = new Tally();
    LongAdder named = new LongAdder();
    LongAdder planted = new LongAdder();
    for (Case c : cases()) {
      Tally here = new Tally();
      measure(c, times, 0, here, 1);
      here.print(c.name() + ", errors as stated");
      clean.add(here);
      Tally worse = new Tally();
      measure(c, times, BLUNDER_SHARE, worse, 2);
      worse.print(c.name() + ", and one reading in 200 a blunder");
      dirty.add(worse);
      blunders(c, times / 2, named, planted);
    }
    clean.print("all together, errors as stated");
    dirty.print("all together, and one reading in 200 a blunder");
    System.out.printf(
        "blunders of %.0f mm named: %d of %d (%.1f %%)%n",
        BLUNDER_MM, named.sum(), planted.sum(), 100.0 * named.sum() / planted.sum());
  }

  private static List<Case> cases() {
    List<Case> cases = new ArrayList<>();
    for (String name :
        List.of("two-cams-arm", "one-cam-no-tensioner", "counterclockwise-balancers")) {
      Drive truth = MeasuredDrives.model(name);
      Drive sketch = MeasuredDrives.sketched(truth, 2, 2);
      cases.add(new Case(name + ", sparingly", Measured.sparing(truth), sketch));
      cases.add(new Case(name + ", thoroughly", Measured.thorough(truth), sketch));
    }
    return cases;
  }

  /** Counts by how sure they were, and how many of them were right. */
  private static final class Tally {
    private final long[] made = new long[CLAIMS.length];
    private final long[] right = new long[CLAIMS.length];

    synchronized void count(double sureness, boolean isRight) {
      int i = 0;
      while (sureness < CLAIMS[i]) {
        i++;
      }
      made[i]++;
      right[i] += isRight ? 1 : 0;
    }

    void add(Tally other) {
      for (int i = 0; i < made.length; i++) {
        made[i] += other.made[i];
        right[i] += other.right[i];
      }
    }

    void print(String title) {
      long all = LongStreams.sum(made);
      System.out.printf(
          "%s: %.2f %% of %d counts right%n", title, 100.0 * LongStreams.sum(right) / all, all);
      for (int i = 0; i < made.length; i++) {
        if (made[i] > 0) {
          System.out.printf(
              "    %s sure: %d, of them right %.2f %%%n",
              i == 0
                  ? "99 % or more"
                  : "%.0f to %.0f %%".formatted(100 * CLAIMS[i], 100 * CLAIMS[i - 1]),
              made[i],
              100.0 * right[i] / made[i]);
        }
      }
    }
  }

  /** Sums. */
  private static final class LongStreams {
    static long sum(long[] some) {
      return java.util.Arrays.stream(some).sum();
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

  private static void blunders(Case c, int times, LongAdder named, LongAdder planted) {
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
      named.add(here.sum());
      planted.add(times);
    }
    System.out.printf(
        "    of %d measurements %d allow a blunder of %.0f mm to be named; named %d of %d%n",
        c.measured().exact().size(),
        allowed.size(),
        BLUNDER_MM,
        here.sum(),
        allowed.isEmpty() ? 0 : times);
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
