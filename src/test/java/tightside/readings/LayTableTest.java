package tightside.readings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;
import tightside.drive.Drive;
import tightside.drive.Seen;
import tightside.timing.Drives;
import tightside.timing.HoldBack;
import tightside.timing.LockingPlay;
import tightside.timing.LooseDrives;
import tightside.timing.Reseating;
import tightside.timing.Solver;
import tightside.timing.State;

class LayTableTest {

  /** Ten millimetres of slack when pushed back: more than a pitch. */
  private static Drive loose() {
    Drive shoe = LooseDrives.withShoe();
    return LooseDrives.withTensioner(Drives.chain(shoe).route().get(1), 119);
  }

  private static LayTable table(Drive drive, Bench bench) {
    Situation right = Situation.of(Solver.of(drive), State.reference(), bench);
    return LayTable.of(right, Drives.chain(drive)).orElseThrow();
  }

  private static LayRow row(LayTable table, Reseating reseating) {
    return table.rows().stream()
        .filter(r -> r.lay().lay().equals(reseating))
        .findFirst()
        .orElseThrow();
  }

  private static final Reseating INTAKE_BEHIND = Reseating.of("main", "intake", -1);
  private static final Reseating CRANK_AHEAD = Reseating.of("main", "crank", 1);

  @Test
  void theAnsweredExampleHasNoWrongLayWithItsShaftsLocked() {
    LayTable table = table(Drives.answered(), Bench.coverOff());
    assertThat(table.rows()).noneMatch(r -> r.reason().possibleWhileLocked());
    assertThat(table.hiddenUntilTurned()).isEmpty();
    assertThat(table.rows().get(0).reason()).isEqualTo(LayReason.TURN_IS_TOO_LARGE);
  }

  @Test
  void whatIsPossibleStandsOnTop() {
    LayTable table = table(loose(), Bench.coverOff());
    assertThat(table.rows().subList(0, 2).stream().map(r -> r.lay().lay()))
        .containsExactlyInAnyOrder(INTAKE_BEHIND, CRANK_AHEAD);
    assertThat(table.rows()).isSortedAccordingTo(Comparator.comparing(LayRow::reason));
    assertThat(table.rows().get(2).reason().possibleWhileLocked()).isFalse();
  }

  /** A spare pitch on a 104 mm run: a bow of 18 mm by hand, and less time than counting. */
  @Test
  void withTheCoverOffAThumbShowsTheSparePitchFirst() {
    LayRow row = row(table(loose(), Bench.coverOff()), INTAKE_BEHIND);
    assertThat(row.reason()).isEqualTo(LayReason.SHOWS_WHILE_LOCKED);
    assertThat(row.soonest().orElseThrow().check())
        .isEqualTo(new SagByThumb("main", "intake", "exhaust"));
    StrandSag sag = row.tightStrands().get(0);
    assertThat(sag.spareMm()).isCloseTo(8, within(1e-9));
    assertThat(sag.rightMm().orElseThrow()).isLessThan(0.1);
    assertThat(sag.wrongMm().orElseThrow()).isCloseTo(17.87, within(0.01));
    assertThat(row.telling().stream().map(t -> t.check().kind()))
        .contains(Check.Kind.PLUNGER, Check.Kind.COUNT, Check.Kind.TWO_TURNS)
        .doesNotContain(Check.Kind.DOWEL, Check.Kind.COMPRESSION);
  }

  @Test
  void withTheCoverOnItHidesUntilTheEngineIsTurned() {
    LayTable table = table(loose(), Bench.coverOff().seeing(Set.of(Seen.COVER_ON)));
    assertThat(table.hiddenUntilTurned().stream().map(r -> r.lay().lay()))
        .containsExactlyInAnyOrder(INTAKE_BEHIND, CRANK_AHEAD);
    LayRow row = row(table, INTAKE_BEHIND);
    assertThat(row.reason()).isEqualTo(LayReason.SHOWS_ONLY_ONCE_TURNED);
    assertThat(row.soonest())
        .contains(new Telling(new LockingToolGoesIn("intake"), Moment.AFTER_TURNING, 3));
    assertThat(row.off()).hasSize(1);
    assertThat(row.worstCrankDegrees()).isEqualTo(20);
  }

  @Test
  void withoutAccessNothingShowsIt() {
    LayTable table = table(loose(), Bench.coverOff().seeing(Set.of()));
    assertThat(table.neverShown()).hasSameSizeAs(table.rows());
    assertThat(row(table, INTAKE_BEHIND).reason()).isEqualTo(LayReason.NOTHING_SHOWS_IT);
  }

  /** Half a tooth of play hides a camshaft's error from its own tool, but not from a mark. */
  @Test
  void toolsWithMuchPlayTellLess() {
    Bench sloppy = Bench.coverOff().with(LockingPlay.of(11));
    LayRow row = row(table(loose(), sloppy), INTAKE_BEHIND);
    assertThat(row.telling().stream().map(t -> t.check().kind()))
        .doesNotContain(Check.Kind.LOCKING_TOOL)
        .contains(Check.Kind.TWO_TURNS);
  }

