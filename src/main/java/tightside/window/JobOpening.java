package tightside.window;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import tightside.files.Model;
import tightside.files.ModelReader;
import tightside.files.ModelReading;
import tightside.files.RecordFile;
import tightside.record.JobRecord;
import tightside.record.ModelText;
import tightside.record.Sha256;
import tightside.session.EventLines;
import tightside.session.JobState;
import tightside.session.Snapshot;

/**
 * Opens the record of a job with the model that is kept in it, and says what is not as it was.
 *
 * @param problems where it is said
 * @param worker reads
 * @param screen runs what touches the window
 * @param opened shows the job once it lies on the desk
 */
record JobOpening(
    JobKeeper keeper, ProblemPanel problems, Executor worker, Executor screen, Runnable opened) {

  /** What was read, ready to be shown. */
  private record Read(RecordFile.Opened file, Optional<ModelReading> model, List<String> about) {}

  void open(Path path) {
    worker.execute(
        () -> {
          RecordFile.Opened file = RecordFile.open(path);
          Optional<JobRecord> record = file.reading().record();
          Optional<ModelReading> model = record.map(r -> ModelReader.parse(r.model().text()));
          List<String> about = record.map(r -> about(r.model())).orElse(List.of());
          screen.execute(() -> show(path, new Read(file, model, about)));
        });
  }

  /** What became of the file that the model was read from. */
  private static List<String> about(ModelText model) {
    if (model.place().isEmpty()) {
      return List.of("Shown with the model that is kept in the record.");
    }
    try {
      byte[] bytes = Files.readAllBytes(Path.of(model.place()));
      return Sha256.of(bytes).equals(model.sha256())
          ? List.of("Shown with the model of the job; its file is still the same.")
          : List.of(
              "%s was changed after the job was begun: shown is the model as it was then."
                  .formatted(model.place()));
    } catch (IOException | InvalidPathException | OutOfMemoryError e) {
      return List.of(
          "%s is gone: shown is the model that is kept in the record.".formatted(model.place()));
    }
  }

  private void show(Path path, Read read) {
    problems.clear();
    String name = path.getFileName().toString();
    Optional<JobRecord> record = read.file().reading().record();
    List<String> damage = read.file().reading().damage();
    if (record.isEmpty()) {
      problems.say("No job was opened.", damage);
      return;
    }
    Optional<Model> model = read.model().flatMap(ModelReading::model);
    if (model.isEmpty()) {
      problems.say(
          "%s can't be shown as steps: its model can't be used.".formatted(name), all(read));
      return;
    }
    lay(path, read, record.get(), model.get());
    if (!damage.isEmpty()) {
      problems.say("%s is not as it was written; it is left as it is.".formatted(name), damage);
    }
    opened.run();
  }

  private List<String> all(Read read) {
    List<String> lines = new ArrayList<>(read.file().reading().damage());
    EventLines events = new EventLines(keeper.setting().clock().getZone());
    read.file().reading().record().ifPresent(r -> lines.addAll(events.all(r)));
    return lines;
  }

  private void lay(Path path, Read read, JobRecord record, Model model) {
    Snapshot fresh = Opening.opened(model, record.model().name());
    JobState job = new JobState(fresh.job().job(), record.progress());
    Snapshot snapshot = fresh.with(job).with(record.access().orElse(fresh.cover()));
    boolean unnamed = keeper.setting().folder().unnamed(path);
    Keeping kept = Keeping.opened(record, path, unnamed, read.about());
    if (read.file().reading().whole()) {
      keeper.takeUp(snapshot, kept, Optional.of(read.file().file()));
    } else {
      keeper.takeUp(snapshot, kept.damaged(read.file().reading().damage()), Optional.empty());
    }
  }
}
