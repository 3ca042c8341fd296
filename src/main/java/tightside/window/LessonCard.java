package tightside.window;

import java.io.IOException;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.Executor;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import tightside.files.LessonMemory;
import tightside.lesson.LessonRun;
import tightside.lesson.LessonSheet;
import tightside.session.SessionView;

/** The card of the lessons: choose, predict, commit, turn, explain, and the belief stated. */
final class LessonCard extends Card {

  private final Desk desk;
  private final Executor worker;
  private final Player player;
  private final LessonMemory memory;
  private final LessonChoice choice;
  private Optional<LessonForm> form = Optional.empty();
  private Optional<Shown> shown = Optional.empty();

  /** What is laid out; while it stays, so do the controls and what has the focus. */
  private record Shown(LessonSheet sheet, tightside.lesson.Stage stage, OptionalInt answer) {
    static Optional<Shown> of(Optional<LessonRun> run) {
      return run.map(r -> new Shown(r.sheet(), r.stage(), r.answer()));
    }
  }

  LessonCard(Desk desk, Executor worker, Player player, LessonMemory memory) {
    this.desk = desk;
    this.worker = worker;
    this.memory = memory;
    this.player = player;
    getStyleClass().add("lesson");
    choice = new LessonChoice(desk, worker, memory);
  }

  @Override
  void layOut(SessionView view) {
    build(view.snapshot().lesson());
  }

  @Override
  void fill(SessionView view) {
    Optional<LessonRun> run = view.snapshot().lesson();
    if (!Shown.of(run).equals(shown)) {
      build(run);
    }
    run.ifPresent(r -> form.ifPresent(f -> f.show(r)));
  }

  private void build(Optional<LessonRun> run) {
    boolean focused = focusInside();
    boolean anotherStage =
        !shown.map(Shown::stage).equals(Shown.of(run).map(Shown::stage))
            || !shown.map(Shown::sheet).equals(Shown.of(run).map(Shown::sheet));
    shown = Shown.of(run);
    form = Optional.empty();
    getChildren().clear();
    if (run.isEmpty()) {
      choice.clear();
      getChildren().add(choice);
    } else {
      Label title = Controls.label(run.get().sheet().title(), "card-title");
      getChildren().addAll(title, end("lesson-end"));
      if (run.get().takenBefore()) {
        getChildren()
            .add(
                Controls.label(
                    "Taken before on this computer: whoever took it may know what is wrong.",
                    "verdict"));
      }
      lesson(run.get());
      if (run.get().stage() == tightside.lesson.Stage.PREDICT
          || run.get().stage() == tightside.lesson.Stage.EXPLAINED) {
        getChildren().add(end("lesson-end-below"));
      }
    }
    if (anotherStage) {
      toTop();
      if (focused) {
        first().ifPresent(Node::requestFocus);
      }
    }
  }

  private void lesson(LessonRun run) {
    switch (run.stage()) {
      case PREDICT -> {
        LessonForm written = new LessonForm(desk, run.sheet());
        form = Optional.of(written);
        getChildren().add(written);
      }
      case COMMITTED -> getChildren().add(LessonSteps.committed(desk, player, run, this::taken));
      case TURNED -> getChildren().add(LessonSteps.turned(desk, run));
      case EXPLAINED -> getChildren().add(new LessonMark(desk, run));
    }
  }

  /** From now on it is known what is wrong. */
  private void taken(LessonRun run) {
    worker.execute(
        () -> {
          try {
            memory.add(run.sheet().memoryName());
          } catch (IOException e) {
            Platform.runLater(() -> getChildren().add(Controls.caution(forgets(e))));
          }
        });
  }

  private static String forgets(IOException e) {
    return "it will not be known next time that this lesson was taken: " + e.getMessage();
  }

  private Button end(String id) {
    Button end =
        Controls.button(
            "End the lesson",
            "End the lesson; the session before it comes back as it was",
            () -> {
              player.stop();
              desk.end();
            });
    end.setId(id);
    return end;
  }

  private boolean focusInside() {
    Node owner = getScene() == null ? null : getScene().getFocusOwner();
    for (Node up = owner; up != null; up = up.getParent()) {
      if (up == this) {
        return true;
      }
    }
    return false;
  }

  /** The control with which a stage begins. */
  private Optional<Node> first() {
    return lookupAll(".first").stream().findFirst();
  }

  private void toTop() {
    for (Node up = getParent(); up != null; up = up.getParent()) {
      if (up instanceof ScrollPane pane) {
        pane.setVvalue(0);
      }
    }
  }

  /** A control with the whole width of the card. */
  static Button wide(Button control) {
    control.setWrapText(true);
    control.setMinWidth(0);
    control.setMaxWidth(Double.MAX_VALUE);
    return control;
  }
}
