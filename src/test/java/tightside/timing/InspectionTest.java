package tightside.timing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import tightside.drive.Chain;
import tightside.drive.Drive;
import tightside.drive.Finding;
import tightside.drive.Finding.Id;
import tightside.drive.RouteEntry;
import tightside.drive.Sprocket;
import tightside.geometry.Bearing;

/** What is found out about chains that do not fit, or fit badly. */
class InspectionTest {

  /** The answers of the model format's description are printed to two decimals. */
  private static final double PRINTED = 0.005;

  /** Far above double rounding, far below anything readable. */
  private static final double SAME = 1e-6;

  private static Drive with(Chain chain) {
    Drive d = Drives.answered();
    return new Drive(d.name(), d.about(), d.rotation(), d.shafts(), List.of(chain));
  }

  private static Drive withLinks(int links) {
    return with(Drives.chain(Drives.answered()).withLinks(links));
  }

  private static Drive withExhaustMark(double degrees) {
    Chain chain = Drives.chain(Drives.answered());
    List<RouteEntry> route = new ArrayList<>(chain.route());
    Sprocket exhaust = chain.sprocketAt(3);
    route.set(3, exhaust.withMark(Optional.of(new Bearing(degrees))));
    return with(chain.withRoute(route));
  }

  private static List<Finding> found(Drive drive) {
    return Inspection.of(Solver.of(drive));
  }

  private static double fact(Drive drive, Id id, String name) {
    Finding finding = found(drive).stream().filter(f -> f.id() == id).findFirst().orElseThrow();
    return ((Number) finding.facts().get(name)).doubleValue();
  }

  @Test
  void theAnsweredExampleHasNothingToFind() {
    assertThat(found(Drives.answered())).isEmpty();
  }

  /** Pushed fully back the example has 2.48 mm of slack, so four links fewer lack 4 x 8 - 2.48. */
  @Test
  void saysByHowMuchAChainIsTooShort() {
    assertThat(fact(withLinks(114), Id.CHAIN_TOO_SHORT, "by")).isCloseTo(29.52, within(PRINTED));
  }

  @Test
  void twoLinksMoreAreTwoPitchesMoreOfChainOver() {
    double left = fact(withLinks(124), Id.OUT_OF_TRAVEL, "left");
    assertThat(left).isPositive();
    assertThat(fact(withLinks(126), Id.OUT_OF_TRAVEL, "left")).isCloseTo(left + 16, within(SAME));
  }

  /**
   * A mark turned by e degrees on z teeth takes its strands e x z / 360 pitches away from whole.
   */
  @Test
  void aMarkIsCalledAMisfitPastATenthAndUntrustedPastAQuarterOfAPitch() {
    double whole = 23.49 - degreesOff();
    assertThat(found(withExhaustMark(whole + 0.98))).isEmpty();
    assertThat(found(withExhaustMark(whole + 1.02)))
        .extracting(Finding::id)
        .containsOnly(Id.MISFIT);
    assertThat(found(withExhaustMark(whole + 2.48)))
        .extracting(Finding::id)
        .containsOnly(Id.MISFIT);
    assertThat(found(withExhaustMark(whole + 2.52)))
        .extracting(Finding::id)
        .contains(Id.COUNT_NOT_TRUSTED);
  }

  /** How far the example's exhaust mark lies past the whole link from the intake's, degrees. */
  private static double degreesOff() {
    Strand strand =
        Solver.solve(Drives.answered(), State.reference()).chains().get(0).strands().get(1);
    return strand.misfit().orElseThrow() * 10;
  }

  @Test
  void theRangeNamedForAMarkIsTheWholeRange() {
    Drive off = withExhaustMark(200);
    double from = fact(off, Id.MARK_OFF_CHAIN, "from");
    double to = fact(off, Id.MARK_OFF_CHAIN, "to");
    for (double inside : new double[] {from + 0.01, to - 0.01}) {
      assertThat(found(withExhaustMark(inside))).noneMatch(Finding::error);
    }
    for (double outside : new double[] {from - 0.01, to + 0.01}) {
      assertThat(found(withExhaustMark(outside)))
          .extracting(Finding::id)
          .contains(Id.MARK_OFF_CHAIN);
    }
  }
}
