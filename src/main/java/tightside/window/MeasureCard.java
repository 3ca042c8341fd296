package tightside.window;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import javafx.application.Platform;
import javafx.scene.control.Button;
import javafx.scene.layout.VBox;
import tightside.session.SessionView;
import tightside.session.Snapshot;
import tightside.session.SurveyEdits;
import tightside.survey.Adjustment;
import tightside.survey.Checked;
import tightside.survey.Measurement;
import tightside.survey.Survey;

/**
 * The card of a drive that is measured with ruler and callipers: how sure each count is, what is
 * probably wrong, what to measure next, and every measurement with what it is off by. The worker
 * adjusts; what was typed stays as it is until then, and if it makes no drive.
 */
final class MeasureCard extends Card {

  private static final String NO_DRIVE =
      "With this the measurements make no drive; look for a slip in what you typed last. The drive"
          + " stays as it was.";

  private final Desk desk;
  private final Executor worker;
  private final PlanSaving saving;
  private final MeasureAdding adding;
  private final VBox said = Controls.stack("sentences");
  private final VBox lines = Controls.stack("sentences");
  private final List<MeasureLine> shown = new ArrayList<>();
  private final Button again;
  private Adjustment proposed;
  private Optional<Survey> asked = Optional.empty();
  private long number;

  MeasureCard(Desk desk, Executor worker, PlanSaving saving) {
    this.desk = desk;
    this.worker = worker;
    this.saving = saving;
    adding = new MeasureAdding(this::add);
    saving.button().setId("measure-save");
    again =
        Controls.button(
            "Adjust again",
            "Adjust the drive as it is drawn now to what was measured",
            () -> adjust(latest(), "Adjust the drive again", this::refuse));
    again.setId("measure-again");
  }

  @Override
  void layOut(SessionView view) {
    adding.offer(view.snapshot());
    Controls.visible(adding, !view.snapshot().drive().countedOnly());
    if (getChildren().isEmpty()) {
      getChildren()
          .setAll(
              Controls.label("What do ruler and callipers say?", "card-title"),
              said,
              again,
              adding,
              lines,
              saving.button(),
              saving.said());
    }
  }

  @Override
  void fill(SessionView view) {
    Snapshot now = view.snapshot();
    said.getChildren().setAll(MeasureWords.of(now));
    Controls.visible(again, now.unadjusted().isPresent());
    Adjustment measured = now.measured().orElse(null);
    if (measured != proposed) {
      proposed = measured;
      adding.propose(now.measured());
    }
    list(now.measured().map(Adjustment::measurements).orElse(List.of()));
  }

  private void list(List<Checked> all) {
    boolean same = all.size() == shown.size();
    for (int i = 0; same && i < all.size(); i++) {
      same = shown.get(i).of(all.get(i));
    }
    if (!same) {
      shown.clear();
      all.forEach(c -> shown.add(new MeasureLine(c, this::change, this::remove)));
      lines.getChildren().setAll(shown);
    }
    for (int i = 0; i < all.size(); i++) {
      shown.get(i).show(all.get(i));
    }
  }

  /** The survey as last asked for: edits made while the worker is busy build on each other. */
  private Survey latest() {
    return asked.or(() -> desk.now().survey()).orElse(Survey.of(List.of()));
  }

  private void add(Measurement m) {
    adjust(latest().plus(m), SurveyEdits.measured(m), this::refuse);
  }

  private void refuse(String why) {
    adding.refuse(why);
  }

  private void change(Checked c, Measurement m) {
    adjust(
        latest().with(c.place(), m), SurveyEdits.measured(m), w -> shown.get(c.place()).refuse(w));
  }

  private void remove(Checked c) {
    adjust(latest().without(c.place()), SurveyEdits.removed(c.measurement()), this::refuse);
  }

  private void adjust(Survey survey, String name, Consumer<String> refused) {
    asked = Optional.of(survey);
    long mine = ++number;
    Snapshot before = desk.now();
    var drawn = before.measured().map(Adjustment::drawn).orElse(before.drive());
    worker.execute(
        () -> {
          Optional<Adjustment> made = adjusted(drawn, survey);
          Platform.runLater(
              () -> {
                if (number == mine) {
                  asked = Optional.empty();
                  settle(before, made, name, refused);
                }
              });
        });
  }

  private static Optional<Adjustment> adjusted(tightside.drive.Drive drawn, Survey survey) {
    try {
      return Adjustment.of(drawn, survey);
    } catch (IllegalArgumentException notOfThisDrive) {
      return Optional.empty();
    }
  }

  private void settle(
      Snapshot before, Optional<Adjustment> made, String name, Consumer<String> refused) {
    Snapshot now = desk.now();
    if (now.drive() != before.drive() || !now.survey().equals(before.survey())) {
      return;
    }
    if (made.flatMap(Adjustment::drive).isPresent()) {
      desk.act(latest -> SurveyEdits.adjusted(latest, name, made.get()));
    } else {
      refused.accept(NO_DRIVE);
    }
  }
}
