package tightside.timing;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tightside.drive.Drive;

/** The two solvers say the same, and share nothing. */
class SecondOpinionTest {

  private static final long SEEDS = 80;

  static LongStream seeds() {
    return LongStream.range(0, SEEDS);
  }

  @Test
  void ofTheAnsweredExample() {
    SecondOpinion.compare(Drives.answered());
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void ofARandomDrive(long seed) {
    SecondOpinion.compare(RandomDrives.of(seed));
  }

  @Test
  void theSecondSolverSharesNothingWithTheFirst() {
    noClasses()
        .that()
        .resideInAPackage("tightside.second")
        .should()
        .dependOnClassesThat()
        .resideOutsideOfPackages("tightside.second", "java..")
        .because("what they share they could both have wrong")
        .check(new ClassFileImporter().importPackages("tightside.second"));
  }

  /** Of the loops drawn about two in nine fit; were it far fewer, the drives would be all alike. */
  @Test
  void randomDrivesAreManifold() {
    long drawn = 0;
    long kept = 0;
    long twoStages = 0;
    long arms = 0;
    for (long seed = 0; seed < 40; seed++) {
      int[] counts = RandomDrives.drawnAndKept(seed);
      drawn += counts[0];
      kept += counts[1];
      Drive drive = RandomDrives.of(seed);
      twoStages += drive.chains().size() - 1;
      arms += drive.chains().stream().filter(c -> c.tensioner().isPresent()).count();
    }
    assertThat((double) kept / drawn).isGreaterThan(0.1);
    assertThat(twoStages).isBetween(5L, 35L);
    assertThat(arms).isBetween(10L, kept - 3);
  }
}
