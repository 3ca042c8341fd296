package tightside.validation.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import tightside.engine.CrankGear;
import tightside.validation.Printed;
import tightside.validation.Row;
import tightside.validation.Rows;

/**
 * The piston's motion against worked examples of mechanics.
 *
 * <p>Books print v = w r (sin t + sin 2t / 2n) and a = w^2 r (cos t + cos 2t / n), n being rod over
 * crank. With y = (sin t / n)^2 the exact speed has sin 2t / (2n sqrt(1 - y)) instead of the second
 * term, so what the books leave out is sin 2t / 2n times q = 1/sqrt(1 - y) - 1, and in the
 * acceleration its derivative, cos 2t / n times q and sin^2 2t / (4 n^3 (1 - y)^1.5) more.
 */
class SliderCrankTest {

  /** Between two angles of which the difference is taken: small, and far from rounding, degrees. */
  private static final double STEP = 0.01;

  @ParameterizedTest
  @Rows("published/slider-crank.csv")
  void motionIsThePrintedOneToTheFormulasError(Row row) {
    Printed printed = row.printed("printed");
    boolean speed = row.text("quantity").equals("speed");
    double left = speed ? speedLeftOut(row) : accelerationLeftOut(row);
    double exact = speed ? speed(row, row.number("angle")) : acceleration(row);
    assertThat(exact - left).isCloseTo(printed.value(), within(printed.halfDigit()));
  }

  /** Metres a second, by the program's drop and differences. */
  private static double speed(Row row, double angle) {
    double metres = (drop(row, angle + STEP) - drop(row, angle - STEP)) / 1000;
    return metres / (2 * STEP) * degreesPerSecond(row);
  }

  private static double acceleration(Row row) {
    double angle = row.number("angle");
    double change = speed(row, angle + STEP) - speed(row, angle - STEP);
    return change / (2 * STEP) * degreesPerSecond(row);
  }

  private static double drop(Row row, double angle) {
    return new CrankGear(2000 * row.number("crank_m"), 1000 * row.number("rod_m")).dropMm(angle);
  }

  private static double degreesPerSecond(Row row) {
    return row.number("rpm") * 6;
  }

  private static double speedLeftOut(Row row) {
    double n = row.number("rod_m") / row.number("crank_m");
    double t = Math.toRadians(row.number("angle"));
    double w = Math.toRadians(degreesPerSecond(row));
    return w * row.number("crank_m") * Math.sin(2 * t) / (2 * n) * q(n, t);
  }

  private static double accelerationLeftOut(Row row) {
    double n = row.number("rod_m") / row.number("crank_m");
    double t = Math.toRadians(row.number("angle"));
    double w = Math.toRadians(degreesPerSecond(row));
    double y = Math.pow(Math.sin(t) / n, 2);
    double more = Math.pow(Math.sin(2 * t), 2) / (4 * Math.pow(n, 3) * Math.pow(1 - y, 1.5));
    return w * w * row.number("crank_m") * (Math.cos(2 * t) / n * q(n, t) + more);
  }

  private static double q(double n, double t) {
    return 1 / Math.sqrt(1 - Math.pow(Math.sin(t) / n, 2)) - 1;
  }

  /** The angle was measured on a drawing: half of its last digit either way. */
  @ParameterizedTest
  @Rows("published/piston-travel.csv")
  void travelLiesWithinTheMeasuredAngle(Row row) {
    CrankGear gear = new CrankGear(2 * row.number("crank_mm"), row.number("rod_mm"));
    Printed angle = row.printed("printed_angle");
    assertThat(row.number("travel"))
        .isBetween(
            gear.dropMm(angle.value() - angle.halfDigit()),
            gear.dropMm(angle.value() + angle.halfDigit()));
  }
}
