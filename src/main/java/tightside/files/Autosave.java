package tightside.files;

import java.io.IOException;
import java.time.Clock;
import java.time.Instant;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
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

  private final RecordFile file;
  private final Executor worker;
  private final Clock clock;
  private final Consumer<Outcome> told;
  private Optional<JobRecord> waiting = Optional.empty();
  private boolean writing;

  /**
   * @param worker writes; nothing else that takes long should wait in it
   * @param told what came of each write, by the worker
   */
  public Autosave(RecordFile file, Executor worker, Clock clock, Consumer<Outcome> told) {
    this.file = file;
    this.worker = worker;
    this.clock = clock;
    this.told = told;
  }

  public RecordFile file() {
    return file;
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
      told.accept(save(record));
    }
  }

  private Outcome save(JobRecord record) {
    try {
      file.save(record);
      return new Outcome.Saved(record, clock.instant());
    } catch (IOException e) {
      return new Outcome.Failed(e.getMessage());
    }
  }
}
