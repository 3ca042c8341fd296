package tightside.timing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import tightside.drive.Chain;
import tightside.drive.Drive;
import tightside.drive.RouteEntry;
import tightside.drive.Sprocket;
import tightside.geometry.Bearing;
import tightside.geometry.Rotation;

class PressBackTest {

  private final Drive drive = Drives.answered();
  private final Chain chain = Drives.chain(drive);

  private PressBack intake(double to) {
    return PressBack.of(drive, chain, "intake", to, Optional.empty()).orElseThrow();
  }

  /** The slack that comes free is what the camshaft has taken: 2.48 mm are 3.09 degrees. */
  @Test
  void theCamshaftTakesWhatThePlungerGives() {
    PressBack press = intake(0);
    assertThat(press.way()).isEqualTo(Lag.ADVANCED);
    assertThat(press.fromMm()).isCloseTo(14.23, within(0.005));
    HoldBack hold = (HoldBack) HeldBack.of(drive, chain);
    double slack = hold.arriving("intake").orElseThrow().slackMm();
    assertThat(press.turnDegrees()).isCloseTo(slack * 10 / 8, within(1e-6));
    assertThat(intake(10).turnDegrees()).isLessThan(press.turnDegrees());
  }

  /**
   * By brute force: with the plunger fully back and the camshaft's mark ahead by the answer, the
   * run from the crank's mark to it takes exactly its 51 links.
   */
  @Test
  void theTurnedCamshaftPullsTheRunTaut() {
    double turn = intake(0).turnDegrees();
    Sprocket intake = chain.sprocketAt(2);
    Bearing ahead = intake.mark().orElseThrow().plus(turn, Rotation.CLOCKWISE);
    Drive turned = withIntakeAt(ahead);
    double toMark = new BruteStrand(turned, Drives.chain(turned), 0, 2, 0, true).pitches();
    assertThat(toMark).isCloseTo(51, within(0.001));
  }

  private Drive withIntakeAt(Bearing mark) {
    List<RouteEntry> route = new ArrayList<>(chain.route());
    route.set(2, chain.sprocketAt(2).withMark(Optional.of(mark)));
    return new Drive(
        "turned",
        "Invented for a test.",
        drive.rotation(),
        drive.shafts(),
        List.of(chain.withRoute(route)));
  }

  @Test
  void theRateIsThatOfASmallStep() {
    PressBack press = intake(0);
    double small = 0.01;
    assertThat(press.degreesPerMm())
        .isCloseTo(intake(press.fromMm() - small).turnDegrees() / small, within(0.001));
  }

  @Test
  void onlyACamshaftAtTheSlackSideCan() {
    assertThat(PressBack.of(drive, chain, "exhaust", 0, Optional.empty())).isEmpty();
    assertThat(PressBack.of(drive, chain, "crank", 0, Optional.empty())).isEmpty();
    assertThat(PressBack.of(drive, chain, "intake", 20, Optional.empty())).isEmpty();
  }

  @Test
  void theNearestClearanceOnTheWayIsKept() {
    PressBack.Nearest nearest =
        PressBack.of(drive, chain, "intake", 0, Optional.of(turn -> 1 - turn / 2))
            .orElseThrow()
            .nearest()
            .orElseThrow();
    assertThat(nearest.atDegrees()).isCloseTo(3.094, within(0.001));
    assertThat(nearest.clearanceMm()).isCloseTo(1 - 3.094 / 2, within(0.001));
    assertThat(nearest.touches()).isTrue();
    assertThat(intake(0).nearest()).isEmpty();
  }
}
