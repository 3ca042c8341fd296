package tightside.window;

import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import tightside.record.JobRecord;

/**
 * How the job in hand is kept.
 *
 * @param record all that happened in it; none before anything did
 * @param written as much of it as is on the disk
 * @param saved when it was last written
 * @param file where it is written; none before it was
 * @param unnamed whether it is the program that chose the file
 * @param failure why the last change is not written
 * @param model what is to be said of the model of a job that was opened
 * @param damage what was found wrong with the file that it was opened from
 */
record Keeping(
    Optional<JobRecord> record,
    Optional<JobRecord> written,
    Optional<Instant> saved,
    Optional<Path> file,
    boolean unnamed,
    Optional<String> failure,
    List<String> model,
    List<String> damage) {

  static Keeping nothing() {
    return new Keeping(
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        true,
        Optional.empty(),
        List.of(),
        List.of());
  }

  /** A job as it was opened; a damaged one is never written over. */
  static Keeping opened(JobRecord record, Path file, boolean unnamed, List<String> model) {
    return new Keeping(
        Optional.of(record),
        Optional.of(record),
        Optional.empty(),
        Optional.of(file),
        unnamed,
        Optional.empty(),
        model,
        List.of());
  }

  Keeping damaged(List<String> found) {
    return new Keeping(record, written, saved, Optional.empty(), true, failure, model, found);
  }

  Keeping with(JobRecord other) {
    return new Keeping(Optional.of(other), written, saved, file, unnamed, failure, model, damage);
  }

  /**
   * @param own whether the program chose the file
   */
  Keeping saved(JobRecord what, Instant at, Path where, boolean own) {
    return new Keeping(
        record,
        Optional.of(what),
        Optional.of(at),
        Optional.of(where),
        own,
        Optional.empty(),
        model,
        damage);
  }

  Keeping failed(String sentence) {
    return new Keeping(record, written, saved, file, unnamed, Optional.of(sentence), model, damage);
  }
}
