package tightside.validation.calculated;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.params.ParameterizedTest;
import tightside.geometry.Bearing;
import tightside.geometry.PitchCircle;
import tightside.validation.Row;
import tightside.validation.Rows;

/** Factors of pitch circles, by own calculation: no printed table of calliper factors was found. */
class PitchCircleFactorTest {

  private static final double PITCH_MM = 8;

  /** Rounding of the table: six decimals. */
  private static final double ROUNDING = 5.1e-7;

  @ParameterizedTest
  @Rows("calculated/pitch-and-calliper-factors.csv")
  void diameterAndCalliperDiameter(Row row) {
    PitchCircle circle = new PitchCircle(row.whole("teeth"), PITCH_MM);
    assertThat(circle.diameterMm() / PITCH_MM)
        .isCloseTo(row.number("pitch_factor"), within(ROUNDING));
    assertThat(circle.calliperDiameterMm() / PITCH_MM)
        .isCloseTo(row.number("calliper_factor"), within(ROUNDING));
  }

  /**
   * The same without the formula: a calliper spans the two gaps that stand farthest apart. 1e-11
   * mm: doubles round.
   */
  @ParameterizedTest
  @Rows("calculated/pitch-and-calliper-factors.csv")
  void calliperSpansTheGapsFarthestApart(Row row) {
    PitchCircle circle = new PitchCircle(row.whole("teeth"), PITCH_MM);
    Vector2D first = pin(circle, 0);
    double farthest = 0;
    for (int i = 1; i < circle.teeth(); i++) {
      farthest = Math.max(farthest, first.distance(pin(circle, i)));
    }
    assertThat(circle.calliperDiameterMm()).isCloseTo(farthest, within(1e-11));
  }

  private static Vector2D pin(PitchCircle circle, int tooth) {
    return new Bearing(tooth * circle.toothDegrees()).direction().multiply(circle.radiusMm());
  }

  /** Rounding of the table: four decimals of a percent. */
  @ParameterizedTest
  @Rows("calculated/chordal-action.csv")
  void chordalActionInPercent(Row row) {
    double radius = new PitchCircle(row.whole("teeth"), PITCH_MM).radiusMm();
    double percent = 100 * (1 - Math.sqrt(radius * radius - PITCH_MM * PITCH_MM / 4) / radius);
    assertThat(percent).isCloseTo(row.number("percent"), within(5.1e-5));
  }
}
