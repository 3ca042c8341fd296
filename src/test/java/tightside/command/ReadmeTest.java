package tightside.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Every command of the README answers what the README says it does. */
class ReadmeTest {

  private static final Path README = Path.of("README.md");
  private static final String PROMPT = "$ java -jar target/tightside.jar ";

  /** One console block: the command and what it prints. */
  private record Shown(String command, List<String> answer) {}

  private static List<Shown> shown() throws IOException {
    List<Shown> all = new ArrayList<>();
    Matcher block =
        Pattern.compile("```console\\n(.*?)```", Pattern.DOTALL).matcher(Files.readString(README));
    while (block.find()) {
      List<String> lines = Arrays.asList(block.group(1).split("\n"));
      assertThat(lines.get(0)).startsWith(PROMPT);
      all.add(new Shown(lines.get(0).substring(PROMPT.length()), lines.subList(1, lines.size())));
    }
    return all;
  }

  @TestFactory
  Stream<DynamicTest> everyCommandAnswersAsShown() throws IOException {
    return shown().stream().map(s -> DynamicTest.dynamicTest(s.command(), () -> answersAsShown(s)));
  }

  private static void answersAsShown(Shown shown) {
    Run run = Run.of(shown.command().split(" "));
    assertThat(run.err()).isEmpty();
    assertThat(run.code()).isZero();
    assertThat(run.out().strip().lines()).containsExactlyElementsOf(shown.answer());
  }

  @Test
  void theTourShowsEveryVerb() throws IOException {
    assertThat(shown().stream().map(s -> s.command().split(" ")[0]))
        .contains(
            "counts",
            "reseat",
            "stretch",
            "hold-back",
            "valves",
            "explain",
            "check",
            "picture",
            "sheet");
  }

  @Test
  void whatIsNamedInPassingIsThere() throws IOException {
    String page = Files.readString(README);
    Matcher link = Pattern.compile("\\]\\(([^)#]+)\\)").matcher(page);
    while (link.find()) {
      assertThat(Path.of(link.group(1))).exists();
    }
    assertThat(Run.of("reseat", "models/v-six-two-stages.yaml", "left/left-idler=+1").code())
        .isZero();
    assertThat(Run.of("valves", "models/one-tooth-touches.yaml", "exhaust=-20").code())
        .isEqualTo(1);
    assertThat(Run.of("valves", "models/one-tooth-forgives.yaml", "exhaust=-20").code()).isZero();
    assertThat(Run.of("reseat", Run.ANSWERED, "intake=+1", "exhaust=+1").code()).isZero();
  }
}
