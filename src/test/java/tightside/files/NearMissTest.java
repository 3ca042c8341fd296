package tightside.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Slips of the finger are understood, other words are not. */
class NearMissTest {

  private static final List<String> KNOWN = List.of("pitch", "links", "plate-height", "at");

  @ParameterizedTest
  @CsvSource({
    "pich, pitch",
    "ptich, pitch",
    "Links, links",
    "link, links",
    "plateheight, plate-height",
    "plate_height, plate-height",
    "Plate Height, plate-height",
    "ta, at"
  })
  void aSlipIsUnderstood(String word, String meant) {
    assertThat(NearMiss.of(word, KNOWN)).contains(meant);
  }

  @ParameterizedTest
  @CsvSource({"teeth", "x", "height", "''", "цепь"})
  void anotherWordIsNot(String word) {
    assertThat(NearMiss.of(word, KNOWN)).isEmpty();
  }

  /** Worked by hand. */
  @ParameterizedTest
  @CsvSource({"kitten, sitting, 3", "ab, ba, 1", "abc, '', 3", "same, same, 0", "teeth, tooth, 2"})
  void countsWhatHasToBeChanged(String a, String b, int changes) {
    assertThat(NearMiss.distance(a, b)).isEqualTo(changes);
    assertThat(NearMiss.distance(b, a)).isEqualTo(changes);
  }

  @Test
  void aBookIsNoSlip() {
    assertThat(NearMiss.of("x".repeat(1_000_000), KNOWN)).isEmpty();
  }
}
