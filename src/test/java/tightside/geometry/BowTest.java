package tightside.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BowTest {

  /** Whole-number right triangles, and one so flat that sqrt(s^2 + e^2) - s loses its digits. */
  @ParameterizedTest
  @CsvSource({"4, 3, 1", "12, 5, 1", "40, 9, 1", "112, 15, 1", "0, 7, 7", "1000000, 0.002, 2e-12"})
  void theThirdSideOfARightTriangle(double span, double offset, double extra) {
    assertThat(Bow.extraMm(span, offset)).isCloseTo(extra, within(1e-12 * extra));
  }

  @ParameterizedTest
  @CsvSource({"0", "55"})
  void withoutOffsetNothingIsNeeded(double span) {
    assertThat(Bow.extraMm(span, 0)).isZero();
  }
}
