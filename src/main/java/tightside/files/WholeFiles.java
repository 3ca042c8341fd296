package tightside.files;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.CopyOption;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFileAttributeView;
import java.util.Map;

/**
 * Writes files whole or not at all: into a temporary file beside the target, down to the disk, then
 * moved over the target in one step.
 */
public final class WholeFiles {

  /** The steps that a disk may fail at. */
  interface Disk {

    /** Writes all bytes into a new file and waits until they are on the disk. */
    default void write(Path file, byte[] bytes) throws IOException {
      try (FileChannel channel =
          FileChannel.open(file, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
        ByteBuffer rest = ByteBuffer.wrap(bytes);
        while (rest.hasRemaining()) {
          channel.write(rest);
        }
        channel.force(true);
      }
    }

    default void move(Path from, Path to) throws IOException {
      CopyOption[] whole = {StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING};
      Files.move(from, to, whole);
    }

    default boolean mayWrite(Path file) {
      return Files.isWritable(file);
    }
  }

  private WholeFiles() {}

  /**
   * Puts bytes in place of what a file holds, or into a new file. A link is followed.
   *
   * @throws IOException with one sentence for people, the old file being as it was
   */
  public static void replace(Path target, byte[] bytes) throws IOException {
    replace(target, bytes, new Disk() {});
  }

  static void replace(Path target, byte[] bytes, Disk disk) throws IOException {
    replace(target, bytes, disk, ".tightside-" + Long.toHexString(System.nanoTime()) + ".part");
  }

  /**
   * @param part name of the temporary file; one that an earlier program left is taken away, so that
   *     nobody else may be writing it
   */
  static void replace(Path target, byte[] bytes, Disk disk, String part) throws IOException {
    Path file = Files.exists(target) ? target.toRealPath() : target.toAbsolutePath();
    refuseHopeless(file, target, disk);
    Path beside = file.resolveSibling(part);
    try {
      Files.deleteIfExists(beside);
      disk.write(beside, bytes);
      keepPermissions(file, beside);
      disk.move(beside, file);
      settle(file.getParent());
    } catch (IOException e) {
      throw failure(Fault.FILE_NOT_WRITTEN, target, file, e);
    } finally {
      forget(beside);
    }
  }

  /** A disk that failed may refuse this too; what it failed at has been said then. */
  private static void forget(Path beside) {
    try {
      Files.deleteIfExists(beside);
    } catch (IOException e) {
      return;
    }
  }

  private static void refuseHopeless(Path file, Path target, Disk disk) throws IOException {
    Path folder = file.getParent();
    if (folder == null || !Files.isDirectory(folder)) {
      throw failure(Fault.FOLDER_MISSING, target, file, null);
    }
    if (!disk.mayWrite(folder)) {
      throw failure(Fault.FOLDER_CLOSED, target, file, null);
    }
    if (Files.exists(file) && !Files.isRegularFile(file)) {
      throw failure(Fault.FILE_NOT_PLAIN, target, file, null);
    }
    if (Files.exists(file) && !disk.mayWrite(file)) {
      throw failure(Fault.FILE_PROTECTED, target, file, null);
    }
  }

  private static IOException failure(Fault fault, Path target, Path file, IOException cause) {
    String folder = file.getParent() == null ? file.toString() : file.getParent().toString();
    Map<String, Object> facts = Map.of("path", target.toString(), "folder", folder);
    return new IOException(Catalogue.sentence(fault, facts), cause);
  }

  private static void keepPermissions(Path from, Path to) throws IOException {
    PosixFileAttributeView old = Files.getFileAttributeView(from, PosixFileAttributeView.class);
    if (old != null && Files.exists(from)) {
      Files.setPosixFilePermissions(to, old.readAttributes().permissions());
    }
  }

  /** Brings the move itself to the disk, where the system lets a folder be opened. */
  private static void settle(Path folder) {
    try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
      channel.force(true);
    } catch (IOException e) {
      return;
    }
  }
}
