package tightside.window;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import tightside.drive.Drive;
import tightside.files.Autosave;
import tightside.files.Autosave.Outcome;
import tightside.files.Model;
import tightside.files.ModelWriter;
import tightside.files.RecordFile;
import tightside.record.Event;
import tightside.record.Head;
import tightside.record.JobRecord;
import tightside.record.ModelText;
import tightside.record.Progress;
import tightside.session.History;
import tightside.session.SlackSetup;
import tightside.session.Snapshot;

/** Follows the job on the desk and has every change of it recorded and written. */
final class JobKeeper {

  /** As records say who wrote them. */
  private static final String PROGRAM = "Tightside 0.1.0";

  private final Desk desk;
  private final JobSetting setting;
  private final Executor screen;
  private final List<Runnable> watchers = new ArrayList<>();
  private Keeping keeping = Keeping.nothing();
  private Optional<Autosave> autosave = Optional.empty();
  private History seen;
  private Optional<ModelText> model = Optional.empty();
  private Drive modelOf;

  /** What the job in hand is done on. */
  private Drive drive;

  /**
   * @param screen runs what touches the window
   */
  JobKeeper(Desk desk, JobSetting setting, Executor screen) {
    this.desk = desk;
    this.setting = setting;
    this.screen = screen;
    seen = desk.history();
    drive = desk.now().drive();
    desk.watch(this::follow);
  }

  Keeping keeping() {
    return keeping;
  }

  JobSetting setting() {
    return setting;
  }

  /** Calls back whenever it is kept otherwise. */
  void watch(Runnable watcher) {
    watchers.add(watcher);
  }

  private void show(Keeping next) {
    keeping = next;
    watchers.forEach(Runnable::run);
  }

  /** Knows from here on from what text a drive was read. */
  void read(Drive drive, ModelText text) {
    modelOf = drive;
    model = Optional.of(text);
  }

  /**
   * Lays a job that was opened on the desk.
   *
   * @param file to go on writing; none where the record is damaged and goes on in another
   */
  void takeUp(Snapshot opened, Keeping kept, Optional<RecordFile> file) {
    leave();
    drive = opened.drive();
    autosave = file.map(this::autosave);
    kept.record().ifPresent(record -> read(drive, record.head().model()));
    show(kept);
    desk.open(opened);
    kept.file().ifPresent(path -> setting.saver().execute(() -> remember(path)));
  }

  /** Puts the job away and begins another on the same drive. */
  void begin() {
    leave();
    desk.open(desk.now().with(desk.now().job().with(Progress.none())));
  }

  /** Puts the job away as it is kept; the next change begins another. */
  void leave() {
    autosave.ifPresent(a -> setting.saver().execute(a::close));
    autosave = Optional.empty();
    show(Keeping.nothing());
  }

  private void follow() {
    History before = seen;
    seen = desk.history();
    Snapshot now = seen.now();
    boolean redrawn = drive != now.drive();
    drive = now.drive();
    if (redrawn && opened(before, seen)) {
      leave();
    }
    Progress progress = now.job().progress();
    if (keeping.record().isEmpty() && !progress.begun()) {
      return;
    }
    JobRecord record = keeping.record().orElseGet(() -> JobRecord.begun(head(now)));
    var access = progress.finished() ? record.access().orElse(now.cover()) : now.cover();
    Instant at = setting.clock().instant();
    JobRecord then = redrawn && !progress.finished() ? remodelled(record, now, at) : record;
    JobRecord next = then.following(progress, access, at, undone(before, seen));
    if (!next.equals(record)) {
      write(next);
    }
  }

  /** Whether a history began with another drive than the one before it. */
  private static boolean opened(History before, History after) {
    return before.steps().get(0).after().drive() != after.steps().get(0).after().drive();
  }

  private JobRecord remodelled(JobRecord record, Snapshot now, Instant at) {
    ModelText text = modelText(now);
    return text.sha256().equals(record.model().sha256())
        ? record
        : record.with(new Event.Remodelled(at, text));
  }

  /** Whether one came from the other by undo. */
  private static boolean undone(History before, History after) {
    return after.position() < before.position();
  }

