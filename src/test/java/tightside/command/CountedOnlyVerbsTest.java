package tightside.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

/** Every verb on a drive that is counted only: it answers, or says what it would take. */
class CountedOnlyVerbsTest {

  private static final String FILE = "models/counted-by-hand.yaml";

  @TempDir private Path folder;

  private Path file(String text) throws IOException {
    return Files.writeString(folder.resolve("own.yaml"), text);
  }

  @Test
  void countsSaysWhatIsKnownAndNullForWhatIsNot() {
    Run run = Run.of("counts", FILE, "--json");
    assertThat(run.code()).isZero();
    JsonNode chain = run.json().get("chains").get(0);
    assertThat(chain.get("countedOnly").asBoolean()).isTrue();
    assertThat(chain.get("tensioner").get("extension").isNull()).isTrue();
    assertThat(chain.get("realign").get("crankTurns").asInt()).isEqualTo(128);
    for (JsonNode strand : chain.get("strands")) {
      assertThat(strand.get("pitches").isNull()).isTrue();
      assertThat(strand.get("misfit").isNull()).isTrue();
    }
    assertThat(Run.of("counts", FILE).out())
        .contains("COUNTED ONLY: no geometry", "Count 56 links", "extension not known; it needs");
  }

  /** One tooth of 42 is 360 / 42 cam degrees. */
  @Test
  void reseatNeedsNoGeometry() {
    Run run = Run.of("reseat", FILE, "intake=+1", "--json");
    assertThat(run.code()).isZero();
    assertThat(run.json().get("shafts").get(2).get("shaftDegrees").asDouble())
        .isCloseTo(360 / 42.0, within(1e-6));
  }

  /** (171 + 148) mm / 8 mm x 0.002 / 1.002 teeth of 360 / 42 degrees, and 102 mm more. */
  @Test
  void stretchAnswersWhereTheRunsAreMeasured() {
    Run run = Run.of("stretch", FILE, "0.2", "--json");
    assertThat(run.code()).isZero();
    double mm = 0.002 / 1.002 / 8 * 360 / 42;
    assertThat(run.json().get("shafts").get(1).get("shaftDegrees").asDouble())
        .isCloseTo(-319 * mm, within(1e-6));
    assertThat(run.json().get("shafts").get(2).get("shaftDegrees").asDouble())
        .isCloseTo(-421 * mm, within(1e-6));
  }

  @Test
  void stretchNamesTheRunThatIsNotMeasured() throws IOException {
    String text = Files.readString(Path.of(FILE)).replace(", straight: 148", "");
    Run run = Run.of("stretch", file(text).toString(), "0.2");
    assertThat(run.code()).isZero();
    assertThat(run.out())
        .contains("exhaust: not known", "the run from pump to crank", "add straight, in mm");
    Run json = Run.of("stretch", folder.resolve("own.yaml").toString(), "0.2", "--json");
    assertThat(json.json().get("shafts").get(1).get("shaftDegrees").isNull()).isTrue();
  }

  @Test
  void holdBackSaysInOneSentenceWhatItNeeds() {
    Run run = Run.of("hold-back", FILE);
    assertThat(run.code()).isEqualTo(2);
    assertThat(run.out()).isEmpty();
    assertThat(run.err().lines()).hasSize(1);
    assertThat(run.err()).contains("counted only", "place of every shaft", "plunger");
  }

  @Test
  void explainWeighsWhatNeedsNoGeometry() {
    Run run = Run.of("explain", FILE, "--reading", "exhaust=-17.1", "--reading", "intake=0.2");
    assertThat(run.out())
        .contains("the sprocket of exhaust sits 1 tooth behind on chain main")
        .contains("worn guides and a skimmed head are not weighed")
        .doesNotContain("guide faces");
  }

  @Test
  void explainKnowsAWornChainFromItsStraightRuns() {
    Run run = Run.of("explain", FILE, "--reading", "exhaust=-3.9", "--reading", "intake=-5.2");
    assertThat(run.out()).contains("chain main is worn");
  }

  @Test
  void pictureAndCheckAnswer() throws IOException {
    Path svg = folder.resolve("own.svg");
    assertThat(Run.of("picture", FILE, "-o", svg.toString(), "--turn", "40").code()).isZero();
    assertThat(Files.readString(svg)).contains("Schematic: not to scale", "56 links");
    assertThat(Run.of("check", FILE).code()).isZero();
  }

  /** The answered example of the format without its places, marks and faces as they stand there. */
  @Test
  void aFileWithItsPlacesTakenOutStillReads() throws IOException {
    String text =
        Files.readString(Path.of("models/two-cams-arm.yaml"))
            .replaceAll(", *at: \\[[^]]*]", "")
            .replace("    links: 118\n", "    links: 118\n    counts: [51, 17, 50]\n")
            .replaceAll("(links: 118 *#[^\n]*\n)", "$1    counts: [51, 17, 50]\n");
    Run run = Run.of("counts", file(text).toString(), "--json");
    assertThat(run.err()).isEmpty();
    assertThat(run.code()).isZero();
    assertThat(run.json().get("chains").get(0).get("strands").get(2).get("links").asInt())
        .isEqualTo(50);
  }
}
