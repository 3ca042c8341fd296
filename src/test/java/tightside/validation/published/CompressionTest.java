package tightside.validation.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import tightside.engine.Squeeze;
import tightside.validation.Printed;
import tightside.validation.Row;
import tightside.validation.Rows;

/** Compression against worked examples of thermodynamics. Rounding of the print. */
class CompressionTest {

  @ParameterizedTest
  @Rows("published/compression-pressures.csv")
  void pressureAfterCompression(Row row) {
    Printed printed = row.printed("printed");
    double pressure = Squeeze.pressure(row.number("from"), ratio(row), row.number("exponent"));
    assertThat(pressure).isCloseTo(printed.value(), within(printed.halfDigit()));
  }

  private static double ratio(Row row) {
    if (row.has("ratio")) {
      return row.number("ratio");
    }
    double swept = Math.PI / 4 * Math.pow(row.number("bore"), 2) * row.number("stroke");
    return 1 + swept / row.number("clearance");
  }

  /** The print is a compression ratio: half of its last digit either way spans the pressures. */
  @ParameterizedTest
  @Rows("published/compression-strokes.csv")
  void compressionOverPartOfTheStroke(Row row) {
    Printed ratio = row.printed("printed_ratio");
    double wanted = row.number("second_pressure") / row.number("first_pressure");
    assertThat(wanted)
        .isBetween(
            grown(row, ratio.value() - ratio.halfDigit()),
            grown(row, ratio.value() + ratio.halfDigit()));
  }

  private static double grown(Row row, double nominal) {
    double first = Squeeze.over(nominal, row.number("first_share"));
    double second = Squeeze.over(nominal, row.number("second_share"));
    return Squeeze.pressure(1, first / second, row.number("exponent"));
  }
}
