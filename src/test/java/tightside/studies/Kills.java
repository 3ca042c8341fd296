package tightside.studies;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.io.File;
import java.io.IOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import tightside.files.RecordFile;
import tightside.files.RecordReader;
import tightside.files.RecordReading;
import tightside.record.Event;
import tightside.record.JobRecord;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.databind.json.JsonMapper;

/**
 * Kills a program that saves a job record, at random moments, and looks at what is left. Asked for:
 * never a record that can't be read whole, and nothing lost that was entered more than a second
 * before.
 */
public final class Kills {

  private static final int RUNS = 100;
  private static final int LONGEST_MS = 900;

  /** Bytes after which the program is sure to be at work. */
  private static final int FIRST_ANSWERS = 40;

  private Kills() {}

  /**
   * What one kill left.
   *
   * @param entered answers that had been entered
   * @param unkept answers that had been told to be saved and are not there; none
   * @param lostMs age of the oldest answer that is lost, at the moment of the kill; 0 for none
   * @param stallMs longest time for which the program stood still by itself: on a busy machine
   * @param damage what is wrong with the record; nothing
   */
  public record Left(int entered, int unkept, long lostMs, long stallMs, List<String> damage) {}

  public static void main(String[] words) throws IOException, InterruptedException {
    Path folder = Files.createTempDirectory("kills");
    long worst = 0;
    int damaged = 0;
    int entered = 0;
    int unkept = 0;
    long stall = 0;
    for (int run = 0; run < RUNS; run++) {
      Left left = kill(folder.resolve(run + RecordFile.ENDING), new Random(run));
      worst = Math.max(worst, left.lostMs());
      damaged += left.damage().isEmpty() ? 0 : 1;
      entered += left.entered();
      unkept += left.unkept();
      stall = Math.max(stall, left.stallMs());
      left.damage().forEach(System.out::println);
    }
    System.out.printf(
        "%d kills, %d answers entered: %d records damaged, %d answers lost that were saved, the"
            + " oldest answer lost %d ms old; the machine stood still for %d ms at most%n",
        RUNS, entered, damaged, unkept, worst, stall);
  }

  /** Starts a program that writes a record, kills it and reads the record. */
  public static Left kill(Path record, Random random) throws IOException, InterruptedException {
    Path told = record.resolveSibling(record.getFileName() + ".told");
    Process writer =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-cp",
                classPath(),
                Writer.class.getName(),
                record.toString())
            .redirectOutput(told.toFile())
            .redirectError(ProcessBuilder.Redirect.INHERIT)
            .start();
    while (writer.isAlive() && Files.size(told) < FIRST_ANSWERS) {
      Thread.sleep(1);
    }
    Thread.sleep(random.nextInt(LONGEST_MS));
    long killed = System.currentTimeMillis();
    writer.destroyForcibly().waitFor();
    return left(record, Files.readAllLines(told), killed);
  }

  /** Where the classes of the writer and what it needs come from. */
  private static String classPath() {
    return Stream.of(
            Writer.class, RecordFile.class, JsonFactory.class, JsonMapper.class, JsonInclude.class)
        .map(type -> type.getProtectionDomain().getCodeSource().getLocation())
        .map(place -> Path.of(URI.create(place.toString())).toString())
        .distinct()
        .collect(Collectors.joining(File.pathSeparator));
  }

  private static Left left(Path record, List<String> told, long killed) {
    RecordReading reading = RecordReader.read(record);
    int kept = kept(reading);
    int entered = 0;
    int saved = 0;
    long lost = 0;
    long stall = 0;
    long before = Long.MAX_VALUE;
    for (String line : told) {
      String[] words = line.split(" ");
      if (line.startsWith("failed")) {
        throw new IllegalStateException("the program that is to be killed says: " + line);
      } else if (line.matches("saved \\d+")) {
        saved = Integer.parseInt(words[1]);
      } else if (line.matches("\\d+ \\d{13}")) {
        long at = Long.parseLong(words[1]);
        stall = Math.max(stall, at - before);
        before = at;
        entered++;
        lost = entered > kept ? Math.max(lost, killed - at) : lost;
      }
    }
    return new Left(entered, Math.max(0, saved - kept), lost, stall, reading.damage());
  }

  private static int kept(RecordReading reading) {
    return reading.record().map(Kills::answers).orElse(0);
  }

  /** How many answers a record holds, those included that later ones replaced. */
  static int answers(JobRecord record) {
    return (int) record.events().stream().filter(Event.Entered.class::isInstance).count();
  }
}
