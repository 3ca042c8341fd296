package tightside.files;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import tightside.record.JobRecord;
import tightside.record.Sha256;

/**
 * The file of one job record, for as long as it is written here. It is replaced whole each time;
 * what another program did to it is never written over.
 */
public final class RecordFile implements AutoCloseable {

  /** How the names of job records end. */
  public static final String ENDING = ".tightside-job";

  private final Path path;
  private final WholeFiles.Disk disk;
  private Optional<RecordLock> lock = Optional.empty();

  /** Digest of what this program last knew the file to hold; none where there is to be no file. */
  private Optional<String> known;

  private boolean closed;

  private RecordFile(Path path, Optional<String> known, WholeFiles.Disk disk) {
    this.path = path;
    this.known = known;
    this.disk = disk;
  }

  /** A file that is yet to be made. */
  public static RecordFile fresh(Path path) {
    return fresh(path, new WholeFiles.Disk() {});
  }

  static RecordFile fresh(Path path, WholeFiles.Disk disk) {
    return new RecordFile(path, Optional.empty(), disk);
  }

  /**
   * A file with what came of reading it.
   *
   * @param file to go on writing
   */
  public record Opened(RecordFile file, RecordReading reading) {}

  /** Reads a file to go on with it. */
  public static Opened open(Path path) {
    return open(path, new WholeFiles.Disk() {});
  }

  static Opened open(Path path, WholeFiles.Disk disk) {
    try {
      byte[] bytes = RecordReader.bytes(path);
      return new Opened(
          new RecordFile(path, Optional.of(Sha256.of(bytes)), disk),
          RecordReader.parse(bytes, path));
    } catch (IOException e) {
      return new Opened(new RecordFile(path, Optional.empty(), disk), RecordReader.read(path));
    }
  }

  public Path path() {
    return path;
  }

  /**
   * Writes the record, whole or not at all.
   *
   * @throws IOException with one sentence for people; the file is as it was
   */
  public synchronized void save(JobRecord record) throws IOException {
    if (closed) {
      throw refusal(Fault.RECORD_LEFT);
    }
    byte[] bytes = RecordText.of(record).bytes();
    takeLock();
    refuseOthersWork();
    WholeFiles.replace(path, bytes, disk, "." + path.getFileName() + ".part");
    known = Optional.of(Sha256.of(bytes));
  }

  private void takeLock() throws IOException {
    if (lock.isPresent()) {
      return;
    }
    Path folder = path.toAbsolutePath().getParent();
    if (folder == null || !Files.isDirectory(folder)) {
      throw refusal(Fault.FOLDER_MISSING);
    }
    try {
      lock = RecordLock.take(path);
    } catch (IOException e) {
      throw refusal(disk.mayWrite(folder) ? Fault.FILE_NOT_WRITTEN : Fault.FOLDER_CLOSED);
    }
    if (lock.isEmpty()) {
      throw refusal(Fault.RECORD_IN_USE);
    }
  }

  private void refuseOthersWork() throws IOException {
    if (!Files.exists(path)) {
      return;
    }
    if (known.isEmpty()) {
      throw refusal(Fault.RECORD_THERE);
    }
    String there;
    try {
      there = Sha256.of(RecordReader.bytes(path));
    } catch (IOException e) {
      throw refusal(Fault.FILE_NOT_PLAIN);
    }
    if (!known.get().equals(there)) {
      throw refusal(Fault.RECORD_ELSEWHERE);
    }
  }

  private IOException refusal(Fault fault) {
    Path folder = path.toAbsolutePath().getParent();
    return new IOException(
        Catalogue.sentence(fault, Map.of("path", path.toString(), "folder", folder.toString())));
  }

  /** Takes the file away, once the record is kept elsewhere and if nobody else has changed it. */
  public synchronized void remove() {
    try {
      refuseOthersWork();
      Files.deleteIfExists(path);
      known = Optional.empty();
    } catch (IOException e) {
      // It stays, as a second copy of what is kept elsewhere.
    }
    close();
  }

  /** Lets others write it, and writes it no more. */
  @Override
  public synchronized void close() {
    try {
      if (lock.isPresent()) {
        lock.get().close();
      }
    } catch (IOException e) {
      // The file beside it stays, and the record is offered as one that was left in a hurry.
    }
    lock = Optional.empty();
    closed = true;
  }
}
