package tightside.session;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.text.DecimalFormat;
import java.text.NumberFormat;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tightside.drive.Limits;

class DecimalsTest {

  private static final Limits WIDE = new Limits(-1e9, 1e9, "degrees");

  private Locale before;

  @BeforeEach
  void rememberLocale() {
    before = Locale.getDefault();
  }

  @AfterEach
  void putLocaleBack() {
    Locale.setDefault(before);
  }

  private static Typed read(String text) {
    return Decimals.within(text, "The angle", WIDE);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "12.5|12.5", "12,5|12.5", "0|0", "-0|0", "+3|3", "-3,25|-3.25", "\u22123,25|-3.25",
        ".5|0.5", ",5|0.5", "5.|5", "' 7 '|7", "0.755|0.755", "0,755|0.755", "1234|1234",
        "1.2345|1.2345", "12345.678|12345.678", "007|7"
      })
  void number_read(String text, double value) {
    assertThat(read(text)).isEqualTo(new Typed.Number(value));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        " ",
        "1.234,5",
        "1,234.5",
        "1.234.567",
        "1'234",
        "1 234",
        "1\u00a0234,5",
        "1\u202f234,5",
        "1.234",
        "-12,345",
        "12 mm",
        "12mm",
        "twelve",
        "1e3",
        "0x10",
        "NaN",
        "Infinity",
        "-",
        ".",
        ",",
        "--1",
        "1-2",
        "1..2",
        "\u0661\u0662",
        "1_000",
        "123456789012345678"
      })
  void anythingElse_refusedWithOneSentence(String text) {
    assertThat(read(text).refusal().orElseThrow()).matches("[^\\n]{10,200}\\.");
  }

  @Test
  void refusalsSayWhatWouldBeRight() {
    assertThat(read("1.234,5").refusal())
        .contains("\"1.234,5\" has more than one point or comma: type one, and no thousands sign.");
    assertThat(read("1,440").refusal())
        .contains("\"1,440\" could mean 1440 or 1.440: type 1440 or 1,4400.");
    assertThat(read("1 234").refusal())
        .contains("\"1 234\" has a space in it: type the number in one piece, such as 1234.5.");
    assertThat(Decimals.within("11", "The stretch", Limits.STRETCH_PERCENT).refusal())
        .contains("The stretch lies from 0 to 10 percent, not 11.");
    assertThat(Decimals.whole("2,5", "A count", WIDE).refusal())
        .contains("A count is a whole number, not 2,5.");
  }

  /** 9.525 mm is 3/8 inch, the pitch of many chains (ISO 606, 06B): no pitch is 9525 mm. */
  @Test
  void threeDecimals_readWhereThousandsLieOutsideTheLimits() {
    assertThat(Decimals.within("9,525", "The pitch", Limits.PITCH_MM))
        .isEqualTo(new Typed.Number(9.525));
  }

  /** What the computer's own language writes without thousands signs is read back everywhere. */
  @ParameterizedTest
  @ValueSource(strings = {"de-DE", "fr-FR", "tr-TR", "en-GB"})
  void whatAnyLanguageWrites_readBack_whateverLanguageIsSet(String tag) {
    Locale.setDefault(Locale.forLanguageTag(tag));
    NumberFormat plain = NumberFormat.getInstance();
    plain.setGroupingUsed(false);
    long seed = 20_250_101;
    Random random = new Random(seed);
    for (int i = 0; i < 2_000; i++) {
      int decimals = random.nextInt(3);
      double value =
          BigDecimal.valueOf(random.nextDouble() * 20_000 - 10_000)
              .setScale(decimals, RoundingMode.HALF_EVEN)
              .doubleValue();
      plain.setMaximumFractionDigits(decimals);
      String text = plain.format(value);
      assertThat(read(text)).as("%s, seed %d", text, seed).isEqualTo(new Typed.Number(value + 0.0));
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"de-DE", "fr-FR", "tr-TR", "en-GB"})
  void groupedThousandsOfAnyLanguage_refused(String tag) {
    Locale.setDefault(Locale.forLanguageTag(tag));
    NumberFormat grouped = DecimalFormat.getInstance();
    for (double value : new double[] {1234, 1234.5, 12345.75, -1234.5, 1234567.5}) {
      assertThat(read(grouped.format(value))).isInstanceOf(Typed.Refused.class);
    }
  }
}
