package tightside.timing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tightside.drive.Chain;
import tightside.drive.Drive;

/**
 * Wrong lays against a search that lays the chain pin by pin: every sprocket is shifted by -3 to +3
 * gaps, whole links lie between the marked ones, and a lay counts where each strand has at least
 * the length that its pins need.
 */
class WrongLaySearchTest {

  /** Pins stand on the corners of polygons, not on circles: a few hundredths of a millimetre. */
  private static final double POLYGON_MM = 0.03;

  private static final int REACH = 3;

  /** A loose drive and the play of its tools, by seed. */
  record Case(int seed, Drive drive, LockingPlay play) {
    @Override
    public String toString() {
      return "seed " + seed + ", play " + play.camshaftDegrees();
    }
  }

  static List<Case> cases() {
    return IntStream.range(0, 40)
        .mapToObj(
            seed -> {
              Random random = new Random(seed);
              Drive drive = LooseDrives.random(random, random.nextInt(4));
              LockingPlay play =
                  seed % 2 == 0 ? LockingPlay.unknown() : LockingPlay.of(7 * random.nextDouble());
              return new Case(seed, drive, play);
            })
        .toList();
  }

  private static List<Double> neededMm(Drive drive, List<LooseStrand> strands) {
    Chain chain = Drives.chain(drive);
    return strands.stream()
        .map(LooseStrand::strand)
        .map(s -> new BruteStrand(drive, chain, s.fromPlace(), s.toPlace(), 0, false))
        .map(brute -> brute.pitches() * chain.pitchMm())
        .toList();
  }

  /** Play in mm of one strand, by the teeth of a camshaft rather than of the driver. */
  private static double playMm(Case c) {
    int camTeeth = 40;
    return c.play().camshaftDegrees().isPresent()
        ? 2 * c.play().camshaftDegrees().getAsDouble() / 360 * camTeeth * 8
        : 0.05;
  }

  private static HoldBack hold(Case c) {
    Chain chain = Drives.chain(c.drive());
    return (HoldBack) HeldBack.of(c.drive(), chain, OptionalDouble.empty(), 0, c.play());
  }

  @ParameterizedTest
  @MethodSource("cases")
  void theSameLaysFit(Case c) {
    HoldBack hold = hold(c);
    List<Double> needed = neededMm(c.drive(), hold.strands());
    List<Long> links = hold.strands().stream().map(s -> s.strand().links()).toList();
    Set<String> fitting = new TreeSet<>();
    Set<String> doubtful = new TreeSet<>();
    for (int[] shift : shifts()) {
      double worst = Double.NEGATIVE_INFINITY;
      List<Long> laid = new ArrayList<>();
      for (int i = 0; i < 3; i++) {
        laid.add(links.get(i) + shift[(i + 1) % 3] - shift[i]);
        worst = Math.max(worst, needed.get(i) - 8 * laid.get(i));
      }
      if (Math.abs(worst - playMm(c)) < POLYGON_MM) {
        doubtful.add(laid.toString());
      } else if (worst < playMm(c)) {
        fitting.add(laid.toString());
      }
    }
    Set<String> found = new TreeSet<>();
    for (WrongLay lay : hold.wrongLays()) {
      if (lay.possible()) {
        found.add(hold.strands().stream().map(s -> laid(s.strand(), lay)).toList().toString());
      }
    }
    found.removeAll(doubtful);
    assertThat(found).isEqualTo(fitting);
  }

  /** Links in a strand: one more for each tooth that its end is ahead, one less for its start. */
  private static long laid(Strand s, WrongLay lay) {
    return s.links()
        + lay.lay().teeth().getOrDefault(s.to(), 0)
        - lay.lay().teeth().getOrDefault(s.from(), 0);
  }

  /** At most two sprockets off, not all alike. */
  private static List<int[]> shifts() {
    List<int[]> shifts = new ArrayList<>();
    for (int a = -REACH; a <= REACH; a++) {
      for (int b = -REACH; b <= REACH; b++) {
        for (int c = -REACH; c <= REACH; c++) {
          int off = (a == 0 ? 0 : 1) + (b == 0 ? 0 : 1) + (c == 0 ? 0 : 1);
          if (off == 1 || off == 2) {
            shifts.add(new int[] {a, b, c});
          }
        }
      }
    }
    return shifts;
  }

  @ParameterizedTest
  @MethodSource("cases")
  void whatIsMissingIsWhatThePinsNeed(Case c) {
    HoldBack hold = hold(c);
    List<Double> needed = neededMm(c.drive(), hold.strands());
    for (WrongLay lay : hold.reseats()) {
      double worst = Double.NEGATIVE_INFINITY;
      for (int i = 0; i < 3; i++) {
        Strand s = hold.strands().get(i).strand();
        worst = Math.max(worst, needed.get(i) - 8 * laid(s, lay));
      }
      if (!lay.possible()) {
        assertThat(lay.missingMm()).as(lay.toString()).isCloseTo(worst, within(POLYGON_MM));
      }
    }
  }
}
