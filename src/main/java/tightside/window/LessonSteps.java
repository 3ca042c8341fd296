package tightside.window;

import java.util.function.Consumer;
import javafx.scene.control.Button;
import javafx.scene.layout.VBox;
import tightside.lesson.Diagnosis;
import tightside.lesson.LessonRun;
import tightside.session.LessonEdits;
import tightside.words.Numbers;

/** The two short stages between a prediction and its mark. */
final class LessonSteps {

  /** Two turns of the crankshaft, after which every camshaft stands as before. */
  private static final double TWO_TURNS = 720;

  private LessonSteps() {}

  /** Written down; the engine is turned next. */
  static VBox committed(Desk desk, Player player, LessonRun run, Consumer<LessonRun> taken) {
    Button turn =
        first(
            "Turn the engine",
            "lesson-turn",
            () -> {
              desk.act(LessonEdits::turn);
              taken.accept(run);
              player.turnTo(TWO_TURNS);
            });
    return Controls.stack(
        "sentences",
        Controls.label("Your prediction is committed: " + written(run)),
        Controls.label("Now two turns of the crankshaft, by hand, in its running direction."),
        turn);
  }

  /** The engine has turned; it may be looked at from all sides. */
  static VBox turned(Desk desk, LessonRun run) {
    return Controls.stack(
        "sentences",
        Controls.label("You wrote: " + written(run)),
        Controls.label(
            "The engine makes two turns. Look at the marks, at the counts and at the other cards:"
                + " all of them show it as it is now."),
        first("Explain", "lesson-explain", () -> desk.act(LessonEdits::explain)));
  }

  /** A large button on which the keyboard lands when the stage begins. */
  static Button first(String words, String id, Runnable action) {
    Button button = LessonCard.wide(Controls.button(words, words, action));
    button.setId(id);
    button.getStyleClass().add("first");
    return button;
  }

  private static String written(LessonRun run) {
    Diagnosis written = run.committed().orElseThrow();
    return "%s; sprocket %s; direction %s; %s %s."
        .formatted(
            written.cause().words(),
            written.shaftWords(),
            written.way().words(),
            Numbers.plain(written.amount()),
            run.sheet().quantity().limits().unit());
  }
}
