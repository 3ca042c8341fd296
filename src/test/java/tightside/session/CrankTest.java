package tightside.session;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.Test;
import tightside.drive.Chain;
import tightside.drive.ChainFit;
import tightside.drive.Drive;
import tightside.timing.Drives;
import tightside.timing.Solver;
import tightside.timing.State;
import tightside.timing.State.Arrived;

class CrankTest {

  @Test
  void forward_holds() {
    assertThat(Crank.REFERENCE.turnedTo(90).arrived()).isEqualTo(Arrived.FORWARD);
  }

  @Test
  void back_evenALittle_doesNotHold() {
    Crank back = Crank.REFERENCE.turnedTo(90).turnedTo(89.9);
    assertThat(back.arrived()).isEqualTo(Arrived.BACKWARD);
    assertThat(back.toTakeUpDegrees()).isEqualTo(Crank.TAKE_UP_DEGREES);
  }

  @Test
  void backAndForwardAgain_holdsOnlyOnceTheSlackIsTakenUp() {
    Crank back = Crank.REFERENCE.turnedTo(90).turnedTo(50);
    Crank notYet = back.turnedTo(70).turnedTo(94.5);
    assertThat(notYet.arrived()).isEqualTo(Arrived.BACKWARD);
    assertThat(notYet.toTakeUpDegrees()).isEqualTo(0.5);
    assertThat(notYet.turnedTo(95).arrived()).isEqualTo(Arrived.FORWARD);
  }

  @Test
  void backTwice_countsFromTheLowest() {
    Crank crank = Crank.REFERENCE.turnedTo(90).turnedTo(60).turnedTo(80).turnedTo(70);
    assertThat(crank.turnedTo(114.9).arrived()).isEqualTo(Arrived.BACKWARD);
    assertThat(crank.turnedTo(115).arrived()).isEqualTo(Arrived.FORWARD);
  }

  @Test
  void sameAngle_changesNothing() {
    Crank back = Crank.REFERENCE.turnedTo(-5);
    assertThat(back.turnedTo(-5)).isEqualTo(back);
    assertThat(Crank.REFERENCE.turnedTo(0)).isEqualTo(Crank.REFERENCE);
  }

  /** With the plunger pushed right back all its slack can go to the pulled side. */
  @Test
  void takeUpIsMoreThanTheSlackOfTheDriveAsksFor() {
    Drive drive = Drives.answered();
    Chain chain = Drives.chain(drive);
    ChainFit fit = Solver.solve(drive, State.reference().held("main", 0)).chains().get(0).fit();
    double slackPitches = ((ChainFit.Solved) fit).slackMm() / chain.pitchMm();
    assertThat(slackPitches * 360 / chain.driver().teeth())
        .isPositive()
        .isLessThan(Crank.TAKE_UP_DEGREES / 2);
  }

  @Test
  void absurdAngle_refused() {
    assertThatIllegalArgumentException().isThrownBy(() -> Crank.REFERENCE.turnedTo(1e9));
    assertThatIllegalArgumentException().isThrownBy(() -> Crank.REFERENCE.turnedTo(Double.NaN));
  }
}
