package tightside.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Lessons that were taken are known from one start of the program to the next. */
class LessonMemoryTest {

  @TempDir private Path folder;

  private LessonMemory memory() {
    return LessonMemory.in(new JobFolder(folder.resolve("data")));
  }

  @Test
  void whatWasTakenIsKnownNextTime() throws IOException {
    assertThat(memory().holds("hunt | seed 1")).isFalse();
    memory().add("hunt | seed 1");
    memory().add("paint");
    assertThat(memory().holds("hunt | seed 1")).isTrue();
    assertThat(memory().holds("paint")).isTrue();
    assertThat(memory().holds("hunt | seed 2")).isFalse();
  }

  @Test
  void itsFileHoldsTheNamesAndNothingElse() throws IOException {
    memory().add("paint");
    memory().add("paint");
    assertThat(Files.readString(folder.resolve("data").resolve("lessons.txt")))
        .isEqualTo("paint\n");
  }

  @Test
  void whatCanNotBeWrittenIsKnownUntilTheProgramEnds() throws IOException {
    Files.writeString(folder.resolve("data"), "in the way");
    LessonMemory memory = memory();
    assertThatThrownBy(() -> memory.add("paint")).isInstanceOf(IOException.class);
    assertThat(memory.holds("paint")).isTrue();
  }
}
