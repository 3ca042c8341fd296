package tightside.validation.calculated;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import tightside.drive.TautPath;
import tightside.validation.FactorF3;
import tightside.validation.FactorF4;
import tightside.validation.Printed;
import tightside.validation.Row;
import tightside.validation.Rows;
import tightside.validation.TwoSprockets;

/**
 * Two-sprocket chains in three models, calculated apart from the program: the handbooks' formula,
 * arcs in teeth, arcs along the circle. Tolerance: half of the last digit kept, and 1e-9 for
 * doubles.
 */
class TwoSprocketModelTest {

  @ParameterizedTest
  @Rows("calculated/two-sprocket-models.csv")
  void lengthInThreeModels(Row row) {
    TwoSprockets drive = TwoSprockets.of(row, "centre");
    TautPath path = drive.path();
    check(row, "formula_pitches", drive.formulaPitches());
    check(row, "teeth_pitches", path.pitches());
    check(row, "circle_pitches", path.lengthMm() / path.pitchMm());
  }

  private static void check(Row row, String column, double found) {
    if (row.has(column)) {
      Printed kept = row.printed(column);
      assertThat(found).as(column).isCloseTo(kept.value(), within(kept.halfDigit() + 1e-9));
    }
  }

  /**
   * The f4 relation takes z p / 2pi for a pitch radius: the bound on that, and two pitches of
   * length for a pitch of distance times the last digit kept.
   */
  @ParameterizedTest
  @Rows("calculated/two-sprocket-models.csv")
  void linksFitAtTheExactCentreDistance(Row row) {
    if (!row.has("teeth_centre")) {
      return;
    }
    TwoSprockets drive = TwoSprockets.of(row, "teeth_centre");
    double digit = 2 * row.printed("teeth_centre").halfDigit() * row.unitMm() / drive.pitchMm();
    assertThat(drive.path().pitches())
        .isCloseTo(row.number("links"), within(2 * digit + drive.formulaLongByAtMost()));
  }

  @ParameterizedTest
  @Rows("calculated/f3.csv")
  void f3OfTheDifferenceOfTeeth(Row row) {
    FactorF3 found = FactorF3.at(row.whole("difference"));
    assertThat(found.value())
        .isCloseTo(row.number("f3"), within(row.printed("f3").halfDigit() + found.uncertain()));
  }

  /** 6e-7: half of the sixth decimal, and what the pitch radius moves. */
  @ParameterizedTest
  @Rows("calculated/f4.csv")
  void f4OfTheLength(Row row) {
    assertThat(FactorF4.at(row.number("k"))).isCloseTo(row.number("f4"), within(6e-7));
  }
}
