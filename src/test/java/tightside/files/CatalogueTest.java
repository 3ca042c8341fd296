package tightside.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tightside.drive.Finding;
import tightside.drive.Part;

/** Every id has words, and every sentence says what is wrong and what would be right. */
class CatalogueTest {

  private static List<Enum<?>> ids() {
    List<Enum<?>> ids = new ArrayList<>(List.of(Finding.Id.values()));
    ids.addAll(List.of(Fault.values()));
    return ids;
  }

  @ParameterizedTest
  @MethodSource("ids")
  void saysWhatIsWrongAndWhatWouldBeRight(Enum<?> id) {
    String words = Catalogue.template(id);
    assertThat(words).matches(".+(;|\\?|, and|, not|, for ).*").doesNotEndWith(".");
    Sentences.assertReadable(Catalogue.PLACEHOLDER.matcher(words).replaceAll("it"));
  }

  @Test
  void noWordsAreLeftWithoutAnId() {
    List<String> keys =
        Samples.text("/tightside/files/words.properties")
            .lines()
            .filter(line -> line.contains(" = "))
            .map(line -> line.substring(0, line.indexOf(' ')))
            .toList();
    assertThat(keys).containsExactlyInAnyOrderElementsOf(ids().stream().map(Terms::of).toList());
  }

  @ParameterizedTest
  @MethodSource("tightside.files.ProblemCase#all")
  void everySentenceOfTheTableReadsWell(ProblemCase c) {
    for (Problem problem : ModelReader.parse(c.text()).problems()) {
      Sentences.assertReadable(problem.message());
    }
  }

  @Test
  void aFindingIsPutIntoWords() {
    Finding finding =
        new Finding(
            Finding.Id.CHAIN_TOO_SHORT,
            Part.whole(),
            Map.of("links", 114, "by", 1e-9, "pitches", 114.0000001));
    assertThat(Catalogue.sentence(finding))
        .isEqualTo(
            "114 links are 1e-9 mm too short for this route; it takes 116 or more, an even number");
  }

  @Test
  void aMissingFactIsABugOfOurs() {
    Finding finding = new Finding(Finding.Id.NO_ROOM, Part.whole(), Map.of("from", "crank"));
    assertThatThrownBy(() -> Catalogue.sentence(finding)).isInstanceOf(IllegalStateException.class);
  }

  @Test
  void longAndManyLinedNamesDoNotBreakTheSentence() {
    String sentence =
        Catalogue.sentence(
            Fault.KEY_NEARLY, Map.of("key", "a\n\"b\"\u0007" + "c".repeat(100), "near", "links"));
    assertThat(sentence).hasSizeLessThan(130).contains("a 'b' c").contains("…\" is not known");
    Sentences.assertReadable(sentence);
  }
}
