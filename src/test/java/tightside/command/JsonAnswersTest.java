package tightside.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Locale;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;

/**
 * The JSON answers, field by field, for the answered example of the model format's description
 * (computed there by two other programs, to the last digit shown).
 */
class JsonAnswersTest {

  private static JsonNode chain(Run run) {
    return run.json().get("chains").get(0);
  }

  private static JsonNode shaft(Run run, String name) {
    return StreamSupport.stream(run.json().get("shafts").spliterator(), false)
        .filter(s -> s.get("shaft").asString().equals(name))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void countsHasEveryFieldOfTheFormat() {
    Run run = Run.of("counts", Run.ANSWERED, "--json");
    assertThat(run.code()).isZero();
    assertThat(run.err()).isEmpty();
    assertThat(run.json().propertyNames()).contains("model", "chains");
    JsonNode chain = chain(run);
    assertThat(chain.get("chain").asString()).isEqualTo("main");
    assertThat(chain.get("links").asInt()).isEqualTo(118);
    JsonNode tensioner = chain.get("tensioner");
    assertThat(tensioner.get("name").asString()).isEqualTo("tensioner");
    assertThat(tensioner.get("extension").asDouble()).isCloseTo(14.23, within(0.005));
    assertThat(tensioner.get("travel").asDouble()).isEqualTo(28);
    assertThat(tensioner.get("steps").asInt()).isEqualTo(9);
    assertThat(tensioner.get("taut").asBoolean()).isTrue();
    assertThat(chain.get("realign").get("crankTurns").asInt()).isEqualTo(118);
    assertStrand(chain.get("strands").get(0), "crank", "intake", 51, false);
    assertStrand(chain.get("strands").get(1), "intake", "exhaust", 17, true);
    assertStrand(chain.get("strands").get(2), "exhaust", "crank", 50, true);
  }

  private static void assertStrand(
      JsonNode strand, String from, String to, int links, boolean taut) {
    assertThat(strand.get("from").asString()).isEqualTo(from);
    assertThat(strand.get("to").asString()).isEqualTo(to);
    assertThat(strand.get("links").asInt()).isEqualTo(links);
    assertThat(strand.get("between").asInt()).isEqualTo(links - 1);
    assertThat(strand.get("taut").asBoolean()).isEqualTo(taut);
    assertThat(strand.get("pitches").asDouble() - links)
        .isEqualTo(strand.get("misfit").asDouble(), within(1e-9));
  }

  @Test
  void reseatOfOneToothOnACam() {
    Run run = Run.of("reseat", Run.ANSWERED, "exhaust=-1", "--json");
    assertThat(run.code()).isZero();
    JsonNode exhaust = shaft(run, "exhaust");
    assertThat(exhaust.get("shaftDegrees").asDouble()).isEqualTo(-10);
    assertThat(exhaust.get("crankDegrees").asDouble()).isEqualTo(-20);
    assertThat(exhaust.get("state").asString()).isEqualTo("retarded");
    assertThat(shaft(run, "intake").get("state").asString()).isEqualTo("right");
    assertThat(chain(run).get("strands").get(1).get("links").asInt()).isEqualTo(16);
    assertThat(chain(run).get("strands").get(2).get("links").asInt()).isEqualTo(51);
  }

  @Test
  void stretchAnswersInShaftsAndPlunger() {
    Run run = Run.of("stretch", Run.ANSWERED, "0.2", "--json");
    assertThat(run.code()).isZero();
    assertThat(shaft(run, "exhaust").get("shaftDegrees").asDouble())
        .isCloseTo(-0.755, within(5e-4));
    assertThat(shaft(run, "intake").get("shaftDegrees").asDouble()).isCloseTo(-1.015, within(5e-4));
    assertThat(chain(run).get("tensioner").get("extension").asDouble())
        .isCloseTo(17.96, within(5e-3));
    assertThat(Run.of("stretch", Run.ANSWERED, "main=0.2", "--json").out()).isEqualTo(run.out());
  }

  @Test
  void stretchBeyondTheTravelStillAnswersAndExitsWithOne() {
    Run run = Run.of("stretch", Run.ANSWERED, "2", "--json");
    assertThat(run.code()).isEqualTo(1);
    JsonNode tensioner = chain(run).get("tensioner");
    assertThat(tensioner.get("taut").asBoolean()).isFalse();
    assertThat(tensioner.get("extension").asDouble()).isEqualTo(28);
    assertThat(tensioner.get("slackLeft").asDouble()).isPositive();
    assertThat(shaft(run, "exhaust").get("state").asString()).isEqualTo("retarded");
    assertThat(Run.of("stretch", Run.ANSWERED, "2").out())
        .contains("OUT OF TRAVEL")
        .contains("its travel runs out at");
  }

  @Test
  void wearAndAWrongToothAddUp() {
    double worn =
        shaft(Run.of("stretch", Run.ANSWERED, "0.2", "--json"), "exhaust")
            .get("shaftDegrees")
            .asDouble();
    Run both = Run.of("reseat", Run.ANSWERED, "exhaust=-1", "--stretch", "0.2", "--json");
    assertThat(shaft(both, "exhaust").get("shaftDegrees").asDouble())
        .isCloseTo(worn - 10, within(1e-9));
    assertThat(Run.of("stretch", Run.ANSWERED, "0.2", "--reseat", "exhaust=-1", "--json").out())
        .isEqualTo(both.out());
  }

  @Test
  void checkOfAGoodFile() {
    Run run = Run.of("check", Run.ANSWERED, "--json");
    assertThat(run.code()).isZero();
    assertThat(run.json().get("valid").asBoolean()).isTrue();
    assertThat(run.json().get("problems")).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"de-DE", "tr-TR", "fr-FR"})
  void numbersArePlainDecimalsInEveryLocale(String tag) {
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag(tag));
      for (List<String> words :
          List.of(
              List.of("counts", Run.ANSWERED),
              List.of("stretch", Run.ANSWERED, "0.000001"),
              List.of("reseat", Run.ANSWERED, "exhaust=1"))) {
        Run run = Run.of(withJson(words));
        assertThat(run.out())
            .doesNotContainPattern("\\d[eE][+-]?\\d")
            .doesNotContainPattern(":-?0,\\d");
        assertThat(run.json().get("chains").get(0).get("tensioner").get("extension").asDouble())
            .isCloseTo(14.23, within(0.01));
      }
      assertThat(Run.of("counts", Run.ANSWERED).out()).contains("plunger 14.2 mm out of 28.0 mm");
    } finally {
      Locale.setDefault(before);
    }
  }

  private static String[] withJson(List<String> words) {
    List<String> all = new java.util.ArrayList<>(words);
    all.add("--json");
    return all.toArray(String[]::new);
  }
}
