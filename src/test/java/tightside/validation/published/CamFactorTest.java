package tightside.validation.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import tightside.engine.LiftLaw;
import tightside.validation.Row;
import tightside.validation.Rows;

/** Greatest speed and acceleration of the lift laws, by differentiating them numerically. */
class CamFactorTest {

  private static final double STEP = 1e-4;

  private static double speed(LiftLaw law) {
    return greatest(u -> (law.share(u + STEP) - law.share(u - STEP)) / (2 * STEP));
  }

  private static double acceleration(LiftLaw law) {
    return greatest(
        u -> (law.share(u + STEP) - 2 * law.share(u) + law.share(u - STEP)) / (STEP * STEP));
  }

  /** Places 1e-4 apart, kept two steps from the ends, where a law is not smooth. */
  private static double greatest(DoubleUnaryOperator factor) {
    return IntStream.rangeClosed(2, 9998)
        .mapToDouble(i -> factor.applyAsDouble(i / 1e4))
        .max()
        .orElseThrow();
  }

  /** 1e-6: places and differences this far apart miss less. */
  @ParameterizedTest
  @EnumSource
  void greatestSpeedInClosedForm(LiftLaw law) {
    double closed =
        switch (law) {
          case POLYNOMIAL_345 -> 15.0 / 8;
          case POLYNOMIAL_4567 -> 35.0 / 16;
          case CYCLOIDAL -> 2;
          case MODIFIED_SINE -> 4 * Math.PI / (Math.PI + 4);
        };
    assertThat(speed(law)).isCloseTo(closed, within(1e-6));
  }

  /** 2e-6, for the same reason. */
  @ParameterizedTest
  @EnumSource
  void greatestAccelerationInClosedForm(LiftLaw law) {
    double closed =
        switch (law) {
          case POLYNOMIAL_345 -> 10 / Math.sqrt(3);
          case POLYNOMIAL_4567 -> 84 * Math.sqrt(5) / 25;
          case CYCLOIDAL -> 2 * Math.PI;
          case MODIFIED_SINE -> 4 * Math.PI * Math.PI / (Math.PI + 4);
        };
    assertThat(acceleration(law)).isCloseTo(closed, within(2e-6));
  }

  /** 0.2 %: two of the printed factors are not the true greatest, see the rows. */
  @ParameterizedTest
  @Rows("published/cam-factors.csv")
  void factorsArePrintedSo(Row row) {
    LiftLaw law = LiftLaw.valueOf(row.text("law"));
    double speed = row.number("speed");
    double acceleration = row.number("acceleration");
    assertThat(speed(law)).isCloseTo(speed, within(0.002 * speed));
    assertThat(acceleration(law)).isCloseTo(acceleration, within(0.002 * acceleration));
  }
}
