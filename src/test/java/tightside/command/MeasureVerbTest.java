package tightside.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** What is said of a measured drive, to people and to programs. */
class MeasureVerbTest {

  private static final String MODEL = "models/measured-two-cams.yaml";

  @TempDir Path folder;

  private String changed(String from, String to) throws IOException {
    String text = Files.readString(Path.of(MODEL));
    assertThat(text).contains(from);
    return Files.writeString(folder.resolve("m.yaml"), text.replace(from, to)).toString();
  }

  private static JsonNode json(String... words) {
    return JsonMapper.shared().readTree(Run.of(words).out());
  }

  @Test
  void countsSayHowSureTheyAreAndThatNothingIsProved() {
    JsonNode answer = json("counts", MODEL, "--json");
    JsonNode measured = answer.get("measured");
    assertThat(measured.get("proved").asBoolean()).isFalse();
    assertThat(measured.get("suspicious").isNull()).isTrue();
    JsonNode count = measured.get("counts").get(2);
    assertThat(count.get("links").asInt()).isEqualTo(50);
    assertThat(count.get("probability").asDouble()).isBetween(0.99, 1.0);
    assertThat(answer.get("chains").get(0).get("strands").get(2).get("links").asInt())
        .isEqualTo(50);
    assertThat(Run.of("counts", MODEL).out())
        .contains("How sure the counts are")
        .contains("Measured, not proved");
  }

  /** The true drive has its camshafts 305.85 and 104 mm away. */
  @Test
  void measurementsAreToldWithTheirResiduals() {
    JsonNode answer = json("measure", MODEL, "--json");
    JsonNode first = answer.get("measurements").get(0);
    assertThat(first.get("read").asDouble()).isEqualTo(337);
    assertThat(first.get("adjusted").asDouble()).isCloseTo(305.85 + 31, within(0.5));
    double residual = first.get("read").asDouble() - first.get("adjusted").asDouble();
    assertThat(first.get("residual").asDouble()).isCloseTo(residual, within(1e-9));
    assertThat(answer.get("measurements")).hasSize(28);
  }

  @Test
  void aBlunderIsNamedAndTheExitCodeSaysSo() throws IOException {
    String file =
        changed("exhaust], over: [38, 24], mm: 337.0", "exhaust], over: [38, 24], mm: 332.0");
    assertThat(Run.of("measure", file).code()).isEqualTo(1);
    assertThat(Run.of("measure", file).out())
        .contains("Probably wrong: over crank and exhaust, read 332.0 mm")
        .contains("do not agree");
    assertThat(json("counts", file, "--json").get("measured").get("suspicious").get("read"))
        .hasToString("332");
  }

  @Test
  void aCountThatIsNotSureAsksForAMeasurement() throws IOException {
    String text = Files.readString(Path.of(MODEL));
    String less = text.replaceAll("(?m)^  - \\{ mark: exhaust.*\n", "");
    String file = Files.writeString(folder.resolve("less.yaml"), less).toString();
    assertThat(Run.of("measure", file).out())
        .contains("Measure next: mark of exhaust")
        .contains("not to be told by what was measured");
  }

  @Test
  void countsOnTheEngineProveIt() throws IOException {
    String file =
        changed(
            "  - { count: [intake, exhaust], links: 17 }",
            "  - { count: [intake, exhaust], links: 17 }\n"
                + "  - { count: [exhaust, crank], links: 50 }\n"
                + "  - { count: [crank, intake], links: 51 }");
    assertThat(json("counts", file, "--json").get("measured").get("proved").asBoolean()).isTrue();
    assertThat(Run.of("counts", file).out()).doesNotContain("not proved");
  }

  @Test
  void aPictureSaysThatItIsOnlyMeasured() throws IOException {
    Path svg = folder.resolve("m.svg");
    assertThat(Run.of("picture", MODEL, "-o", svg.toString()).code()).isZero();
    assertThat(Files.readString(svg)).contains("Measured, not proved");
  }

  @Test
  void aDriveWithoutMeasurementsIsRefused() {
    Run run = Run.of("measure", "models/two-cams-arm.yaml");
    assertThat(run.code()).isEqualTo(2);
    assertThat(run.err()).contains("nothing was measured");
  }
}
