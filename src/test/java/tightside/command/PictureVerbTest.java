package tightside.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PictureVerbTest {

  @TempDir private Path folder;

  private String drawn(String... more) throws IOException {
    Path file = folder.resolve("drive.svg");
    String[] words = {"picture", Run.ANSWERED, "-o", file.toString()};
    Run run = Run.of(join(words, more));
    assertThat(run.err()).isEmpty();
    assertThat(run.code()).isZero();
    return Files.readString(file);
  }

  private static String[] join(String[] first, String[] more) {
    return java.util.stream.Stream.of(first, more)
        .flatMap(java.util.Arrays::stream)
        .toArray(String[]::new);
  }

  @Test
  void thePictureInTheReadmeIsTheOneThatIsDrawn() throws IOException {
    assertThat(drawn())
        .as("draw src/pictures/two-cams-arm.svg again with the picture verb")
        .isEqualTo(Files.readString(Path.of("src/pictures/two-cams-arm.svg")));
  }

  @Test
  void turnedReseatedAndWornPicturesDiffer() throws IOException {
    assertThat(drawn("--turn", "40")).isNotEqualTo(drawn());
    assertThat(drawn("--reseat", "exhaust=-1"))
        .contains("10.00 cam degrees")
        .contains("15 between");
    assertThat(drawn("--stretch", "0.5")).contains("22.5 of 28.0 mm out");
  }

  @Test
  void valvesAreDrawnRightAndAsTheyStand() throws IOException {
    assertThat(drawn("--valves")).contains("least 6.0 mm").doesNotContain("as it should be");
    assertThat(drawn("--valves", "--reseat", "intake=3"))
        .contains("as it should be", "touches by 0.2 mm", "class=\"touch\"");
    Path file = folder.resolve("none.svg");
    Run run = Run.of("picture", "models/v-six-two-stages.yaml", "--valves", "-o", file.toString());
    assertThat(run.code()).isEqualTo(2);
    assertThat(run.err()).contains("add a section \"engine\"");
    assertThat(file).doesNotExist();
  }

  @Test
  void aFileThatCantBeWrittenIsLeftAsItWas() throws IOException {
    Path file = folder.resolve("a-folder.svg");
    Files.createDirectory(file);
    Run run = Run.of("picture", Run.ANSWERED, "-o", file.toString());
    assertThat(run.code()).isEqualTo(2);
    assertThat(run.err()).contains("a-folder.svg").doesNotContain("Exception");
    assertThat(file).isEmptyDirectory();
    assertThat(folder).isDirectoryNotContaining(f -> f.getFileName().toString().endsWith(".part"));
  }
}
