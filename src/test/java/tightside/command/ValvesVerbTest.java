package tightside.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

/**
 * Angles by hand from the model's centrelines and durations, compression as in the engine's test.
 */
class ValvesVerbTest {

  private static JsonNode valve(Run run, int place) {
    return run.json().get("valves").get(place);
  }

  @Test
  void everyFieldOfTheFormat() {
    Run run = Run.of("valves", Run.ANSWERED, "--json");
    assertThat(run.code()).isZero();
    assertThat(run.err()).isEmpty();
    JsonNode intake = valve(run, 0);
    assertThat(intake.get("shaft").asString()).isEqualTo("intake");
    assertThat(intake.get("opens").asDouble()).isEqualTo(-8);
    assertThat(intake.get("closes").asDouble()).isEqualTo(224);
    assertThat(intake.get("clearance").asDouble()).isBetween(5.9, 6.0);
    assertThat(intake.get("clearanceAt").asDouble()).isBetween(0.0, 2.0);
    assertThat(intake.get("contact").asBoolean()).isFalse();
    assertThat(valve(run, 1).get("closes").asDouble()).isEqualTo(4);
    JsonNode compression = run.json().get("compression");
    assertThat(compression.get("nominal").asDouble()).isEqualTo(10.5);
    assertThat(compression.get("closed").asDouble()).isCloseTo(9.4969, within(1e-4));
    assertThat(run.json().get("overlap").asDouble()).isEqualTo(12);
    assertThat(run.json().get("teeth").get(0).get("lays")).hasSize(9);
  }

  @Test
  void anAdvancedShaftOpensEarlierAndLeavesTheOtherAlone() {
    Run run = Run.of("valves", Run.ANSWERED, "intake=20.5", "--json");
    assertThat(run.code()).isZero();
    assertThat(valve(run, 0).get("opens").asDouble()).isEqualTo(-28.5);
    assertThat(valve(run, 1).get("opens").asDouble()).isEqualTo(-224);
    assertThat(valve(run, 0).get("clearance").asDouble()).isLessThan(5);
  }

  @Test
  void aContactIsExitCodeOneAndACaution() {
    Run json = Run.of("valves", Run.ANSWERED, "intake=60", "exhaust=-20", "--json");
    assertThat(json.code()).isEqualTo(1);
    assertThat(valve(json, 0).get("contact").asBoolean()).isTrue();
    assertThat(valve(json, 0).get("clearance").asDouble()).isNegative();
    assertThat(valve(json, 1).get("contact").asBoolean()).isFalse();
    Run text = Run.of("valves", Run.ANSWERED, "intake=60");
    assertThat(text.code()).isEqualTo(1);
    assertThat(text.out()).contains("TOUCHES THE PISTON, 0.2 mm").contains("Do not crank");
    assertThat(Run.of("valves", Run.ANSWERED).out()).doesNotContain("Do not crank");
    assertThat(Run.of("valves", "--help").out()).contains("exit code is 1");
  }

  @Test
  void aPhaserIsTriedOverItsTravel(@TempDir Path folder) throws IOException {
    Path file = folder.resolve("phaser.yaml");
    Files.writeString(
        file,
        Files.readString(Path.of(Run.ANSWERED))
            .replace(
                "at: [-52, 301.4] }",
                "at: [-52, 301.4], phaser: { travel: 30, rest: retarded } }"));
    Run run = Run.of("valves", file.toString(), "--json");
    JsonNode phaser = run.json().get("phasers").get(0);
    assertThat(run.code()).as("a phaser goes to its end in every drive").isEqualTo(1);
    assertThat(valve(run, 0).get("contact").asBoolean()).isFalse();
    assertThat(phaser.get("crankDegrees").asDouble()).isEqualTo(60);
    assertThat(phaser.get("contact").asBoolean()).isTrue();
    assertThat(Run.of("valves", file.toString()).out())
        .contains("with the phaser 60.0 crank degrees ahead of its rest")
        .contains("Do not crank");
    Files.writeString(file, Files.readString(file).replace("travel: 30", "travel: 10"));
    assertThat(Run.of("valves", file.toString()).code()).isZero();
  }

  @Test
  void withoutAtReferenceItSaysThatItIsAssumed(@TempDir Path folder) throws IOException {
    Path file = folder.resolve("no-reference.yaml");
    String model = Files.readString(Path.of("models/one-tooth-touches.yaml"));
    Files.writeString(file, model.replaceAll("(?m)^ +at-reference: .*\\n", ""));
    JsonNode assumed = Run.of("valves", file.toString(), "--json").json().get("atReference");
    assertThat(assumed.get("assumed").asBoolean()).isTrue();
    assertThat(assumed.get("crankDegrees").asDouble()).isZero();
    assertThat(Run.of("valves", file.toString()).out()).contains("  Assumed: cylinder 1 stands at");
    Run known = Run.of("valves", "models/one-tooth-touches.yaml", "--json");
    assertThat(known.json().get("atReference").get("assumed").asBoolean()).isFalse();
    assertThat(known.json().get("atReference").get("crankDegrees").asDouble()).isEqualTo(360);
    assertThat(Run.of("valves", "models/one-tooth-touches.yaml").out())
        .doesNotContain("Assumed")
        .contains("Valve against valve is not reckoned.");
  }

  @Test
  void withoutAnIntakeValveTheCompressionIsNotKnown(@TempDir Path folder) throws IOException {
    Path file = folder.resolve("exhaust-only.yaml");
    String model = Files.readString(Path.of(Run.ANSWERED));
    Files.writeString(file, model.replaceAll("(?m)^ +- \\{ shaft: intake.*\\n", ""));
    Run run = Run.of("valves", file.toString(), "--json");
    assertThat(run.json().get("compression").get("closed").isNull()).isTrue();
    assertThat(run.json().get("valves")).hasSize(1);
    assertThat(Run.of("valves", file.toString()).out()).contains("is not known");
  }
}
