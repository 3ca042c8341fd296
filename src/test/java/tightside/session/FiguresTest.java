package tightside.session;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import org.junit.jupiter.api.Test;

class FiguresTest {

  @Test
  void roundedNothing_hasNoSign() {
    assertThat(Figures.tenths(-0.04)).isEqualTo("0.0");
    assertThat(Figures.signedHundredths(-0.004)).isEqualTo("0.00");
    assertThat(Figures.signedHundredths(0.004)).isEqualTo("0.00");
  }

  @Test
  void signs() {
    assertThat(Figures.signedHundredths(0.126)).isEqualTo("+0.13");
    assertThat(Figures.signedHundredths(-0.126)).isEqualTo("-0.13");
  }

  @Test
  void pointInEveryLanguage() {
    Locale before = Locale.getDefault();
    Locale.setDefault(Locale.GERMANY);
    try {
      assertThat(Figures.tenths(14.23)).isEqualTo("14.2");
    } finally {
      Locale.setDefault(before);
    }
  }

  @Test
  void shortest() {
    assertThat(Figures.shortest(3_600_000)).isEqualTo("3600000");
    assertThat(Figures.shortest(0.05)).isEqualTo("0.05");
    assertThat(Figures.shortest(0)).isEqualTo("0");
  }
}
