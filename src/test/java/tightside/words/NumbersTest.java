package tightside.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import org.junit.jupiter.api.Test;

class NumbersTest {

  @Test
  void roundedNothing_hasNoSign() {
    assertThat(Numbers.fixed(-0.04, 1)).isEqualTo("0.0");
    assertThat(Numbers.signedHundredths(-0.004)).isEqualTo("0.00");
    assertThat(Numbers.signedHundredths(0.004)).isEqualTo("0.00");
  }

  @Test
  void signs() {
    assertThat(Numbers.signedHundredths(0.126)).isEqualTo("+0.13");
    assertThat(Numbers.signedHundredths(-0.126)).isEqualTo("-0.13");
  }

  @Test
  void pointInEveryLanguage() {
    Locale before = Locale.getDefault();
    Locale.setDefault(Locale.GERMANY);
    try {
      assertThat(Numbers.fixed(14.23, 1)).isEqualTo("14.2");
    } finally {
      Locale.setDefault(before);
    }
  }

  @Test
  void shortest() {
    assertThat(Numbers.plain(3_600_000)).isEqualTo("3600000");
    assertThat(Numbers.plain(0.05)).isEqualTo("0.05");
    assertThat(Numbers.plain(0)).isEqualTo("0");
  }
}
