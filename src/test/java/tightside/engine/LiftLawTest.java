package tightside.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Every rise law goes from rest to rest, alike from both ends. */
class LiftLawTest {

  @ParameterizedTest
  @EnumSource
  void startsAtNothingAndEndsAtFullLift(LiftLaw law) {
    assertThat(law.rise(0)).isCloseTo(0, within(1e-15));
    assertThat(law.rise(1)).isCloseTo(1, within(1e-15));
    assertThat(law.riseSlope(0)).isCloseTo(0, within(1e-15));
    assertThat(law.riseSlope(1)).isCloseTo(0, within(1e-15));
    assertThat(law.share(-0.1)).isZero();
    assertThat(law.share(1.1)).isEqualTo(1);
    assertThat(law.slope(-0.1)).isZero();
    assertThat(law.slope(1.1)).isZero();
  }

  @ParameterizedTest
  @EnumSource
  void isTheSameBackwards(LiftLaw law) {
    for (double u = 0; u <= 0.5; u += 0.01) {
      assertThat(law.share(u) + law.share(1 - u)).isCloseTo(1, within(1e-14));
    }
  }

  /** Central differences over 2e-6: 1e-8 is their own error. */
  @ParameterizedTest
  @EnumSource
  void slopeIsThatOfTheShare(LiftLaw law) {
    for (double u = 0.005; u < 1; u += 0.005) {
      double slope = (law.share(u + 1e-6) - law.share(u - 1e-6)) / 2e-6;
      assertThat(law.slope(u)).as("at %s", u).isCloseTo(slope, within(1e-8));
    }
  }
}
