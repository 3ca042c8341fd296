package tightside.timing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import tightside.drive.Chain;
import tightside.drive.Drive;
import tightside.drive.Joint;
import tightside.drive.RouteEntry;
import tightside.drive.Seen;
import tightside.drive.Sprocket;
import tightside.timing.CountVerdict.Fits;
import tightside.timing.CountVerdict.Misplaced;
import tightside.timing.CountVerdict.NothingCounted;
import tightside.timing.CountVerdict.SumWrong;
import tightside.timing.CountVerdict.TooFar;
import tightside.timing.Lay.Moved;

/** The answered example has 51, 17 and 50 links; one tooth on a cam is 10 of its degrees. */
class CountJudgeTest {

  private final CountJudge judge = CountJudge.of(Solver.of(Drives.answered()), "main");

  private static Map<String, Long> counts(long fromCrank, long fromIntake, long fromExhaust) {
    return Map.of("crank", fromCrank, "intake", fromIntake, "exhaust", fromExhaust);
  }

  private CountVerdict judge(Map<String, Long> counts) {
    return judge.judge(counts, Seen.COVER_OFF);
  }

  @Test
  void answeredCounts_fit_nothingOpen() {
    CountVerdict verdict = judge(counts(51, 17, 50));
    assertThat(verdict).isInstanceOf(Fits.class);
    assertThat(verdict.unproved().nothing()).isTrue();
  }

  @Test
  void oneLinkMoreBeforeTheExhaust_oneAfterItLess_exhaustOneToothAhead() {
    Misplaced verdict = (Misplaced) judge(counts(51, 18, 49));
    assertThat(verdict.simplest()).hasSize(1);
    Lay lay = verdict.simplest().get(0);
    assertThat(lay.moved()).containsExactly(new Moved("exhaust", 1));
    assertThat(lay.off()).containsExactly(new ShaftTiming("exhaust", 10, 20));
  }

  @Test
  void intakeTwoTeethBehind() {
    Lay lay = ((Misplaced) judge(counts(49, 19, 50))).simplest().get(0);
    assertThat(lay.moved()).containsExactly(new Moved("intake", -2));
    assertThat(lay.off()).containsExactly(new ShaftTiming("intake", -20, -40));
  }

  @Test
  void crankOneToothAhead_namedInsteadOfBothCamsBehind() {
    Lay lay = ((Misplaced) judge(counts(50, 17, 51))).simplest().get(0);
    assertThat(lay.moved()).containsExactly(new Moved("crank", 1));
    assertThat(lay.off())
        .containsExactly(new ShaftTiming("intake", -10, -20), new ShaftTiming("exhaust", -10, -20));
  }

  /** Common practice, no source: between the cams all looks right if both were moved together. */
  @Test
  void coverOn_bothCamsMovedTogetherLookRight() {
    CountJudge fromAbove = CountJudge.of(Solver.of(intakeToExhaustSeen(Seen.COVER_ON)), "main");
    CountVerdict verdict = fromAbove.judge(counts(44, 17, 44), Seen.COVER_ON);
    assertThat(verdict).isInstanceOf(Fits.class);
    Unproved unproved = verdict.unproved();
    assertThat(unproved.uncounted().stream().map(Strand::from)).containsExactly("crank", "exhaust");
    assertThat(unproved.together()).containsExactly(List.of("intake", "exhaust"));
    assertThat(unproved.lays().stream().map(Lay::moved))
        .containsExactly(
            List.of(new Moved("intake", -1), new Moved("exhaust", -1)),
            List.of(new Moved("intake", 1), new Moved("exhaust", 1)));
    assertThat(unproved.lays().get(0).off())
        .containsExactly(new ShaftTiming("intake", -10, -20), new ShaftTiming("exhaust", -10, -20));
  }

  @Test
  void coverOn_oneLinkTooManyBetweenTheCams_eitherCamIsNamed() {
    CountJudge fromAbove = CountJudge.of(Solver.of(intakeToExhaustSeen(Seen.COVER_ON)), "main");
    Misplaced verdict = (Misplaced) fromAbove.judge(Map.of("intake", 18L), Seen.COVER_ON);
    assertThat(verdict.simplest().stream().map(Lay::moved))
        .containsExactlyInAnyOrder(
            List.of(new Moved("intake", -1)), List.of(new Moved("exhaust", 1)));
  }

  @Test
  void oneStrandLeftOut_theChainsLinksProveIt() {
    CountVerdict verdict = judge(Map.of("crank", 51L, "intake", 17L));
    assertThat(verdict).isInstanceOf(Fits.class);
    assertThat(verdict.unproved().together()).isEmpty();
    assertThat(verdict.unproved().uncounted()).hasSize(1);
  }

