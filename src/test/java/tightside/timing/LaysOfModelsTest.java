package tightside.timing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import tightside.drive.Chain;
import tightside.drive.Drive;
import tightside.drive.Sprocket;
import tightside.files.ModelReader;
import tightside.geometry.Rotation;
import tightside.readings.Bench;
import tightside.readings.LayRow;
import tightside.readings.LayTable;
import tightside.readings.Situation;

/**
 * The table of wrong lays of every demo drive, row by row, against what pins laid one by one need:
 * which lays there are, which are possible with every shaft locked, and what the others lack where.
 */
class LaysOfModelsTest {

  /** Pins stand on the corners of polygons, not on circles: a few hundredths of a millimetre. */
  private static final double POLYGON_MM = 0.03;

  private static final int REACH = 3;

  /** A table, and what each of its strands needs by the pins. */
  private record Laid(Drive drive, Chain chain, LayTable table, List<Double> neededMm) {

    static Laid of(Drive drive, Chain chain, LockingPlay play) {
      Situation right =
          Situation.of(Solver.of(drive), State.reference(), Bench.coverOff().with(play));
      LayTable table = LayTable.of(right, chain).orElseThrow();
      return new Laid(drive, chain, table, needed(drive, chain, table.hold()));
    }

    private static List<Double> needed(Drive drive, Chain chain, HoldBack hold) {
      return hold.strands().stream()
          .map(LooseStrand::strand)
          .map(s -> new BruteStrand(drive, chain, s.fromPlace(), s.toPlace(), 0, passes(chain, s)))
          .map(brute -> brute.pitches() * chain.pitchMm())
          .toList();
    }

    /** A sprocket without a mark holds pins anywhere: then points stand all round everywhere. */
    private static boolean passes(Chain chain, Strand strand) {
      int size = chain.route().size();
      int places = Math.floorMod(strand.toPlace() - strand.fromPlace(), size);
      return IntStream.range(1, places)
          .mapToObj(i -> chain.route().get((strand.fromPlace() + i) % size))
          .anyMatch(Sprocket.class::isInstance);
    }

    /** Links in every strand once its ends sit so many teeth ahead. */
    List<Long> links(List<Integer> ahead) {
      List<LooseStrand> strands = table.hold().strands();
      return IntStream.range(0, strands.size())
          .mapToObj(
              i ->
                  strands.get(i).strand().links()
                      + ahead.get((i + 1) % strands.size())
                      - ahead.get(i))
          .toList();
    }

    List<Long> links(WrongLay lay) {
      return links(
          table.hold().strands().stream()
              .map(s -> lay.lay().teeth().getOrDefault(s.strand().from(), 0))
              .toList());
    }

    List<Double> lackMm(List<Long> links) {
      return IntStream.range(0, links.size())
          .mapToObj(i -> neededMm.get(i) - chain.pitchMm() * links.get(i))
          .toList();
    }
  }

  private static List<Drive> drives() throws IOException {
    try (Stream<Path> folder = Files.list(Path.of("models"))) {
      return folder
          .filter(f -> f.toString().endsWith(".yaml"))
          .sorted()
          .map(f -> ModelReader.read(f).model().orElseThrow().adjusted().drive())
          .filter(d -> !d.countedOnly())
          .map(d -> d.rotation() == Rotation.CLOCKWISE ? d : Redrawn.mirror().drive(d))
          .toList();
    }
  }

  @TestFactory
  Stream<DynamicTest> everyRowAgreesWithThePins() throws IOException {
    List<DynamicTest> tests = new ArrayList<>();
    for (Drive drive : drives()) {
      for (Chain chain : drive.chains()) {
        for (LockingPlay play : List.of(LockingPlay.unknown(), LockingPlay.of(6.5))) {
          String name = drive.name() + ", " + chain.name() + ", play " + play.camshaftDegrees();
          tests.add(DynamicTest.dynamicTest(name, () -> agrees(Laid.of(drive, chain, play))));
        }
      }
    }
    assertThat(tests).hasSizeGreaterThanOrEqualTo(14);
    return tests.stream();
  }

  private static void agrees(Laid laid) {
    assertThat(laid.table().rows().stream().map(r -> laid.links(r.lay())).map(Object::toString))
        .doesNotHaveDuplicates()
        .containsExactlyInAnyOrderElementsOf(everyLay(laid));
    double play = playMm(laid);
    for (LayRow row : laid.table().rows()) {
      List<Double> lack = laid.lackMm(laid.links(row.lay()));
      double worst = lack.stream().max(Comparator.naturalOrder()).orElseThrow();
      if (Math.abs(worst - play) > POLYGON_MM) {
        agrees(laid, row, worst <= play, lack, worst);
      }
    }
  }

  private static void agrees(Laid laid, LayRow row, boolean fits, List<Double> lack, double worst) {
    assertThat(row.lay().possible()).as(row.lay().toString()).isEqualTo(fits);
    assertThat(row.withDriverStaying().possible()).isEqualTo(fits);
    assertThat(row.reason().possibleWhileLocked()).isEqualTo(fits);
    if (!fits) {
      assertThat(row.lay().missingMm()).isCloseTo(worst, within(POLYGON_MM));
      int named =
          laid.table().hold().strands().stream()
              .map(LooseStrand::strand)
              .toList()
              .indexOf(row.lay().lacking().orElseThrow());
      assertThat(lack.get(named)).isCloseTo(worst, within(POLYGON_MM));
    }
  }

  /** The links of every lay with one or two sprockets off, each once, and not the right one. */
  private static Set<String> everyLay(Laid laid) {
    int sprockets = laid.table().hold().strands().size();
    List<List<Integer>> shifts = List.of(List.of());
    for (int i = 0; i < sprockets; i++) {
      shifts =
          shifts.stream()
              .flatMap(s -> IntStream.rangeClosed(-REACH, REACH).mapToObj(k -> longer(s, k)))
              .toList();
    }
    Set<String> lays =
        shifts.stream()
            .filter(s -> s.stream().filter(k -> k != 0).count() <= 2)
            .map(s -> laid.links(s).toString())
            .collect(Collectors.toCollection(TreeSet::new));
    lays.remove(laid.links(IntStream.range(0, sprockets).mapToObj(i -> 0).toList()).toString());
    return lays;
  }

  private static List<Integer> longer(List<Integer> list, int last) {
    List<Integer> longer = new ArrayList<>(list);
    longer.add(last);
    return longer;
  }

  /**
   * Both ends of a strand give the play of a camshaft, in mm of the camshaft's own pitch line where
   * there is one on the chain, else by the gears from there.
   */
  private static double playMm(Laid laid) {
    if (laid.table().hold().strandPlayMm() == LockingPlay.UNKNOWN_STRAND_MM) {
      return 0.05;
    }
    return 2 * 6.5 / 360 * camshaftTeeth(laid) * laid.chain().pitchMm();
  }

  /** Teeth that a sprocket on this chain would have if it turned as slowly as a camshaft. */
  private static double camshaftTeeth(Laid laid) {
    boolean fromIdler = !laid.chain().driver().shaft().equals(laid.drive().crankshaft().name());
    double idlerTurnsPerCrankTurn = 18.0 / 24;
    double driverTurns = fromIdler ? idlerTurnsPerCrankTurn : 1;
    return 2 * driverTurns * laid.chain().driver().teeth();
  }
}
