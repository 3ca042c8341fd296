package tightside.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tightside.files.WholeFiles.Disk;

/** A file is written whole, or stays as it was. */
class WholeFilesTest {

  private static final byte[] NEW = "new".getBytes(StandardCharsets.UTF_8);

  @TempDir Path folder;

  private Path old() throws IOException {
    return Files.writeString(folder.resolve("model.yaml"), "old");
  }

  private List<String> names() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(f -> f.getFileName().toString()).sorted().toList();
    }
  }

  private void assertRefused(Path target, Disk disk, String word) {
    IOException refusal =
        catchThrowableOfType(IOException.class, () -> WholeFiles.replace(target, NEW, disk));
    assertThat(refusal).isNotNull();
    assertThat(refusal.getMessage()).contains(word, target.getFileName().toString());
    Sentences.assertReadable(refusal.getMessage());
  }

  @Test
  void aNewFileHoldsTheBytesAndNothingElseIsLeft() throws IOException {
    WholeFiles.replace(folder.resolve("model.yaml"), NEW);
    assertThat(folder.resolve("model.yaml")).hasBinaryContent(NEW);
    assertThat(names()).containsExactly("model.yaml");
  }

  @Test
  void anOldFileIsReplacedAndKeepsItsPermissions() throws IOException {
    Path target = old();
    Files.setPosixFilePermissions(target, PosixFilePermissions.fromString("rw-r-----"));
    WholeFiles.replace(target, NEW);
    assertThat(target).hasBinaryContent(NEW);
    assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(target)))
        .isEqualTo("rw-r-----");
  }

  @Test
  void aLinkIsFollowedAndStaysALink() throws IOException {
    Path target = old();
    Path link = Files.createSymbolicLink(folder.resolve("link.yaml"), target);
    WholeFiles.replace(link, NEW);
    assertThat(Files.isSymbolicLink(link)).isTrue();
    assertThat(target).hasBinaryContent(NEW);
  }

  @Test
  void aWriteThatFailsHalfWayLeavesTheOldFileAndNoOther() throws IOException {
    Path target = old();
    Disk full =
        new Disk() {
          @Override
          public void write(Path file, byte[] bytes) throws IOException {
            Files.write(file, new byte[] {bytes[0]});
            throw new IOException("No space left on device");
          }
        };
    assertRefused(target, full, "could not be written");
    assertThat(target).hasContent("old");
    assertThat(names()).containsExactly("model.yaml");
  }

  @Test
  void aMoveThatFailsLeavesTheOldFileAndNoOther() throws IOException {
    Path target = old();
    Disk stuck =
        new Disk() {
          @Override
          public void move(Path from, Path to) throws IOException {
            throw new IOException("busy");
          }
        };
    assertRefused(target, stuck, "could not be written");
    assertThat(target).hasContent("old");
    assertThat(names()).containsExactly("model.yaml");
  }

  private static Disk closed(Path what) {
    return new Disk() {
      @Override
      public boolean mayWrite(Path file) {
        return !file.equals(what);
      }
    };
  }

  @Test
  void aProtectedFileIsNotWrittenOver() throws IOException {
    Path target = old().toRealPath();
    assertRefused(target, closed(target), "protection");
    assertThat(target).hasContent("old");
  }

  @Test
  void aClosedFolderIsNamed() throws IOException {
    Path target = folder.toRealPath().resolve("model.yaml");
    assertRefused(target, closed(target.getParent()), "nothing may be written");
  }

  @Test
  void aMissingFolderIsNamed() {
    assertRefused(folder.resolve("none/model.yaml"), new Disk() {}, "no folder");
  }

  @Test
  void aFileIsNoFolder() throws IOException {
    old();
    assertRefused(folder.resolve("model.yaml/other.yaml"), new Disk() {}, "no folder");
  }

  @Test
  void aFolderIsNotWrittenOver() throws IOException {
    Path inner = Files.createDirectory(folder.resolve("inner"));
    assertRefused(inner, new Disk() {}, "folder");
    assertThat(inner).isDirectory();
  }
}
