package tightside.files;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.Set;

/**
 * Which lessons were taken on this computer, a line each in a file of the program's own folder: the
 * fact alone, and nothing of what was wrong or what was written.
 */
public final class LessonMemory {

  private final Path file;

  /** What could not be written is known as long as the program runs. */
  private final Set<String> taken = new LinkedHashSet<>();

  private LessonMemory(Path file) {
    this.file = file;
  }

  public static LessonMemory in(JobFolder folder) {
    return new LessonMemory(folder.root().resolve("lessons.txt"));
  }

  /** Whether a lesson was taken before, by its name; it may read the file. */
  public synchronized boolean holds(String name) {
    read();
    return taken.contains(name);
  }

  /**
   * Notes that a lesson is taken.
   *
   * @throws IOException with one sentence for people; it is known all the same until the program
   *     ends
   */
  public synchronized void add(String name) throws IOException {
    read();
    if (taken.add(name)) {
      Files.createDirectories(file.getParent());
      String text = String.join("\n", taken) + "\n";
      WholeFiles.replace(file, text.getBytes(StandardCharsets.UTF_8));
    }
  }

  private void read() {
    try {
      if (Files.isRegularFile(file)) {
        taken.addAll(Files.readAllLines(file, StandardCharsets.UTF_8));
      }
    } catch (IOException e) {
      // Nothing is known of lessons that were taken before.
    }
  }
}
