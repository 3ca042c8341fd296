package tightside.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Random;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tightside.studies.Kills;

/** A program that is really killed leaves a whole record that lacks the last second at most. */
class KillTest {

  private static final long SECOND_MS = 1000;

  @TempDir Path folder;

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5})
  void nothingButTheLastSecondIsLost(long seed) throws IOException, InterruptedException {
    Path file = folder.resolve("job" + RecordFile.ENDING);
    Kills.Left left = Kills.kill(file, new Random(seed));
    assertThat(left.damage()).isEmpty();
    assertThat(left.entered()).isPositive();
    assertThat(left.unkept()).isZero();
    assertThat(left.lostMs()).isLessThan(SECOND_MS + 3 * left.stallMs());
  }
}
