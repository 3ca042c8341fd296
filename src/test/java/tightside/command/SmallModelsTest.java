package tightside.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

/** What is said where a model leaves something out. */
class SmallModelsTest {

  @TempDir private Path folder;

  private Run counts(String taken, String put, String... options) throws IOException {
    String answered = Files.readString(Path.of(Run.ANSWERED));
    assertThat(answered).containsPattern(taken);
    Path file = Files.writeString(folder.resolve("model.yaml"), answered.replaceFirst(taken, put));
    List<String> words = new ArrayList<>(List.of("counts", file.toString()));
    words.addAll(List.of(options));
    return Run.of(words.toArray(String[]::new));
  }

  @Test
  void withNothingToSayAboutItOneBlankLineFollowsTheName() throws IOException {
    Run run = counts("about: .*\n", "");
    assertThat(run.out().lines().skip(1).limit(2).toList())
        .satisfiesExactly(
            first -> assertThat(first).isEmpty(),
            second -> assertThat(second).startsWith("Chain main"));
  }

  @Test
  void aCrankshaftWithoutAMarkIsNotSaidToBeUntimed() throws IOException {
    Run run = counts("teeth: 18, mark: 180", "teeth: 18");
    assertThat(run.code()).isZero();
    assertThat(run.out())
        .contains("Count 101 links from the exhaust mark to the intake mark")
        .contains("crank on chain main bears no mark: no count starts or ends there")
        .doesNotContain("nothing is said about its timing");
  }

  @Test
  void theSlackSideIsNoMoreToBeTrustedThanTheCountsThatLeaveIt() throws IOException {
    Run run = counts("mark: 343.49", "mark: 347");
    assertThat(run.code()).isEqualTo(1);
    assertThat(run.out()).contains("nor the count of the slack side");
    Run json = counts("mark: 343.49", "mark: 347", "--json");
    JsonNode strands = json.json().get("chains").get(0).get("strands");
    assertThat(strands.valueStream().map(s -> s.get("trusted").asBoolean()))
        .containsExactly(false, false, true);
  }
}
