package tightside.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Every word that can't be used gets one sentence that says what would be right, and exit code 2.
 */
class RefusalsTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "reseat models/two-cams-arm.yaml inlet=1      | its shafts are crank, intake and exhaust",
        "reseat models/two-cams-arm.yaml intake       | write SHAFT=K, such as intake=-1",
        "reseat models/two-cams-arm.yaml intake=1.5   | a whole number from -35 to 35",
        "reseat models/two-cams-arm.yaml intake=36    | a whole number from -35 to 35",
        "reseat models/two-cams-arm.yaml intake=1 intake=2 | reseated twice",
        "reseat models/two-cams-arm.yaml side/intake=1 | the chains are main",
        "reseat models/two-cams-arm.yaml              | SHAFT=K",
        "stretch models/two-cams-arm.yaml -1          | from 0 to 10",
        "stretch models/two-cams-arm.yaml 0,2         | with a decimal point",
        "stretch models/two-cams-arm.yaml NaN         | from 0 to 10",
        "stretch models/two-cams-arm.yaml side=0.2    | its chains are main",
        "stretch models/two-cams-arm.yaml 0.2 0.3     | CHAIN=PERCENT for each",
        "stretch models/two-cams-arm.yaml main=0.2 main=0.3 | stretched twice",
        "stretch models/two-cams-arm.yaml             | PERCENT",
        "valves models/two-cams-arm.yaml inlet=1      | valves hang on intake and exhaust",
        "valves models/two-cams-arm.yaml crank=1      | opens no valve of this model",
        "valves models/two-cams-arm.yaml intake       | write SHAFT=CRANKDEG, such as intake=-20",
        "valves models/two-cams-arm.yaml intake=1,5   | with a decimal point",
        "valves models/two-cams-arm.yaml intake=361   | from -360 to 360",
        "valves models/two-cams-arm.yaml intake=1 intake=2 | advanced twice",
        "valves models/counterclockwise-balancers.yaml | with bore, stroke, rod",
        "counts                                       | FILE",
        "count models/two-cams-arm.yaml               | counts",
        "counts models/two-cams-arm.yaml other.yaml   | one word too many",
        "counts models/two-cams-arm.yaml --jsn        | --jsn",
        "picture models/two-cams-arm.yaml -o a.png    | ends in .svg",
        "picture models/two-cams-arm.yaml             | -o",
        "picture models/two-cams-arm.yaml -o no/such/folder/a.svg | no/such/folder",
      })
  void oneSentenceAndExitCodeTwo(String line, String says) {
    Run run = Run.of(line.trim().split("\\s+"));
    assertThat(run.code()).isEqualTo(2);
    assertThat(run.out()).isEmpty();
    assertThat(run.err()).contains(says).doesNotContain("Exception").doesNotContain("\tat ");
    assertThat(run.err().strip().lines()).hasSize(1);
  }

  @Test
  void aMissingFileIsNamed() {
    Run run = Run.of("counts", "models/nothing.yaml");
    assertThat(run.code()).isEqualTo(2);
    assertThat(run.out()).isEmpty();
    assertThat(run.err()).startsWith("models/nothing.yaml:1:1: ");
    assertThat(run.err().strip().lines()).hasSize(1);
  }

  @Test
  void aFileWithoutAVerbIsToldWhatToDoWithIt() {
    Run run = Run.of("models/two-cams-arm.yaml");
    assertThat(run.code()).isEqualTo(2);
    assertThat(run.err())
        .contains("tightside counts models/two-cams-arm.yaml", "with no words at all");
    assertThat(run.err().strip().lines()).hasSize(1);
  }

  @Test
  void everyProblemOfAFileIsNamedWithLineAndColumn(@TempDir Path folder) throws IOException {
    Path file = folder.resolve("bad.yaml");
    String good = Files.readString(Path.of(Run.ANSWERED));
    Files.writeString(
        file, good.replace("teeth: 18", "teth: 18").replace("links: 118", "links: 1.5"));
    Run counts = Run.of("counts", file.toString());
    assertThat(counts.code()).isEqualTo(2);
    assertThat(counts.out()).isEmpty();
    assertThat(counts.err().lines()).allMatch(l -> l.matches(".*bad\\.yaml:\\d+:\\d+: .+"));
    assertThat(counts.err()).contains("did you mean").contains("teeth");
    Run check = Run.of("check", file.toString(), "--json");
    assertThat(check.code()).isEqualTo(2);
    assertThat(check.json().get("valid").asBoolean()).isFalse();
    assertThat(check.json().get("problems").size()).isGreaterThanOrEqualTo(2);
    assertThat(check.json().get("problems").get(0).propertyNames())
        .contains("line", "column", "message");
  }

  @Test
  void aNewChainThatIsTooShortMakesTheModelUnusable(@TempDir Path folder) throws IOException {
    Path file = folder.resolve("short.yaml");
    String good = Files.readString(Path.of(Run.ANSWERED));
    Files.writeString(file, good.replace("links: 118", "links: 116"));
    Run run = Run.of("stretch", file.toString(), "0.1", "--json");
    assertThat(run.code()).isEqualTo(2);
    assertThat(run.out()).isEmpty();
    assertThat(run.err()).contains("too short");
  }

  @Test
  void whereAShaftHasSeveralSprocketsTheChainIsAskedFor() {
    Run run = Run.of("reseat", "models/v-six-two-stages.yaml", "left-idler=1");
    assertThat(run.code()).isEqualTo(2);
    assertThat(run.err()).contains("/left-idler=K or ");
  }

  @Test
  void helpIsAnAnswer() {
    for (String[] words : new String[][] {{"--help"}, {"counts", "--help"}, {"reseat", "--help"}}) {
      Run run = Run.of(words);
      assertThat(run.code()).isZero();
      assertThat(run.out()).startsWith("Usage: tightside");
      assertThat(run.err()).isEmpty();
    }
    assertThat(Run.of("--help").out())
        .contains("counts", "reseat", "stretch", "hold-back", "valves", "check", "picture");
    assertThat(Run.of("--version").out()).startsWith("tightside ");
  }

  @Test
  void noWordsCountTheDemoDrive() {
    Run run = Run.of();
    assertThat(run.code()).isZero();
    assertThat(run.out()).contains("Count 50 links from the exhaust mark to the crank mark");
  }
}
