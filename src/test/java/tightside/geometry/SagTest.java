package tightside.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SagTest {

  /** Straight pieces into which a curve is cut to measure it. */
  private static final int PIECES = 20_000;

  /** The inscribed polygon of 20,000 sides is shorter than its curve by under 1e-6 mm. */
  private static final double MEASURED_MM = 1e-6;

  private static double polygonMm(double span, DoubleUnaryOperator height) {
    double length = 0;
    for (int i = 0; i < PIECES; i++) {
      double x0 = span * i / PIECES;
      double x1 = span * (i + 1) / PIECES;
      length += Math.hypot(x1 - x0, height.applyAsDouble(x1) - height.applyAsDouble(x0));
    }
    return length;
  }

  @ParameterizedTest
  @CsvSource({"100, 0.05", "100, 2.5", "160, 8", "58, 8", "30, 10"})
  void theArcIsAsLongAsItsPolygon(double span, double extra) {
    double sag = Sag.arcMm(span, extra);
    double radius = (span * span / 4 + sag * sag) / (2 * sag);
    double length =
        polygonMm(
            span, x -> Math.sqrt(radius * radius - Math.pow(x - span / 2, 2)) - (radius - sag));
    assertThat(length - span).isCloseTo(extra, within(span * MEASURED_MM));
  }

  @ParameterizedTest
  @CsvSource({"100, 0.01, 0.001", "100, 0.5, 0.004", "160, 8, 0.02", "100, 10, 0.03"})
  void theShallowFormNearsTheArc(double span, double extra, double apart) {
    double arc = Sag.arcMm(span, extra);
    assertThat(Sag.shallowMm(span, extra)).isCloseTo(arc, within(apart * arc));
  }

  @ParameterizedTest
  @CsvSource({"100, 0.01", "160, 0.2"})
  void theShallowFormIsTheParabola(double span, double extra) {
    double sag = Sag.shallowMm(span, extra);
    double length = polygonMm(span, x -> 4 * sag * x * (span - x) / (span * span));
    assertThat(length - span).isCloseTo(extra, within(0.003 * extra));
  }

  /** A half circle is longer than its chord by pi / 2 - 1 and as high as half of it. */
  @ParameterizedTest
  @CsvSource({"2, 1", "80, 40"})
  void theHalfCircle(double span, double sag) {
    double extra = span * (Math.PI / 2 - 1) * (1 - 1e-12);
    assertThat(Sag.arcMm(span, extra)).isCloseTo(sag, within(1e-9 * span));
  }

  @ParameterizedTest
  @CsvSource({"0", "-1.5"})
  void withoutExtraNothingSags(double extra) {
    assertThat(Sag.arcMm(100, extra)).isZero();
    assertThat(Sag.shallowMm(100, extra)).isZero();
  }

  @ParameterizedTest
  @CsvSource({"10, 5.8", "0, 1"})
  void nonsenseIsRefused(double span, double extra) {
    assertThatThrownBy(() -> Sag.arcMm(span, extra)).isInstanceOf(IllegalArgumentException.class);
  }
}
