package tightside.window;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import javafx.scene.layout.VBox;
import tightside.files.JobFolder.Found;
import tightside.files.RecordReader;
import tightside.record.Event;
import tightside.record.JobRecord;
import tightside.session.EventLines;

/** Jobs that can be taken up again: a list of them, and word of one that was left in a hurry. */
final class JobsFound extends VBox {

  private static final int MOST = 6;

  private final JobKeeper keeper;
  private final JobOpening opening;
  private final Executor worker;
  private final Executor screen;

  JobsFound(JobKeeper keeper, JobOpening opening, Executor worker, Executor screen) {
    this.keeper = keeper;
    this.opening = opening;
    this.worker = worker;
    this.screen = screen;
    getStyleClass().add("table");
  }

  /** Looks for them anew. */
  void look() {
    worker.execute(
        () -> {
          List<Found> found = keeper.setting().folder().found();
          screen.execute(() -> list(found));
        });
  }

  private void list(List<Found> found) {
    getChildren().clear();
    Optional<Path> here = keeper.keeping().file();
    List<Found> others = found.stream().filter(f -> !here.equals(Optional.of(f.file()))).toList();
    if (others.isEmpty()) {
      return;
    }
    getChildren().add(Controls.label("Other jobs", "strong"));
    for (Found job : others.subList(0, Math.min(MOST, others.size()))) {
      getChildren()
          .add(
              Controls.line(
                  name(job.file()), "Open the job " + job.file(), () -> opening.open(job.file())));
    }
  }

  private static String name(Path file) {
    return file.getFileName().toString().replaceFirst("\\.tightside-job$", "");
  }

  /** Tells of a job that was open when the program ended without closing it. */
  static void tellOfHurry(
      JobSetting setting,
      JobOpening opening,
      ProblemPanel problems,
      Executor worker,
      Executor screen) {
    worker.execute(
        () ->
            setting.folder().found().stream()
                .filter(Found::inAHurry)
                .findFirst()
                .ifPresent(
                    job -> {
                      List<String> lines = lines(job, setting);
                      screen.execute(() -> offer(job, lines, opening, problems));
                    }));
  }

  private static List<String> lines(Found job, JobSetting setting) {
    Optional<JobRecord> record = RecordReader.read(job.file()).record();
    EventLines lines = new EventLines(setting.clock().getZone());
    return List.of(
        record
            .filter(r -> !r.events().isEmpty())
            .map(r -> "%s: %s".formatted(name(job.file()), held(r, lines)))
            .orElse(name(job.file())));
  }

  private static String held(JobRecord record, EventLines lines) {
    Event last = record.events().get(record.events().size() - 1);
    int steps = record.progress().answers().size();
    return "%d step%s entered, the last entry %s."
        .formatted(steps, steps == 1 ? "" : "s", lines.day(last.at()));
  }

  private static void offer(
      Found job, List<String> lines, JobOpening opening, ProblemPanel problems) {
    problems.offer(
        job.unnamed()
            ? "An unsaved job was found: the program ended while it was open."
            : "A job was open when the program ended.",
        lines,
        "Show it",
        () -> opening.open(job.file()));
  }
}
