package tightside.timing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tightside.drive.Drive;

class DowelRuleTest {

  private static HoldBack answered() {
    Drive drive = Drives.answered();
    return (HoldBack) HeldBack.of(drive, Drives.chain(drive));
  }

  /** 2.48 mm on 36 teeth of 8 mm: 3.09 degrees, and 0.05 mm of play. */
  @Test
  void slackOnOneSideIsHonestTurn() {
    DowelRule rule = DowelRule.of(answered(), "intake");
    assertThat(rule.toothDegrees()).isCloseTo(10, within(1e-9));
    assertThat(rule.honestDegrees()).isCloseTo((2.4754 + 0.05) * 10 / 8, within(0.001));
    assertThat(rule.limitDegrees()).isCloseTo(5, within(1e-9));
    assertThat(rule.provesTheRightTooth()).isTrue();
    assertThat(rule.marginDegrees()).isCloseTo(5 - rule.honestDegrees(), within(1e-9));
  }

  /**
   * The sprocket is slid along the chain by brute force: where both strands have what they need it
   * can stand, and a camshaft has to be turned to there. The rule must call every such turn
   * rightly.
   */
  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 4, 5, 6})
  void noPlaceOfTheSprocketDeceivesTheRule(int seed) {
    Drive drive = LooseDrives.random(new Random(seed), 0);
    HoldBack hold = (HoldBack) HeldBack.of(drive, Drives.chain(drive));
    for (String shaft : new String[] {"left", "right"}) {
      DowelRule rule = DowelRule.of(hold, shaft);
      double arriving = hold.arriving(shaft).orElseThrow().slackMm();
      double leaving = hold.leaving(shaft).orElseThrow().slackMm();
      for (int teeth = -1; teeth <= 1; teeth++) {
        for (double mm = -20; mm <= 20; mm += 0.01) {
          boolean stands = arriving + 8 * teeth - mm >= -0.05 && leaving - 8 * teeth + mm >= -0.05;
          double turn = Math.abs(mm) * hold.degreesPerMm(shaft);
          if (stands && rule.provesTheRightTooth()) {
            assertThat(turn > rule.limitDegrees()).isEqualTo(teeth != 0);
          }
          if (stands && teeth == 0) {
            assertThat(turn).isLessThanOrEqualTo(rule.honestDegrees() + 1e-9);
          }
          if (stands && teeth != 0) {
            assertThat(turn).isGreaterThanOrEqualTo(rule.wrongFromDegrees() - 1e-9);
          }
        }
      }
    }
  }

  @Test
  void halfAPitchOfSlackProvesNoRightTooth() {
    Drive drive = LooseDrives.random(new Random(7), 1);
    HoldBack hold = (HoldBack) HeldBack.of(drive, Drives.chain(drive));
    assertThat(hold.slackMm()).isGreaterThan(8);
    DowelRule rule = DowelRule.of(hold, "left");
    assertThat(rule.provesTheRightTooth()).isFalse();
    assertThat(rule.limitDegrees()).isEqualTo(rule.honestDegrees()).isGreaterThan(9);
    assertThat(rule.wrongFromDegrees()).isZero();
    assertThat(DowelRule.of(hold, "right").provesTheRightTooth()).isTrue();
  }
}
