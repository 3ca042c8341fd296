package tightside.timing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tightside.drive.Chain;
import tightside.drive.ChainKind;
import tightside.timing.CalliperStretch.Measured;
import tightside.timing.CalliperStretch.Refused;
import tightside.timing.CalliperStretch.Why;

class CalliperStretchTest {

  private static final double INCH = 25.4;

  /** The sources print two decimals of a percent. */
  private static final double PRINTED = 0.005;

  private static double percent(double pitchMm, int pitches, double lengthMm) {
    return ((Measured) CalliperStretch.of(chain(pitchMm), pitches, lengthMm)).percent();
  }

  private static Chain chain(double pitchMm) {
    return new Chain("main", ChainKind.BUSH, pitchMm, 118, 7.2, 5, List.of());
  }

  /**
   * mrbill.homeip.net/albums/old_vs_new_chain: 12.000 to 12.1 in over 24 pitches is 0.83 %;
   * pushbikes.org.uk/file/measuring-chain-wear: 1/16 in over 12 in is 0.52 %.
   */
  @Test
  void bicycleChainsOfHalfAnInch() {
    assertThat(percent(INCH / 2, 24, 12.1 * INCH)).isCloseTo(0.83, within(PRINTED));
    assertThat(percent(INCH / 2, 24, 12.0625 * INCH)).isCloseTo(0.52, within(PRINTED));
  }

  @Test
  void tenPitchesOfEightMillimetres() {
    assertThat(percent(8, 10, 80.4)).isCloseTo(0.5, within(1e-9));
    assertThat(percent(8, 10, 80)).isZero();
  }

  @Test
  void newChainMeasuredALittleShort_countsAsNew() {
    Measured measured = (Measured) CalliperStretch.of(chain(8), 10, 79.95);
    assertThat(measured.percent()).isNegative();
    assertThat(measured.stretchPercent()).isZero();
  }

  @ParameterizedTest
  @CsvSource({
    "0, 80, TOO_FEW_PITCHES",
    "-2, 80, TOO_FEW_PITCHES",
    "1, 8, TOO_FEW_PITCHES",
    "9, 72, ODD_PITCHES",
    "120, 960, MORE_THAN_THE_CHAIN",
    "10, 72, SHORTER_THAN_NEW",
    "10, 0, SHORTER_THAN_NEW",
    "10, 79.5, SHORTER_THAN_NEW",
    "10, 88, LONGER_THAN_ANY_WEAR",
    "10, 88.1, LONGER_THAN_ANY_WEAR",
    "10, NaN, LONGER_THAN_ANY_WEAR"
  })
  void absurd_refused(int pitches, double lengthMm, Why why) {
    assertThat(CalliperStretch.of(chain(8), pitches, lengthMm)).isEqualTo(new Refused(why));
  }
}
