package tightside.window;

import java.nio.file.Path;
import java.util.Optional;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import tightside.record.Progress;
import tightside.session.EventLines;

/** Where the job is kept, and the way to others. */
final class JobShelf extends VBox {

  private final JobKeeper keeper;
  private final EventLines lines;
  private final Label kept = Controls.label("", "note");
  private final Label failure = Controls.label("", "refusal");
  private final Button elsewhere;
  private final Button again;
  private final Button finish;
  private final Button fresh;

  /**
   * @param end shows how far the job is, and the way to finish it
   */
  JobShelf(JobKeeper keeper, JobOpening opening, Runnable end) {
    this.keeper = keeper;
    lines = new EventLines(keeper.setting().clock().getZone());
    getStyleClass().add("sentences");
    kept.setId("job-kept");
    failure.setId("job-failure");
    elsewhere = button("Save as", "Keep this job in a file of your own", keeper::saveElsewhere);
    elsewhere.setId("job-save");
    again = button("Try again", "Try again to save this job", keeper::tryAgain);
    again.setId("job-again");
    finish = button("Finish", "How far the job is, and the way to finish it", end);
    finish.setId("job-finish");
    fresh = button("New job", "Put this job away and begin another", keeper::begin);
    fresh.setId("job-new");
    Button open =
        button(
            "Open a job",
            "Open the record of a job",
            () -> keeper.setting().chooser().open().ifPresent(opening::open));
    open.setId("job-open");
    getChildren().addAll(kept, failure, Controls.flow(finish, elsewhere, again, fresh, open));
  }

  private static Button button(String words, String spoken, Runnable action) {
    return Controls.button(words, spoken, action);
  }

  void show(Progress progress) {
    Keeping keeping = keeper.keeping();
    kept.setText(kept(keeping));
    failure.setText(
        keeping
            .failure()
            .map(f -> "Not saved: %s. Nothing is lost while this window is open.".formatted(f))
            .orElse(""));
    Controls.visible(failure, keeping.failure().isPresent());
    Controls.visible(again, keeping.failure().isPresent());
    boolean begun = keeping.record().isPresent();
    elsewhere.setText(keeping.failure().isPresent() ? "Save elsewhere" : "Save as");
    elsewhere.setDisable(!begun);
    fresh.setDisable(!begun);
    finish.setDisable(progress.finished());
  }

  private String kept(Keeping keeping) {
    if (keeping.record().isEmpty()) {
      return "Nothing entered yet. The first entry begins the record; it is saved by itself.";
    }
    Optional<String> file = keeping.file().map(Path::getFileName).map(Path::toString);
    String where =
        keeping.unnamed()
            ? "kept by the program until you give it a file"
            : "in " + file.orElse("");
    return keeping
        .saved()
        .map(at -> "Saved %s, %s.".formatted(lines.time(at), where))
        .orElse(
            keeping.damage().isEmpty()
                ? "Opened from %s.".formatted(file.orElse("a file"))
                : "The damaged file stays as it is; the next entry goes into a new one.");
  }
}
