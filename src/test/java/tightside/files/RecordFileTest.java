package tightside.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.channels.FileLock;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tightside.files.Autosave.Outcome;
import tightside.record.Event;
import tightside.record.JobRecord;
import tightside.record.Jobs;

/** Job records on disks that fail, that fill up, and that somebody else writes to. */
class RecordFileTest {

  private static final JobRecord FEW = Jobs.record(1, 5);
  private static final JobRecord MORE = FEW.with(new Event.Noted(Jobs.BEGUN, "One more."));

  @TempDir Path folder;

  private Path file() {
    return folder.resolve("job" + RecordFile.ENDING);
  }

  private static String refusal(RecordFile file, JobRecord record) {
    IOException refusal = catchThrowableOfType(IOException.class, () -> file.save(record));
    assertThat(refusal).as("refusal").isNotNull();
    Sentences.assertReadable(refusal.getMessage());
    return refusal.getMessage();
  }

  private List<String> names() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(f -> f.getFileName().toString()).sorted().toList();
    }
  }

  @Test
  void whatIsSavedIsReadAndNothingElseIsLeftOnceItIsClosed() throws IOException {
    try (RecordFile file = RecordFile.fresh(file())) {
      file.save(FEW);
      file.save(MORE);
      assertThat(RecordReader.read(file()).record()).contains(MORE);
    }
    assertThat(names()).containsExactly("job.tightside-job");
  }

  /** A disk on which there is room for no more than so many bytes in all. */
  private static WholeFiles.Disk withRoomFor(int bytes) {
    return new WholeFiles.Disk() {
      @Override
      public void write(Path file, byte[] all) throws IOException {
        if (all.length > bytes) {
          Files.write(file, java.util.Arrays.copyOf(all, bytes));
          throw new IOException("No space left on device");
        }
        WholeFiles.Disk.super.write(file, all);
      }
    };
  }

  @Test
  void onAFullDiskTheOldRecordStays() throws IOException {
    int room = RecordText.of(FEW).bytes().length;
    try (RecordFile file = RecordFile.fresh(file(), withRoomFor(room))) {
      file.save(FEW);
      assertThat(refusal(file, MORE)).contains("free space");
      assertThat(RecordReader.read(file()).record()).contains(FEW);
      assertThat(names()).noneMatch(name -> name.endsWith(".part"));
    }
  }

  @Test
  void wherePermissionIsMissingItIsSaid() throws IOException {
    WholeFiles.Disk closed =
        new WholeFiles.Disk() {
          @Override
          public boolean mayWrite(Path file) {
            return false;
          }
        };
    try (RecordFile file = RecordFile.fresh(file(), closed)) {
      assertThat(refusal(file, FEW)).contains("nothing may be written in the folder");
    }
  }

  @Test
  void placesThatAreNoPlacesAreNamed() throws IOException {
    try (RecordFile file = RecordFile.fresh(folder.resolve("gone/job.tightside-job"))) {
      assertThat(refusal(file, FEW)).contains("there is no folder", "gone");
    }
    Path plain = Files.writeString(folder.resolve("plain"), "");
    try (RecordFile file = RecordFile.fresh(plain.resolve("job.tightside-job"))) {
      assertThat(refusal(file, FEW)).contains("there is no folder");
    }
    Path inner = Files.createDirectory(file());
    try (RecordFile file = RecordFile.fresh(inner)) {
      assertThat(refusal(file, FEW)).contains("there already");
    }
    try (RecordFile file = RecordFile.fresh(Path.of("/dev/full/job.tightside-job"))) {
      assertThat(refusal(file, FEW)).contains("there is no folder");
    }
  }

  @Test
  void aFolderThatVanishesTakesNothingAlong() throws IOException {
    Path inner = Files.createDirectory(folder.resolve("stick"));
    try (RecordFile file = RecordFile.fresh(inner.resolve("job.tightside-job"))) {
      file.save(FEW);
      Files.move(inner, folder.resolve("elsewhere"));
      assertThat(refusal(file, MORE)).contains("there is no folder");
      Files.move(folder.resolve("elsewhere"), inner);
      file.save(MORE);
      assertThat(RecordReader.read(file.path()).record()).contains(MORE);
    }
  }

  @Test
  void aRecordIsNeverWrittenOverAnotherOne() throws IOException {
    Files.writeString(file(), "another");
    try (RecordFile file = RecordFile.fresh(file())) {
      assertThat(refusal(file, FEW)).contains("there already");
    }
    assertThat(file()).hasContent("another");
  }

  @Test
  void whatAnotherProgramWroteStays() throws IOException {
    try (RecordFile file = RecordFile.fresh(file())) {
      file.save(FEW);
      Files.writeString(file(), "another");
      assertThat(refusal(file, MORE)).contains("changed by another program");
      assertThat(file()).hasContent("another");
    }
  }

  @Test
  void oneWindowWritesARecordAtATime() throws IOException {
    RecordFile first = RecordFile.fresh(file());
    first.save(FEW);
    RecordFile second = RecordFile.open(file()).file();
    assertThat(refusal(second, MORE)).contains("open in another window");
    assertThat(RecordLock.left(file())).isEqualTo(RecordLock.Left.IN_USE);
    first.close();
    second.save(MORE);
    second.close();
    assertThat(RecordReader.read(file()).record()).contains(MORE);
    assertThat(RecordLock.left(file())).isEqualTo(RecordLock.Left.CLOSED);
  }

  @Test
  void aLockThatNobodyHoldsAnyMoreTellsOfAHurry() throws IOException {
    try (RecordFile file = RecordFile.fresh(file())) {
      file.save(FEW);
    }
    Path lock = RecordLock.fileOf(file());
    try (RandomAccessFile other = new RandomAccessFile(lock.toFile(), "rw");
        FileLock held = other.getChannel().lock()) {
      assertThat(held.isValid()).isTrue();
    }
    assertThat(RecordLock.left(file())).isEqualTo(RecordLock.Left.IN_A_HURRY);
    try (RecordFile file = RecordFile.open(file()).file()) {
      file.save(MORE);
    }
    assertThat(RecordLock.left(file())).isEqualTo(RecordLock.Left.CLOSED);
  }

  @Test
  void whatCouldNotBeSavedIsSavedWithTheNextChange() throws IOException {
    Clock clock = Clock.fixed(Instant.EPOCH, ZoneOffset.UTC);
    List<Outcome> outcomes = new ArrayList<>();
    List<Runnable> work = new ArrayList<>();
    Path inner = folder.resolve("later");
    try (RecordFile file = RecordFile.fresh(inner.resolve("job.tightside-job"))) {
      Autosave autosave = new Autosave(() -> file, work::add, clock, (by, o) -> outcomes.add(o));
      autosave.changed(FEW);
      work.remove(0).run();
      assertThat(outcomes).singleElement().isInstanceOf(Outcome.Failed.class);
      Files.createDirectory(inner);
      autosave.changed(FEW);
      autosave.changed(MORE);
      assertThat(work).as("changes that wait for one write").hasSize(1);
      work.remove(0).run();
      assertThat(outcomes).hasSize(2).endsWith(new Outcome.Saved(MORE, Instant.EPOCH));
      assertThat(RecordReader.read(file.path()).record()).contains(MORE);
    }
  }
}
