package tightside.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tightside.record.Jobs;

/** Where jobs are kept until a person says where. */
class JobFolderTest {

  private static final ZonedDateTime NOW = Jobs.BEGUN.atZone(ZoneOffset.UTC);

  @TempDir Path home;

  private JobFolder folder() {
    return new JobFolder(home.resolve("tightside"));
  }

  private static String root(Map<String, String> environment, String system) {
    return JobFolder.ofUser(environment, "/home/a", system).root().toString();
  }

  /** XDG Base Directory Specification 0.8: a relative path is invalid and is to be ignored. */
  @Test
  void theFolderIsWhereTheDesktopKeepsData() {
    assertThat(root(Map.of(), "Linux")).isEqualTo("/home/a/.local/share/tightside");
    assertThat(root(Map.of("XDG_DATA_HOME", "/data"), "Linux")).isEqualTo("/data/tightside");
    assertThat(root(Map.of("XDG_DATA_HOME", "data"), "Linux"))
        .isEqualTo("/home/a/.local/share/tightside");
    assertThat(root(Map.of(), "Mac OS X")).startsWith("/home/a/Library/Application Support");
  }

  @Test
  void aJobWithoutAFileOfItsOwnIsFoundAgain() throws IOException {
    Path file = folder().fresh(NOW, "Two cams: \u201earm/slack\u201c");
    assertThat(file.getFileName()).hasToString("2026-03-02 13.05 Two cams arm slack.tightside-job");
    RecordFile record = RecordFile.fresh(file);
    record.save(Jobs.record(1, 3));
    assertThat(folder().found()).as("while it is open").isEmpty();
    record.close();
    assertThat(folder().found()).containsExactly(new JobFolder.Found(file, true, false));
    Files.createFile(RecordLock.fileOf(file));
    assertThat(folder().found()).containsExactly(new JobFolder.Found(file, true, true));
    assertThat(folder().fresh(NOW, "Two cams: \u201earm/slack\u201c").getFileName())
        .hasToString("2026-03-02 13.05 Two cams arm slack 2.tightside-job");
  }

  @Test
  void theLastUsedStandsFirstAndWhatIsGoneIsLeftOut() throws IOException {
    Path a = Files.createFile(home.resolve("a.tightside-job"));
    Path b = Files.createFile(home.resolve("b.tightside-job"));
    for (Path file : new Path[] {a, home.resolve("gone"), b, a}) {
      folder().remember(file);
    }
    assertThat(folder().found().stream().map(JobFolder.Found::file)).containsExactly(a, b);
    assertThat(folder().found().get(0).unnamed()).isFalse();
  }

  @Test
  void whereNoFolderCanBeMadeItIsSaid() throws IOException {
    Files.createFile(home.resolve("tightside"));
    IOException refusal =
        catchThrowableOfType(IOException.class, () -> folder().fresh(NOW, "drive"));
    Sentences.assertReadable(refusal.getMessage());
    assertThat(refusal.getMessage()).contains("save this job elsewhere");
    assertThat(folder().found()).isEmpty();
  }
}
