package tightside.models;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import tightside.files.ModelReader;
import tightside.timing.SecondOpinion;

/** Every model is solved twice, by programs that share no class. */
class SecondOpinionOnModelsTest {

  @TestFactory
  Stream<DynamicTest> bothSolversAgreeOnEveryModel() throws IOException {
    List<Path> files;
    try (Stream<Path> folder = Files.list(Path.of("models"))) {
      files = folder.filter(f -> f.toString().endsWith(".yaml")).sorted().toList();
    }
    assertThat(files).hasSizeGreaterThanOrEqualTo(4);
    return files.stream()
        .filter(f -> !ModelReader.read(f).model().orElseThrow().drive().countedOnly())
        .map(
            file ->
                DynamicTest.dynamicTest(
                    file.getFileName().toString(),
                    () ->
                        SecondOpinion.compare(
                            ModelReader.read(file).model().orElseThrow().drive())));
  }
}