  @Test
  void strandNeverSeen_countLeftOut() {
    CountJudge blind = CountJudge.of(Solver.of(intakeToExhaustSeen(Seen.NEVER)), "main");
    CountVerdict verdict = blind.judge(Map.of("intake", 30L), Seen.BORESCOPE);
    assertThat(verdict).isInstanceOf(NothingCounted.class);
    assertThat(verdict.unproved().together())
        .containsExactly(List.of("intake"), List.of("exhaust"));
  }

  @Test
  void borescopeSeesWhatTheOpenCoverShows() {
    Strand strand = judge.strands().get(0);
    assertThat(CountJudge.countable(strand, Seen.COVER_ON)).isFalse();
    assertThat(CountJudge.countable(strand, Seen.COVER_OFF)).isTrue();
    assertThat(CountJudge.countable(strand, Seen.BORESCOPE)).isTrue();
  }

  @Test
  void oneLinkTooMany_theStrandThatPutsAllRightFirst_thenTheSlackSide() {
    SumWrong verdict = (SumWrong) judge(counts(51, 18, 50));
    assertThat(verdict.tooMany()).isEqualTo(1);
    Recount first = verdict.again().get(0);
    assertThat(first.strand().from()).isEqualTo("intake");
    assertThat(first.wouldBe()).isEqualTo(17);
    assertThat(first.otherwise().moved()).isEmpty();
    assertThat(verdict.again().stream().map(r -> r.strand().from()))
        .containsExactly("intake", "crank", "exhaust");
    assertThat(verdict.again().get(1).strand().taut()).isFalse();
  }

  @Test
  void oneLinkTooFew_theStrandThatLeavesTheLeastWrongFirst() {
    SumWrong verdict = (SumWrong) judge(counts(51, 18, 48));
    assertThat(verdict.tooMany()).isEqualTo(-1);
    Recount first = verdict.again().get(0);
    assertThat(first.strand().from()).isEqualTo("exhaust");
    assertThat(first.wouldBe()).isEqualTo(49);
    assertThat(first.otherwise().moved()).containsExactly(new Moved("exhaust", 1));
  }

  @Test
  void noSprocketIsThatFarOff_countAgain() {
    TooFar verdict = (TooFar) judge(Map.of("crank", 15L, "intake", 17L));
    assertThat(verdict.again().get(0).strand().from()).isEqualTo("crank");
    assertThat(verdict.ifRight().get(0).mostTeeth()).isEqualTo(36);
  }

  @Test
  void frictionJoint_fixesNoAngle() {
    Drive drive =
        changed("exhaust", s -> with(s, s.mark().isPresent(), Joint.FRICTION, Seen.COVER_OFF));
    CountVerdict verdict =
        CountJudge.of(Solver.of(drive), "main").judge(counts(51, 17, 50), Seen.COVER_OFF);
    assertThat(verdict.unproved().heldByClamp()).containsExactly("exhaust");
    assertThat(verdict.unproved().nothing()).isFalse();
  }

  @Test
  void driverWithoutMark_allCamsMayHaveMovedTogether() {
    Drive drive = changed("crank", s -> s.withMark(Optional.empty()));
    CountVerdict verdict =
        CountJudge.of(Solver.of(drive), "main")
            .judge(Map.of("intake", 17L, "exhaust", 101L), Seen.COVER_OFF);
    assertThat(verdict).isInstanceOf(Fits.class);
    assertThat(verdict.unproved().together()).containsExactly(List.of("intake", "exhaust"));
  }

  @Test
  void nonsense_refused() {
    assertThatIllegalArgumentException().isThrownBy(() -> judge(Map.of("pump", 1L)));
    assertThatIllegalArgumentException().isThrownBy(() -> judge(Map.of("crank", 0L)));
    assertThatIllegalArgumentException().isThrownBy(() -> judge(Map.of("crank", 119L)));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> CountJudge.of(Solver.of(Drives.answered()), "oil pump"));
  }

  private static Drive intakeToExhaustSeen(Seen seen) {
    return changed("intake", s -> with(s, true, Joint.DOWEL, seen));
  }

  private static Sprocket with(Sprocket s, boolean marked, Joint joint, Seen strandSeen) {
    return new Sprocket(
        s.shaft(),
        s.teeth(),
        s.mark().filter(m -> marked),
        s.contact(),
        joint,
        s.seen(),
        strandSeen);
  }

  private static Drive changed(String shaft, UnaryOperator<Sprocket> change) {
    Drive drive = Drives.answered();
    Chain chain = Drives.chain(drive);
    List<RouteEntry> route =
        chain.route().stream()
            .map(e -> e instanceof Sprocket s && s.shaft().equals(shaft) ? change.apply(s) : e)
            .toList();
    return new Drive(
        drive.name(),
        drive.about(),
        drive.rotation(),
        drive.shafts(),
        List.of(chain.withRoute(route)));
  }
}
