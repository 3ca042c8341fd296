package tightside.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Files read, write and complain the same wherever the computer stands. */
class LocaleTest {

  private Locale usual;

  @BeforeEach
  void rememberUsual() {
    usual = Locale.getDefault();
  }

  @AfterEach
  void restoreUsual() {
    Locale.setDefault(usual);
  }

  private static List<Object> everything() {
    Model made = new ModelMaker(3).next();
    return List.of(
        ProblemCase.all().stream().map(c -> ModelReader.parse(c.text()).problems()).toList(),
        ModelReader.parse(Samples.answered()),
        ModelWriter.write(made),
        ModelReader.parse(ModelWriter.write(made)).model().orElseThrow().equals(made));
  }

  @ParameterizedTest
  @ValueSource(strings = {"de-DE", "tr-TR", "ar-EG-u-nu-arab", "fr-FR"})
  void nothingDependsOnTheLocale(String tag) {
    Locale.setDefault(Locale.ROOT);
    List<Object> plain = everything();
    Locale.setDefault(Locale.forLanguageTag(tag));
    assertThat(everything()).isEqualTo(plain);
  }
}
