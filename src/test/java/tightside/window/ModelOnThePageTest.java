package tightside.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.util.List;
import org.junit.jupiter.api.Test;
import tightside.files.Model;
import tightside.files.ModelReader;
import tightside.session.SlackPage;
import tightside.session.Snapshot;

/** What a model says of its engine and its job is on the slack page from the start. */
class ModelOnThePageTest {

  private static List<String> sentences(String yaml) {
    Model model = ModelReader.parse(yaml).model().orElseThrow();
    Snapshot opened = Opening.opened(model, "a model");
    return SlackPage.of(opened).chains().stream()
        .flatMap(chain -> chain.sections().stream())
        .flatMap(section -> section.sentences().stream())
        .toList();
  }

  private static String yaml() throws IOException {
    return Files.readString(Models.file("two-cams-arm"));
  }

  @Test
  void springsSayWhichWayACamshaftGoes() throws IOException {
    assertThat(sentences(yaml()))
        .anyMatch(s -> s.startsWith("intake springs "))
        .noneMatch(s -> s.contains("is unknown: hold it both ways"));
  }

  @Test
  void withoutSpringsItIsUnknown() throws IOException {
    String bare = yaml().replaceAll(", spring: \\{[^}]*\\}", "");
    assertThat(sentences(bare)).anyMatch(s -> s.contains("is unknown: hold it both ways"));
  }

  @Test
  void pressingBackSaysHowNearValvesComeToPistons() throws IOException {
    assertThat(sentences(yaml()))
        .anyMatch(s -> s.contains("Valves come no nearer to pistons than "));
    String bare = yaml().replaceAll("(?m)^  at-reference:.*$", "");
    assertThat(sentences(bare)).anyMatch(s -> s.contains("is not known here"));
  }

  @Test
  void playOfTheModelsJobCounts() throws IOException {
    String loose = yaml() + "\njob: { locking-tool-play: 5.5 }\n";
    assertThat(sentences(loose)).anyMatch(s -> s.contains("possible while locked"));
    assertThat(sentences(yaml())).noneMatch(s -> s.contains("possible while locked"));
  }
}
