package tightside.validation.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import tightside.geometry.PitchCircle;
import tightside.validation.Printed;
import tightside.validation.Row;
import tightside.validation.Rows;

/**
 * Pitch circles against printed tables and worked examples. Tolerance: half of the last printed
 * digit, since the formula is the standard's own; where another is taken, its reason stands with
 * the test.
 */
class PitchCircleTest {

  /** Rounding of the print: the table gives hundredths of a millimetre. */
  @ParameterizedTest
  @Rows("published/pitch-diameters.csv")
  void diameterOfAWheelForOneInchPitch(Row row) {
    Printed printed = row.printed("diameter_mm");
    PitchCircle circle = new PitchCircle(row.whole("teeth"), row.number("pitch_mm"));
    assertThat(circle.diameterMm()).isCloseTo(printed.value(), within(printed.halfDigit()));
  }

  /** Rounding of the print, and 1e-12 mm for the last bits of numbers printed in full. */
  @ParameterizedTest
  @Rows("published/pitch-diameters-worked.csv")
  void workedExample(Row row) {
    Printed printed = row.printed("printed").times(row.unitMm());
    PitchCircle circle = new PitchCircle(row.whole("teeth"), row.number("pitch") * row.unitMm());
    double found =
        switch (row.text("quantity")) {
          case "diameter" -> circle.diameterMm();
          case "radius" -> circle.radiusMm();
          default -> Math.PI * circle.diameterMm();
        };
    assertThat(found).isCloseTo(printed.value(), within(printed.halfDigit() + 1e-12));
  }

  /** 1e-4: remembered to four decimals, one of them cut short instead of rounded. */
  @ParameterizedTest
  @Rows("published/pitch-factors-iso-606.csv")
  void unitFactorOfTheStandard(Row row) {
    double pitchMm = 9.525;
    double factor = new PitchCircle(row.whole("teeth"), pitchMm).diameterMm() / pitchMm;
    assertThat(factor).isCloseTo(row.number("pitch_factor"), within(1e-4));
  }

  /**
   * Rounding of the print. What a chain's speed loses is what a pin comes nearer to the shaft
   * between two teeth: the radius less the height of a triangle on one pitch.
   */
  @ParameterizedTest
  @Rows("published/chordal-action.csv")
  void chordalActionInPercent(Row row) {
    double radius = new PitchCircle(row.whole("teeth"), 8).radiusMm();
    double percent = 100 * (1 - Math.sqrt(radius * radius - 4 * 4) / radius);
    Printed printed = row.printed("percent");
    assertThat(percent).isCloseTo(printed.value(), within(printed.halfDigit()));
  }
}
