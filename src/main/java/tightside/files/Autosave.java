package tightside.files;

import java.io.IOException;
import java.time.Clock;
import java.time.Instant;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.BiConsumer;
import tightside.record.JobRecord;

/**
 * Writes a job record whenever it has changed, as soon as the write before it is done: what is lost
 * when the program is killed is what came in since the last write began. What could not be written
 * is kept, and tried again with the next change.
 */
public final class Autosave {

  /** What came of a write. */
  public sealed interface Outcome {

    /**
     * It is on the disk.
     *
     * @param record what was written, which may have grown since
     */
    record Saved(JobRecord record, Instant at) implements Outcome {}

    /**
     * It is not.
     *
     * @param sentence why, and what would help
     */
    record Failed(String sentence) implements Outcome {}
  }

  /** Where a record is to be written. */
  public interface Place {

    /**
     * Asked for once it is needed, by the worker.
     *
     * @throws IOException with one sentence for people
     */
    RecordFile file() throws IOException;
  }

  private final Place place;
  private final Executor worker;
  private final Clock clock;
  private final BiConsumer<Autosave, Outcome> told;
  private Optional<RecordFile> file = Optional.empty();
  private Optional<JobRecord> waiting = Optional.empty();
  private boolean writing;

  /**
   * @param worker writes; nothing else that takes long should wait in it
   * @param told what came of each write, by the worker
   */
  public Autosave(Place place, Executor worker, Clock clock, BiConsumer<Autosave, Outcome> told) {
    this.place = place;
    this.worker = worker;
    this.clock = clock;
    this.told = told;
  }

  /** Where it is written; nothing before the first write. */
  public synchronized Optional<RecordFile> file() {
    return file;
  }

  /** Lets others write the file. */
  public void close() {
    file().ifPresent(RecordFile::close);
  }

  /** Has a record written as it now is. */
  public void changed(JobRecord record) {
    synchronized (this) {
      waiting = Optional.of(record);
      if (writing) {
        return;
      }
      writing = true;
    }
    worker.execute(this::write);
  }

  private void write() {
    while (true) {
      JobRecord record;
      synchronized (this) {
        if (waiting.isEmpty()) {
          writing = false;
          return;
        }
        record = waiting.get();
        waiting = Optional.empty();
      }
      told.accept(this, save(record));
    }
  }

  private RecordFile place() throws IOException {
    if (file().isEmpty()) {
      RecordFile found = place.file();
      synchronized (this) {
        file = Optional.of(found);
      }
    }
    return file().orElseThrow();
  }

  private Outcome save(JobRecord record) {
    try {
      place().save(record);
      return new Outcome.Saved(record, clock.instant());
    } catch (IOException e) {
      return new Outcome.Failed(e.getMessage());
    }
  }
}
