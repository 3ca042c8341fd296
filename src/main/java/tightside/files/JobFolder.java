package tightside.files;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Where jobs are kept until a person gives them a file, and which ones were open last: a folder of
 * the program's own under the user's home. Nothing in it leaves the computer.
 */
public record JobFolder(Path root) {

  private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("yyyy-MM-dd HH.mm");
  private static final int NAME_MOST = 40;
  private static final int RECENT_MOST = 12;

  /**
   * A job that can be taken up again.
   *
   * @param unnamed whether nobody has given it a file yet
   * @param inAHurry whether the program ended while it was open
   */
  public record Found(Path file, boolean unnamed, boolean inAHurry) {}

  /**
   * The folder of a user, as the desktop's base directory specification has it (XDG Base Directory
   * Specification 0.8: {@code $XDG_DATA_HOME}, by default {@code ~/.local/share}), and as is
   * customary elsewhere.
   *
   * @param environment of the program
   * @param home of the user
   * @param system by name, as Java knows it
   */
  public static JobFolder ofUser(Map<String, String> environment, String home, String system) {
    String name = system.toLowerCase(Locale.ROOT);
    String usual = environment.getOrDefault("XDG_DATA_HOME", "");
    if (name.startsWith("windows") && environment.containsKey("APPDATA")) {
      return new JobFolder(Path.of(environment.get("APPDATA"), "Tightside"));
    } else if (name.startsWith("mac")) {
      return new JobFolder(Path.of(home, "Library", "Application Support", "Tightside"));
    }
    Path data = usual.startsWith("/") ? Path.of(usual) : Path.of(home, ".local", "share");
    return new JobFolder(data.resolve("tightside"));
  }

  private Path jobs() {
    return root.resolve("jobs");
  }

  private Path list() {
    return root.resolve("recent.txt");
  }

  /** A file that is not there yet, for a job that nobody has given one; its folder is made. */
  public Path fresh(ZonedDateTime now, String model) throws IOException {
    make(jobs());
    String name = DAY.format(now) + " " + plain(model);
    for (int i = 1; ; i++) {
      Path file = jobs().resolve(name + (i == 1 ? "" : " " + i) + RecordFile.ENDING);
      if (!Files.exists(file) && RecordLock.left(file) == RecordLock.Left.CLOSED) {
        return file;
      }
    }
  }

  private static void make(Path folder) throws IOException {
    try {
      Files.createDirectories(folder);
    } catch (IOException e) {
      throw new IOException(
          Catalogue.sentence(Fault.JOB_FOLDER_CLOSED, Map.of("folder", folder.toString())), e);
    }
  }

  /** A name that every file system takes. */
  private static String plain(String name) {
    String letters = name.replaceAll("[^\\p{L}\\p{N}_-]+", " ").strip();
    String most = letters.substring(0, Math.min(NAME_MOST, letters.length())).strip();
    return most.isEmpty() ? "job" : most;
  }

  public boolean unnamed(Path file) {
    return file.toAbsolutePath().startsWith(jobs().toAbsolutePath());
  }

  /** Jobs that can be taken up again and are not open anywhere, the last used first. */
  public List<Found> found() {
    List<Path> files = new ArrayList<>(recent());
    unnamed().stream().filter(file -> !files.contains(file)).forEach(files::add);
    List<Found> found = new ArrayList<>();
    for (Path file : files) {
      RecordLock.Left left = RecordLock.left(file);
      if (Files.isRegularFile(file) && left != RecordLock.Left.IN_USE) {
        found.add(new Found(file, unnamed(file), left == RecordLock.Left.IN_A_HURRY));
      }
    }
    return found;
  }

  private List<Path> unnamed() {
    try (Stream<Path> files = Files.list(jobs())) {
      return files
          .filter(file -> file.getFileName().toString().endsWith(RecordFile.ENDING))
          .sorted((a, b) -> b.getFileName().compareTo(a.getFileName()))
          .toList();
    } catch (IOException e) {
      return List.of();
    }
  }

  private List<Path> recent() {
    try {
      return Files.readAllLines(list(), StandardCharsets.UTF_8).stream()
          .flatMap(line -> path(line).stream())
          .toList();
    } catch (IOException e) {
      return List.of();
    }
  }

  private static Optional<Path> path(String line) {
    try {
      return Optional.of(Path.of(line)).filter(Path::isAbsolute);
    } catch (InvalidPathException e) {
      return Optional.empty();
    }
  }

  /**
   * Puts a job's file first among the recent ones.
   *
   * @throws IOException with one sentence for people
   */
  public void remember(Path file) throws IOException {
    make(root);
    List<String> lines = new ArrayList<>();
    lines.add(file.toAbsolutePath().toString());
    recent().stream().map(Path::toString).filter(l -> !lines.contains(l)).forEach(lines::add);
    String text = String.join("\n", lines.subList(0, Math.min(RECENT_MOST, lines.size()))) + "\n";
    WholeFiles.replace(list(), text.getBytes(StandardCharsets.UTF_8));
  }
}
