package tightside.window;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Function;
import javafx.application.Platform;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import tightside.files.ModelWriter;
import tightside.files.WholeFiles;
import tightside.job.Job;
import tightside.session.Proof;
import tightside.session.Snapshot;

/** Saves what is drawn as a model file, whole or not at all, finished or not. */
final class PlanSaving {

  private final Desk desk;
  private final Executor worker;
  private final Function<String, Optional<Path>> chooser;
  private final Label said = Controls.label("", "note");
  private final Button button;

  PlanSaving(Desk desk, Executor worker, Function<String, Optional<Path>> chooser) {
    this.desk = desk;
    this.worker = worker;
    this.chooser = chooser;
    button = Controls.button("Save as a model", "Save what is drawn as a model file", this::save);
    button.setId("build-save");
    Controls.visible(said, false);
  }

  Button button() {
    return button;
  }

  Label said() {
    return said;
  }

  private void save() {
    Optional<Path> file = chooser.apply(fileName(desk.now().plan().name()));
    if (file.isPresent()) {
      Snapshot now = desk.now();
      String text =
          ModelWriter.write(
              now.plan(),
              now.slack().engine(),
              now.slack().phasers(),
              job(now),
              Proof.withCounts(now));
      worker.execute(() -> write(file.get(), text));
    }
  }

  private static Optional<Job> job(Snapshot now) {
    Job job = now.job().job();
    return job.equals(Job.unsaid()) ? Optional.empty() : Optional.of(job);
  }

  private static String fileName(String name) {
    String bare =
        name.toLowerCase(java.util.Locale.ROOT)
            .replaceAll("[^\\p{L}\\p{N}]+", "-")
            .replaceAll("^-|-$", "");
    return (bare.isEmpty() ? "drive" : bare) + ".yaml";
  }

  private void write(Path file, String text) {
    String sentence;
    try {
      WholeFiles.replace(file, text.getBytes(StandardCharsets.UTF_8));
      sentence = "Saved as %s.".formatted(file.getFileName());
    } catch (IOException e) {
      sentence = e.getMessage() + " What you drew is still here.";
    }
    String shown = sentence;
    Platform.runLater(
        () -> {
          said.setText(shown);
          Controls.visible(said, true);
        });
  }
}
