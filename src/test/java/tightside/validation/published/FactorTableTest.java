package tightside.validation.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import tightside.validation.FactorF3;
import tightside.validation.FactorF4;
import tightside.validation.Printed;
import tightside.validation.Row;
import tightside.validation.Rows;

/**
 * The factor tables by which a chain's length and its centre distance are found by hand, against
 * the same factors taken from the program's paths.
 */
class FactorTableTest {

  /** Rounding of the print, and what the factor itself leaves out so far apart. */
  @ParameterizedTest
  @Rows("published/f3-two-decimals.csv")
  void f3OfTheDifferenceOfTeeth(Row row) {
    FactorF3 found = FactorF3.at(row.whole("difference"));
    Printed printed = row.printed("f3");
    assertThat(found.value())
        .isCloseTo(printed.value(), within(printed.halfDigit() + found.uncertain()));
  }

  /**
   * 1.5e-5: the table has five decimals, and entries of it, as remembered, stand off the closed
   * form by that much.
   */
  @ParameterizedTest
  @Rows("published/f4.csv")
  void f4OfTheLength(Row row) {
    assertThat(FactorF4.at(row.number("k"))).isCloseTo(row.number("f4"), within(1.5e-5));
  }
}
