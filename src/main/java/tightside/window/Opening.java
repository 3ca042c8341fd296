package tightside.window;

import java.nio.file.Path;
import java.util.OptionalDouble;
import java.util.concurrent.Executor;
import java.util.concurrent.atomic.AtomicLong;
import tightside.files.Model;
import tightside.files.ModelFile;
import tightside.files.ModelReading;
import tightside.files.Unfinished;
import tightside.job.Job;
import tightside.record.Progress;
import tightside.session.JobState;
import tightside.session.PlanEdits;
import tightside.session.SlackSetup;
import tightside.session.Snapshot;

/**
 * Opens model files: reads them on another thread, and shows what came of it on the window's own.
 * Of several files asked for in a hurry the last one counts.
 *
 * @param problems where it is told what is wrong
 * @param worker reads
 * @param screen runs what touches the window
 */
record Opening(
    Desk desk,
    ProblemPanel problems,
    JobKeeper keeper,
    Executor worker,
    Executor screen,
    AtomicLong asked) {

  Opening(Desk desk, ProblemPanel problems, JobKeeper keeper, Executor worker, Executor screen) {
    this(desk, problems, keeper, worker, screen, new AtomicLong());
  }

  void open(Path file) {
    long number = asked.incrementAndGet();
    worker.execute(
        () -> {
          ModelFile read = ModelFile.read(file);
          screen.execute(
              () -> {
                if (asked.get() == number) {
                  show(file, read);
                }
              });
        });
  }

  private void show(Path file, ModelFile read) {
    ModelReading reading = read.reading();
    String name = file.getFileName().toString();
    problems.clear();
    reading.model().ifPresent(model -> desk.open(opened(model, name)));
    reading.model().ifPresent(m -> read.text().ifPresent(text -> keeper.read(m.drive(), text)));
    if (reading.unfinished().isPresent()) {
      desk.open(opened(desk.now(), reading.unfinished().get(), name));
      problems.show(
          name + " makes no drive yet. It can be mended on the card Build.", reading.problems());
    } else if (reading.model().isEmpty()) {
      problems.show(name + " can't be opened as it is.", reading.problems());
    } else if (!reading.problems().isEmpty()) {
      problems.show(name + " is open; have a look at this all the same.", reading.problems());
    }
  }

  private static Snapshot opened(Snapshot shown, Unfinished read, String name) {
    OptionalDouble play =
        read.job().map(Job::lockingToolPlayDegrees).orElse(OptionalDouble.empty());
    SlackSetup slack = SlackSetup.of(play, read.engine(), read.phasers());
    return PlanEdits.opened(shown, name, read.plan(), slack)
        .with(new JobState(read.job().orElseGet(Job::unsaid), Progress.none()));
  }

  /** A model as the session begins with it. */
  static Snapshot opened(Model model, String name) {
    OptionalDouble play =
        model.job().isEmpty() ? OptionalDouble.empty() : model.job().get().lockingToolPlayDegrees();
    Snapshot opened =
        Snapshot.opened(
                model.adjusted().drive(),
                name,
                SlackSetup.of(play, model.engine(), model.phasers()))
            .with(new JobState(model.job().orElseGet(Job::unsaid), Progress.none()));
    return model.measured().map(m -> opened.measured(m.adjustment())).orElse(opened);
  }
}
