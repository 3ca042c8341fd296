package tightside.files;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.Schema;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tightside.drive.Drive;
import tightside.drive.Role;
import tightside.drive.Sprocket;
import tightside.timing.Counted;
import tightside.timing.Drives;

/** What is written reads back equal. */
class RoundTripTest {

  private static final Schema SCHEMA = SchemaTest.schema();

  private static Model read(String text) {
    ModelReading reading = ModelReader.parse(text);
    assertThat(reading.problems()).noneMatch(Problem::error);
    return reading.model().orElseThrow();
  }

  @Test
  void theAnsweredExampleReadsAsTheDriveBuiltInCode() {
    ModelReading reading = ModelReader.parse(Samples.answered());
    assertThat(reading.problems()).isEmpty();
    assertThat(reading.model()).contains(Model.of(Drives.answered()));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "/tightside/answered.yaml",
        "/tightside/files/two-wheels.yaml",
        "/tightside/files/three-wheels.yaml",
        "/tightside/files/counted.yaml",
        "/tightside/files/measured.yaml"
      })
  void everySampleReadsBackEqual(String resource) {
    Model model = read(Samples.text(resource));
    assertThat(read(ModelWriter.write(model))).isEqualTo(model);
  }

  @Test
  void everyMadeModelReadsBackEqual() {
    for (long seed = 0; seed < 100; seed++) {
      Model model = new ModelMaker(seed).next();
      String text = ModelWriter.write(model);
      assertThat(ModelReader.parse(text).model()).as("seed %d%n%s", seed, text).contains(model);
    }
  }

  @Test
  void everyMadeModelByItsCountsAloneReadsBackEqualAndIsValid() {
    for (long seed = 0; seed < 60; seed++) {
      Model made = new ModelMaker(seed).next();
      if (!made.drive().chains().stream()
          .allMatch(c -> c.sprockets().stream().anyMatch(Sprocket::marked))) {
        continue;
      }
      Drive counted = seed % 2 == 0 ? Counted.only(made.drive()) : Counted.withRuns(made.drive());
      Model model = new Model(counted, made.engine(), made.phasers(), made.job());
      String text = ModelWriter.write(model);
      assertThat(ModelReader.parse(text).model()).as("seed %d%n%s", seed, text).contains(model);
      assertThat(SchemaTest.refusals(SCHEMA, text)).as("seed %d%n%s", seed, text).isEmpty();
    }
  }

  @Test
  void writtenTwiceIsTheSameText() {
    String once = ModelWriter.write(read(Samples.answered()));
    assertThat(ModelWriter.write(read(once))).isEqualTo(once);
  }

  @Test
  void numbersAreWrittenAsAPersonWouldAndDefaultsLeftOut() {
    assertThat(ModelWriter.write(read(Samples.answered())))
        .contains("    pitch: 8\n", "mark: 343.49", "at: [-52, 301.4]", "step: 1.5 }")
        .doesNotContain("E-", "outside", "dowel", "cover-off");
  }

  @Test
  void theOrderOfShaftsAndChainsIsKept() {
    Drive drive = read(Samples.answered()).drive();
    assertThat(drive.shafts().stream().map(s -> s.role()))
        .containsExactly(Role.CRANKSHAFT, Role.CAMSHAFT, Role.CAMSHAFT);
  }
}