  private Head head(Snapshot now) {
    return new Head(setting.clock().instant(), PROGRAM, modelText(now));
  }

  private ModelText modelText(Snapshot now) {
    if (model.isPresent() && modelOf == now.drive()) {
      return model.get();
    }
    SlackSetup slack = now.slack();
    Model written =
        new Model(now.drive(), now.engine(), now.phasers(), Optional.of(now.job().job()));
    return ModelText.of(now.source(), "", ModelWriter.write(written));
  }

  private void write(JobRecord next) {
    JobRecord record = next;
    if (autosave.isEmpty()) {
      for (String found : keeping.damage()) {
        record = record.with(new Event.Damage(setting.clock().instant(), found));
      }
      String name = record.head().model().name();
      autosave = Optional.of(autosave(() -> fresh(name)));
    }
    show(keeping.with(record));
    autosave.get().changed(record);
  }

  private RecordFile fresh(String model) throws IOException {
    String name = model.replaceFirst("\\.ya?ml$", "");
    return RecordFile.fresh(
        setting.folder().fresh(setting.clock().instant().atZone(setting.clock().getZone()), name));
  }

  private Autosave autosave(RecordFile file) {
    return autosave(() -> file);
  }

  private Autosave autosave(Autosave.Place place) {
    return new Autosave(
        place, setting.saver(), setting.clock(), (a, o) -> screen.execute(() -> told(a, o)));
  }

  private void told(Autosave by, Outcome outcome) {
    if (autosave.isEmpty() || autosave.get() != by) {
      return;
    }
    if (outcome instanceof Outcome.Saved saved) {
      Path file = by.file().map(RecordFile::path).orElseThrow();
      boolean first = !keeping.file().equals(Optional.of(file));
      show(keeping.saved(saved.record(), saved.at(), file, setting.folder().unnamed(file)));
      if (first) {
        setting.saver().execute(() -> remember(file));
      }
    } else {
      show(keeping.failed(((Outcome.Failed) outcome).sentence()));
    }
  }

  private void remember(Path file) {
    try {
      setting.folder().remember(file);
    } catch (IOException e) {
      // The list of recent jobs is a comfort; the job itself is kept, and found by its file.
    }
  }

  /** Asks for a file and keeps the job there from now on. */
  void saveElsewhere() {
    if (keeping.record().isEmpty()) {
      return;
    }
    JobRecord record = keeping.record().get();
    String name = record.head().model().name().replaceFirst("\\.ya?ml$", "") + RecordFile.ENDING;
    setting.chooser().save(name).ifPresent(file -> moveTo(ended(file), record));
  }

  private static Path ended(Path file) {
    String name = file.getFileName().toString();
    return name.endsWith(RecordFile.ENDING) ? file : file.resolveSibling(name + RecordFile.ENDING);
  }

  private void moveTo(Path file, JobRecord record) {
    Optional<Autosave> old = autosave;
    boolean leftBehind = keeping.unnamed();
    RecordFile fresh = RecordFile.fresh(file);
    setting
        .saver()
        .execute(
            () -> {
              try {
                fresh.save(record);
                screen.execute(() -> moved(fresh, record));
                old.flatMap(Autosave::file).ifPresent(f -> giveUp(f, leftBehind));
              } catch (IOException e) {
                fresh.close();
                screen.execute(() -> show(keeping.failed(e.getMessage())));
              }
            });
  }

  private static void giveUp(RecordFile file, boolean leftBehind) {
    if (leftBehind) {
      file.remove();
    } else {
      file.close();
    }
  }

  private void moved(RecordFile fresh, JobRecord written) {
    autosave = Optional.of(autosave(fresh));
    show(keeping.saved(written, setting.clock().instant(), fresh.path(), false));
    remember(fresh.path());
    if (!keeping.record().equals(Optional.of(written))) {
      autosave.get().changed(keeping.record().orElseThrow());
    }
  }

  /** Whether all of the job in hand is on the disk. */
  boolean safe() {
    return keeping.record().equals(keeping.written()) || keeping.record().isEmpty();
  }

  /** Tries once more to write what could not be written. */
  void tryAgain() {
    keeping.record().ifPresent(record -> autosave.ifPresent(a -> a.changed(record)));
  }
}
