package tightside.files;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/**
 * The right to write a job record: a small file beside it that the system keeps locked for as long
 * as this program runs, so that a program that died holds nothing. The file itself stays behind
 * then, and tells that the record was left in a hurry.
 */
final class RecordLock implements AutoCloseable {

  /**
   * What this program holds. Its files are never opened a second time: on some systems closing that
   * would let the first lock go.
   */
  private static final Set<Path> HELD = ConcurrentHashMap.newKeySet();

  /** How a record was left, by what lies beside it. */
  enum Left {
    /** Nobody writes it. */
    CLOSED,
    /** Somebody writes it now. */
    IN_USE,
    /** Who wrote it ended without closing it. */
    IN_A_HURRY
  }

  private final Path file;
  private final FileChannel channel;

  private RecordLock(Path file, FileChannel channel) {
    this.file = file;
    this.channel = channel;
  }

  static Path fileOf(Path record) throws IOException {
    Path folder = record.toAbsolutePath().getParent();
    return folder.toRealPath().resolve("." + record.getFileName() + ".lock");
  }

  /**
   * Takes the right to write a record.
   *
   * @return nothing where another window has it
   * @throws IOException where no file can be made beside the record
   */
  static Optional<RecordLock> take(Path record) throws IOException {
    Path file = fileOf(record);
    if (!HELD.add(file)) {
      return Optional.empty();
    }
    Optional<RecordLock> taken = Optional.empty();
    try {
      taken = lock(file);
      return taken;
    } finally {
      if (taken.isEmpty()) {
        HELD.remove(file);
      }
    }
  }

  private static Optional<RecordLock> lock(Path file) throws IOException {
    while (true) {
      FileChannel channel =
          FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
      boolean ours = false;
      try {
        if (channel.tryLock() == null) {
          return Optional.empty();
        }
        // Whoever had it may just have taken the file away: then the lock is on nothing.
        ours = Files.exists(file);
        if (ours) {
          return Optional.of(new RecordLock(file, channel));
        }
      } finally {
        if (!ours) {
          channel.close();
        }
      }
    }
  }

  static Left left(Path record) {
    try {
      Path file = fileOf(record);
      if (!Files.exists(file)) {
        return Left.CLOSED;
      }
      if (HELD.contains(file)) {
        return Left.IN_USE;
      }
      try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
        return channel.tryLock() == null ? Left.IN_USE : Left.IN_A_HURRY;
      }
    } catch (IOException e) {
      return Left.IN_A_HURRY;
    }
  }

  @Override
  public void close() throws IOException {
    Files.deleteIfExists(file);
    channel.close();
    HELD.remove(file);
  }
}
