package tightside.timing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class JointAndKickTest {

  /** One pitch of slack is one tooth: 10 degrees on 36 teeth. */
  @Test
  void slackLeftAtTighteningIsAnErrorOfTheCamshaft() {
    FrictionJoint joint = new FrictionJoint(36, 8);
    assertThat(joint.errorDegrees(8)).isCloseTo(10, within(1e-12));
    assertThat(joint.degreesPerMm()).isCloseTo(1.25, within(1e-12));
    assertThatThrownBy(() -> new FrictionJoint(36, 0)).isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void withoutValvesNothingIsKnown() {
    assertThat(Kick.of(List.of())).isEqualTo(new Kick.Unknown());
  }

  /**
   * Work of the spring against work of the torque over a small turn (the principle of virtual
   * work): a valve on its opening side closes by turning the camshaft back.
   */
  @Test
  void aValveOnItsOpeningSideTurnsTheCamshaftBack() {
    Kick.Known kick = (Kick.Known) Kick.of(List.of(new Kick.Valve(4, 12, 200, 30)));
    double turn = 1e-6;
    double springWork = (200 + 30 * 4) * 12 * turn;
    assertThat(kick.torqueNm() * 1000 * -turn).isCloseTo(springWork, within(1e-9));
    assertThat(kick.way()).isEqualTo(Lag.RETARDED);
  }

  @Test
  void valvesOnBothSidesOfTheirLobesBalance() {
    Kick.Valve opening = new Kick.Valve(4, 12, 200, 30);
    Kick.Valve closing = new Kick.Valve(4, -12, 200, 30);
    assertThat(((Kick.Known) Kick.of(List.of(opening, closing))).way()).isEqualTo(Lag.RIGHT);
    assertThat(((Kick.Known) Kick.of(List.of(closing))).way()).isEqualTo(Lag.ADVANCED);
  }

  @Test
  void aClosedValveTurnsNothing() {
    Kick.Known kick = (Kick.Known) Kick.of(List.of(new Kick.Valve(0, 3, 200, 30)));
    assertThat(kick.torqueNm()).isZero();
    assertThat(kick.way()).isEqualTo(Lag.RIGHT);
  }

  @Test
  void nonsenseIsRefused() {
    assertThatThrownBy(() -> new Kick.Valve(-1, 0, 1, 1))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new Kick.Valve(1, Double.NaN, 1, 1))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
