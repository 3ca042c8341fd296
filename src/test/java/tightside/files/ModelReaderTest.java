package tightside.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tightside.drive.Finding;

/** Files that are no text, texts that mean harm, and what travels with a model that can be used. */
class ModelReaderTest {

  @TempDir Path folder;

  private Problem only(ModelReading reading) {
    assertThat(reading.model()).isEmpty();
    assertThat(reading.problems()).hasSize(1);
    Problem problem = reading.problems().get(0);
    Sentences.assertReadable(problem.message());
    return problem;
  }

  private Path file(byte[] bytes) throws IOException {
    return Files.write(folder.resolve("model.yaml"), bytes);
  }

  @Test
  void aFileThatIsNotThere() {
    Problem problem = only(ModelReader.read(folder.resolve("none.yaml")));
    assertThat(problem.line()).isEqualTo(1);
    assertThat(problem.message()).contains("none.yaml");
  }

  @Test
  void aFolder() {
    assertThat(only(ModelReader.read(folder)).message()).contains("folder");
  }

  @Test
  void aFileOfMoreThanAMebibyte() throws IOException {
    byte[] most = ("#" + " ".repeat((1 << 20) - 1)).getBytes(StandardCharsets.UTF_8);
    assertThat(only(ModelReader.read(file(most))).message()).contains("nothing in this file");
    byte[] more = ("#" + " ".repeat(1 << 20)).getBytes(StandardCharsets.UTF_8);
    assertThat(only(ModelReader.read(file(more))).message()).contains("1024 KiB");
    assertThat(only(ModelReader.parse("#" + " ".repeat(1 << 20))).message()).contains("1024 KiB");
  }

  @Test
  void aFileThatIsNotUtf8IsToldAtTheFirstByteThatIsNot() throws IOException {
    byte[] latin = "tightside: 1\nname: Stück\n".getBytes(StandardCharsets.ISO_8859_1);
    Problem problem = only(ModelReader.read(file(latin)));
    assertThat(problem.line()).isEqualTo(2);
    assertThat(problem.column()).isEqualTo(9);
    assertThat(problem.message()).contains("UTF-8");
  }

  @Test
  void aFileCutOffWithinASign() throws IOException {
    byte[] cut = {'a', ':', ' ', (byte) 0xC3};
    assertThat(only(ModelReader.read(file(cut))).message()).contains("UTF-8");
  }

  @Test
  void aFileIsReadWhateverItsLineEndingsAndByteOrderMark() throws IOException {
    String text = "\uFEFF" + Samples.answered().replace("\n", "\r\n");
    ModelReading reading = ModelReader.read(file(text.getBytes(StandardCharsets.UTF_8)));
    assertThat(reading.model()).isEqualTo(ModelReader.parse(Samples.answered()).model());
  }

  @Test
  void placesAreTheSameWithWindowsLineEndings() {
    String text = Samples.answered().replace("pitch: 8.0", "pitch: eight").replace("\n", "\r\n");
    Problem problem = only(ModelReader.parse("\uFEFF" + text));
    assertThat(List.of(problem.line(), problem.column())).containsExactly(12, 12);
  }

  @Test
  void warningsTravelWithTheModel() {
    ModelReading reading = ModelReader.parse(Samples.answered().replace("mark: 23.49", "mark: 25"));
    assertThat(reading.model()).isPresent();
    assertThat(reading.problems())
        .isNotEmpty()
        .allMatch(p -> p.severity() == Finding.Severity.WARNING);
  }

  @Test
  void allThatIsWrongIsToldAtOnceInTheOrderOfTheText() {
    String text =
        Samples.answered()
            .replace("rotation: clockwise", "rotation: backwards")
            .replace("pitch: 8.0", "pitch: -8")
            .replace("links: 118", "lnks: 118")
            .replace("teeth: 18,", "teeth: many,")
            .replace("pivot: [-90, 240]", "pivot: [-90]");
    ModelReading reading = ModelReader.parse(text);
    assertThat(reading.problems().stream().map(Problem::line)).containsExactly(4, 12, 13, 17, 20);
  }

  @Test
  void afterAHundredTheRestIsCounted() {
    StringBuilder text = new StringBuilder(Samples.answered());
    for (int i = 0; i < 150; i++) {
      text.append("zz").append(i).append(": 1\n");
    }
    List<Problem> problems = ModelReader.parse(text.toString()).problems();
    assertThat(problems).hasSize(101);
    assertThat(problems.get(100).message()).contains("50 more");
    Sentences.assertReadable(problems.get(100).message());
  }

  @Test
  void aModelOfTheFutureIsNotJudgedByTheRulesOfToday() {
    assertThat(only(ModelReader.parse("tightside: 7\ncams: 3\n")).message()).contains("format 7");
  }

  private static List<String> hostile() {
    int size = 1_000_000;
    return List.of(
        "[".repeat(size),
        "{a: ".repeat(size / 4),
        "- ".repeat(size / 2),
        "? ".repeat(size / 2),
        "a: 1\n".repeat(size / 5),
        "a: &a [x]\n" + "b: [*a, *a]\n".repeat(size / 20),
        Samples.answered().replace("8.0", "8".repeat(size / 2)),
        Samples.answered().replace("8.0", "8".repeat(size / 2) + "x"),
        Samples.answered().replace("fixed", "a ".repeat(size / 4) + "b"),
        Samples.answered()
            + "      - { guide: g, face: [[86, 235], [60, 150], [44, 70]] }\n".repeat(9000));
  }

  @ParameterizedTest
  @MethodSource("hostile")
  void aTextThatMeansHarmIsRefusedInGoodTime(String text) {
    ModelReading reading =
        assertTimeoutPreemptively(Duration.ofSeconds(20), () -> ModelReader.parse(text));
    assertThat(reading.model()).isEmpty();
    assertThat(reading.problems()).hasSizeBetween(1, 101);
  }
}
