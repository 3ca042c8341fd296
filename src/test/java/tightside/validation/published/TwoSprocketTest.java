package tightside.validation.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import tightside.drive.TautPath;
import tightside.validation.Printed;
import tightside.validation.Row;
import tightside.validation.Rows;
import tightside.validation.TwoSprockets;

/**
 * Chains on two sprockets against handbooks' worked examples.
 *
 * <p>Handbooks print the result of a formula that breaks a series off. The program's path may
 * therefore be longer by what is left out, shorter by what the formula's circles are wrong, both
 * bounded in {@link TwoSprockets}, and either by half of the last printed digit. No more is allowed
 * but where a row says so.
 */
class TwoSprocketTest {

  @ParameterizedTest
  @Rows("published/two-sprocket-lengths.csv")
  void lengthIsTheFormulasToItsOwnError(Row row) {
    TwoSprockets drive = TwoSprockets.of(row, "centre");
    assertThat(drive.path().pitches() - drive.formulaPitches())
        .isBetween(-drive.formulaLongByAtMost() - 1e-9, drive.formulaShortByAtMost() + 1e-9);
  }

  @ParameterizedTest
  @Rows("published/two-sprocket-lengths.csv")
  void lengthIsThePrintedOneToTheFormulasError(Row row) {
    TwoSprockets drive = TwoSprockets.of(row, "centre");
    Printed printed = row.printed("printed").times(pitchesPer(row.text("printed_in"), drive));
    double allowed = printed.halfDigit() + row.number("allowance");
    boolean radii = row.text("formula").equals("radii");
    double above = radii ? drive.radiiFormulaShortByAtMost() : drive.formulaShortByAtMost();
    double below = radii ? 0 : drive.formulaLongByAtMost();
    assertThat(drive.path().pitches() - printed.value())
        .isBetween(-below - allowed, above + allowed);
  }

  private static double pitchesPer(String unit, TwoSprockets drive) {
    return switch (unit) {
      case "pitches" -> 1;
      case "mm" -> 1 / drive.pitchMm();
      case "m" -> 1000 / drive.pitchMm();
      case "in" -> 25.4 / drive.pitchMm();
      default -> throw new IllegalArgumentException("a unit that no row has: " + unit);
    };
  }

  /** The links that the book takes follow from the program's length by the book's own rounding. */
  @ParameterizedTest
  @Rows("published/two-sprocket-lengths.csv")
  void linksTakenFollowFromTheLength(Row row) {
    if (!row.has("links_taken")) {
      return;
    }
    double pitches = TwoSprockets.of(row, "centre").path().pitches();
    double links =
        switch (row.text("rounding")) {
          case "nearest" -> Math.rint(pitches);
          case "nearest even" -> 2 * Math.rint(pitches / 2);
          case "up" -> Math.ceil(pitches);
          case "up to even" -> 2 * Math.ceil(pitches / 2);
          default -> throw new IllegalArgumentException(row.text("rounding"));
        };
    assertThat(links).isEqualTo(row.number("links_taken"));
  }

  /**
   * At the printed centre distance the path is as long as the links: to the formula's error again,
   * since the books turn it round exactly, and to two pitches of length for a pitch of distance
   * times half of the last printed digit.
   */
  @ParameterizedTest
  @Rows("published/two-sprocket-centres.csv")
  void linksFitAtThePrintedCentreDistance(Row row) {
    TwoSprockets drive = TwoSprockets.of(row, "printed_centre");
    Printed centre = row.printed("printed_centre").times(row.unitMm() / drive.pitchMm());
    double rounding = 2 * centre.halfDigit();
    assertThat(drive.path().pitches() - row.whole("links"))
        .isBetween(
            -drive.formulaLongByAtMost() - rounding, drive.formulaShortByAtMost() + rounding);
  }

  /** 1e-9 pitches: both are exact, and only the rounding of doubles parts them. */
  @ParameterizedTest
  @Rows("published/two-sprocket-lengths.csv")
  void lengthIsTheExactRelationWithArcsInTeeth(Row row) {
    TwoSprockets drive = TwoSprockets.of(row, "centre");
    assertThat(drive.path().pitches()).isCloseTo(drive.exactPitches(), within(1e-9));
    assertThat(drive.swapped().path().pitches()).isCloseTo(drive.exactPitches(), within(1e-9));
  }

  /** 1e-8 mm, for the same reason; the pitch line itself lies on the circles as a belt does. */
  @ParameterizedTest
  @Rows("published/two-sprocket-lengths.csv")
  void pitchLineIsTheExactBeltLength(Row row) {
    TwoSprockets drive = TwoSprockets.of(row, "centre");
    TautPath path = drive.path();
    assertThat(path.lengthMm()).isCloseTo(drive.exactCircleMm(), within(1e-8));
    assertThat(path.lengthMm() / path.pitchMm()).isGreaterThan(path.pitches());
  }
}
