package tightside.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.RoundingMode;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Numbers have the digits that they deserve. */
class DigitsTest {

  @ParameterizedTest
  @CsvSource({
    "14.2345, 14.23",
    "14.235, 14.24",
    "0, 0.00",
    "-0.004, -0.004",
    "0.0042, 0.004",
    "1e-9, 1e-9",
    "-3.2e-12, -3e-12",
    "1234567, 1234567.00",
    "1e15, 1000000000000000.00"
  })
  void roundsButLetsNothingVanish(double value, String shown) {
    assertThat(Digits.rounded(value, 2, RoundingMode.HALF_UP)).isEqualTo(shown);
  }

  @ParameterizedTest
  @CsvSource({
    "8, 8",
    "8.25, 8.25",
    "-52, -52",
    "0, 0",
    "-0.0, -0",
    "0.1, 0.1",
    "1e-7, 0.0000001",
    "1e21, 1000000000000000000000"
  })
  void writesInFullAndNoMore(double value, String shown) {
    assertThat(Digits.exact(value)).isEqualTo(shown);
  }

  @Test
  void whatIsWrittenInFullReadsBackTheSame() {
    Random random = new Random(7);
    for (int i = 0; i < 20_000; i++) {
      double value = Double.longBitsToDouble(random.nextLong());
      if (Double.isFinite(value)) {
        String text = Digits.exact(value);
        assertThat(Double.parseDouble(text)).isEqualTo(value);
        assertThat(Numbers.plain(text)).as(text).isTrue();
      }
    }
  }
}