  @Test
  void compressionTellsWhereALawIsKnown() {
    Bench bench =
        Bench.coverOff()
            .seeing(Set.of(Seen.COVER_ON))
            .with((Map<String, Double> crank) -> 12 + 0.1 * crank.get("intake"));
    Drive drive = loose();
    LayTable table = table(drive, bench);
    List<Check.Kind> kinds =
        row(table, INTAKE_BEHIND).telling().stream().map(t -> t.check().kind()).toList();
    assertThat(kinds).endsWith(Check.Kind.COMPRESSION);
    LayRow exhaust = row(table, Reseating.of("main", "exhaust", 1));
    assertThat(exhaust.telling().stream().map(t -> t.check().kind()))
        .doesNotContain(Check.Kind.COMPRESSION);
  }

  @Test
  void aTurnThatSlackExcusesIsMoreDangerousThanALargeOne() {
    LayTable table = table(loose(), Bench.coverOff());
    LayRow excused = row(table, Reseating.of("main", "intake", 1));
    assertThat(excused.reason()).isEqualTo(LayReason.TURN_LOOKS_LIKE_SLACK);
    LayRow large = row(table, Reseating.of("main", "intake", -3));
    assertThat(large.reason()).isEqualTo(LayReason.TURN_IS_TOO_LARGE);
    assertThat(large.soonest().orElseThrow().check()).isEqualTo(new DowelMeets("main", "intake"));
  }

  @Test
  void aWornChainIsNoMistake() {
    Drive drive = Drives.answered();
    State worn = State.reference().stretched("main", 0.5);
    Situation right = Situation.of(Solver.of(drive), worn, Bench.coverOff());
    LayTable table = LayTable.of(right, Drives.chain(drive)).orElseThrow();
    LayRow row = row(table, CRANK_AHEAD);
    assertThat(row.tightStrands().get(0).rightMm().orElseThrow()).isGreaterThan(4);
    assertThat(row(table, Reseating.of("main", "exhaust", -1)).off()).hasSize(1);
  }

  /** The driving sprocket stays on its shaft: a jump at the crank asks both camshafts to turn. */
  @Test
  void aJumpAtTheCrankIsPaidForByTheCamshafts() {
    Drive drive = Drives.answered();
    Situation jumped =
        Situation.of(Solver.of(drive), State.reference(), Bench.coverOff()).reseated(CRANK_AHEAD);
    for (String shaft : List.of("intake", "exhaust")) {
      Shown shown =
          new DowelMeets("main", shaft).shows(jumped, Moment.BEFORE_TURNING).orElseThrow();
      assertThat(shown.value()).isCloseTo(6.91, within(0.005));
    }
    Shown crank = new LockingToolGoesIn("crank").shows(jumped, Moment.BEFORE_TURNING).orElseThrow();
    assertThat(crank.value()).isZero();
  }

  @Test
  void jointsHaveMistakesOfTheirOwn() {
    Drive drive = Drives.answered();
    HoldBack hold = table(drive, Bench.coverOff()).hold();
    List<JointMistake.Phased> phasers =
        List.of(new JointMistake.Phased("intake", OptionalDouble.of(50)));
    assertThat(JointMistake.on(hold, phasers))
        .containsExactly(new JointMistake.PhaserNotAtRest("intake", OptionalDouble.of(25)));
    HoldBack clamped = table(Clamped.exhaustOf(drive), Bench.coverOff()).hold();
    JointMistake.TightenedSlack slip =
        (JointMistake.TightenedSlack) JointMistake.on(clamped, List.of()).get(0);
    assertThat(slip.shaft()).isEqualTo("exhaust");
    assertThat(slip.degreesPerMm()).isCloseTo(1.25, within(1e-9));
    assertThat(slip.mostDegrees()).isCloseTo(3.09, within(0.01));
  }

  @Test
  void aClampedSprocketHasNoDowelToMeet() {
    Drive drive = Clamped.exhaustOf(Drives.answered());
    Situation right = Situation.of(Solver.of(drive), State.reference(), Bench.coverOff());
    assertThat(new DowelMeets("main", "exhaust").access(right)).isEqualTo(Seen.NEVER);
    assertThat(new DowelMeets("main", "intake").access(right)).isEqualTo(Seen.COVER_OFF);
  }

  @Test
  void minutesAreAPersonsOwn() {
    CheckMinutes slowThumb = CheckMinutes.fromMemory().with(Check.Kind.THUMB, 30);
    Bench bench =
        new Bench(Bench.coverOff().access(), LockingPlay.unknown(), slowThumb, Optional.empty());
    assertThat(row(table(loose(), bench), INTAKE_BEHIND).soonest().orElseThrow().check())
        .isEqualTo(new PlungerStands("main"));
  }
}
