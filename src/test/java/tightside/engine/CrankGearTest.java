package tightside.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class CrankGearTest {

  private static final CrankGear GEAR = new CrankGear(73, 128);

  @Test
  void deadCentresAndTheSquareCrankByPythagoras() {
    assertThat(GEAR.dropMm(0)).isZero();
    assertThat(GEAR.dropMm(180)).isCloseTo(73, within(1e-12));
    double square = 36.5 + 128 - Math.sqrt(128 * 128 - 36.5 * 36.5);
    assertThat(GEAR.dropMm(90)).isCloseTo(square, within(1e-12));
    assertThat(GEAR.dropMm(-450)).isCloseTo(square, within(1e-12));
  }

  /** 1e-12 mm: the same relation in another order, so that only doubles round. */
  @Test
  void dropIsTheExactRelation() {
    for (double degrees = -360; degrees <= 360; degrees += 0.7) {
      double theta = Math.toRadians(degrees);
      double across = 36.5 * Math.sin(theta);
      double drop = 36.5 + 128 - (36.5 * Math.cos(theta) + Math.sqrt(128 * 128 - across * across));
      assertThat(GEAR.dropMm(degrees)).as("at %s", degrees).isCloseTo(drop, within(1e-12));
    }
  }

  /** Central differences over 0.002 degrees: 1e-9 mm a degree is their own error. */
  @Test
  void slopeIsThatOfTheDrop() {
    for (double degrees = -360; degrees <= 360; degrees += 0.7) {
      double slope = (GEAR.dropMm(degrees + 1e-3) - GEAR.dropMm(degrees - 1e-3)) / 2e-3;
      assertThat(GEAR.dropPerDegreeMm(degrees)).as("at %s", degrees).isCloseTo(slope, within(1e-9));
    }
  }

  @Test
  void aRodThatDoesNotPassTheCrankIsRefused() {
    assertThatIllegalArgumentException().isThrownBy(() -> new CrankGear(73, 36.5));
  }
}
