package tightside.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class ToothHeightsTest {

  /**
   * Bhandari, Design of Machine Elements, example 14.5: p 19.05, d1 12.07, z 17; the mean tip
   * diameter is printed with six decimals.
   */
  @Test
  void aHandbooksSprocket() {
    ToothHeights heights = new ToothHeights(new PitchCircle(17, 19.05), 12.07);
    assertThat(heights.meanTipDiameterMm()).isCloseTo(112.138521, within(1e-6));
    assertThat(heights.leastTipDiameterMm()).isCloseTo(108.860800, within(1e-6));
    assertThat(heights.mostTipDiameterMm()).isCloseTo(115.416241, within(1e-6));
  }

  /** The roller's size drops out: between p (1 - 1.6 / z) / 2 and 0.625 p. */
  @Test
  void theLiftIsAboutHalfAPitch() {
    for (double roller : new double[] {4, 5, 6}) {
      ToothHeights heights = new ToothHeights(new PitchCircle(36, 8), roller);
      double least = 8 * (1 - 1.6 / 36) / 2;
      assertThat(heights.liftMm()).isCloseTo((least + 5) / 2, within(1e-12));
    }
  }
}
