package tightside.studies;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.util.concurrent.Executors;
import tightside.drive.Seen;
import tightside.files.Autosave;
import tightside.files.RecordFile;
import tightside.record.Answer;
import tightside.record.Head;
import tightside.record.JobRecord;
import tightside.record.ModelText;
import tightside.record.Progress;
import tightside.record.Verdict;

/**
 * A program that enters one answer after the other until it is killed, and tells of each the moment
 * before it hands it to be saved.
 */
public final class Writer {

  private static final int PAUSE_MS = 7;

  private Writer() {}

  /**
   * @param words the record's file
   */
  public static void main(String[] words) throws IOException, InterruptedException {
    Clock clock = Clock.systemUTC();
    Autosave autosave =
        new Autosave(
            () -> RecordFile.fresh(Path.of(words[0])),
            Executors.newSingleThreadExecutor(),
            clock,
            (by, outcome) -> System.out.println(words(outcome)));
    Head head =
        new Head(clock.instant(), "study", ModelText.of("a.yaml", "", "x".repeat(6_000) + "\n"));
    JobRecord record = JobRecord.begun(head);
    autosave.changed(record);
    while (!Files.exists(Path.of(words[0]))) {
      Thread.sleep(PAUSE_MS);
    }
    Progress progress = Progress.none();
    for (int i = 0; ; i++) {
      Instant now = clock.instant();
      String step = "step/" + i % 60;
      progress = progress.entered(step, new Answer("Count", "" + i, Verdict.RIGHT, "It fits."));
      record = record.following(progress, Seen.COVER_ON, now, false);
      System.out.println(i + " " + now.toEpochMilli());
      autosave.changed(record);
      Thread.sleep(PAUSE_MS);
    }
  }

  private static String words(Autosave.Outcome outcome) {
    return outcome instanceof Autosave.Outcome.Saved saved
        ? "saved " + Kills.answers(saved.record())
        : "failed " + ((Autosave.Outcome.Failed) outcome).sentence();
  }
}
