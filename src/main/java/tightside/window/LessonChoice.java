package tightside.window;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Supplier;
import javafx.application.Platform;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.VBox;
import tightside.drive.Limits;
import tightside.drive.Seen;
import tightside.files.Demo;
import tightside.files.LessonMemory;
import tightside.files.Model;
import tightside.lesson.Hunt;
import tightside.lesson.LessonSheet;
import tightside.lesson.ReadyLesson;
import tightside.lesson.Setting;
import tightside.session.Decimals;
import tightside.session.LessonEdits;
import tightside.session.Look;
import tightside.session.Snapshot;
import tightside.session.Typed;

/**
 * Where a lesson is chosen: a ready one, or a fault drawn from a seed on the drive that is open.
 */
final class LessonChoice extends VBox {

  private static final Limits SEEDS = new Limits(0, 999_999, "a whole number");

  private final Desk desk;
  private final Executor worker;
  private final LessonMemory memory;
  private final TextField seed;
  private final Label refusal = Controls.label("", "refusal");
  private final Segments<Seen> access;
  private final Segments<Integer> variant;
  private Seen looksAs = Seen.BORESCOPE;
  private int number = 1;

  LessonChoice(Desk desk, Executor worker, LessonMemory memory) {
    this.memory = memory;
    this.desk = desk;
    this.worker = worker;
    getStyleClass().add("sentences");
    seed = Controls.field("Seed, a whole number", 5, text -> say(Optional.empty()));
    seed.setId("lesson-seed");
    seed.setText("1");
    access = new Segments<>("The class looks", accesses(), seen -> looksAs = seen);
    access.show(looksAs);
    variant = new Segments<>("Variant", variants(), chosen -> number = chosen);
    variant.show(number);
    say(Optional.empty());
    getChildren()
        .addAll(
            Controls.label("Predict, commit, turn, explain", "card-title"),
            Controls.label(
                "Ten minutes and one belief each. Nothing moves and nothing is told before a"
                    + " prediction is written. What lies here now comes back afterwards.",
                "note"));
    for (ReadyLesson lesson : ReadyLesson.values()) {
      getChildren().add(ready(lesson));
    }
    hunt();
  }

  private Button ready(ReadyLesson lesson) {
    Button button =
        LessonCard.wide(
            Controls.button(
                lesson.title(),
                "Lesson: " + lesson.title(),
                () -> begin(() -> ready(lesson.model(), lesson))));
    button.setId("lesson-" + lesson.id());
    return button;
  }

  private void hunt() {
    Button begin =
        LessonCard.wide(
            Controls.button("Find the fault", "Find a fault on this drive", this::beginHunt));
    begin.setId("lesson-hunt");
    getChildren()
        .addAll(
            Controls.label("A fault on the drive that is open", "chain-name"),
            Controls.label(
                "The same seed gives the same five variants, as hard as each other. The hand-out and"
                    + " the key for a seed are printed by the command lesson.",
                "note"),
            access.wrapping(),
            Controls.flow(Controls.tag("Variant"), variant),
            Controls.flow(Controls.tag("Seed"), seed),
            refusal,
            begin);
  }

  private static Map<Seen, String> accesses() {
    Map<Seen, String> words = new LinkedHashMap<>();
    words.put(Seen.COVER_ON, "Class: cover on");
    words.put(Seen.COVER_OFF, "Class: cover off");
    words.put(Seen.BORESCOPE, "Class: borescope");
    return words;
  }

  private static Map<Integer, String> variants() {
    Map<Integer, String> words = new LinkedHashMap<>();
    for (int i = 1; i <= Hunt.VARIANTS; i++) {
      words.put(i, " " + i + " ");
    }
    return words;
  }

  /** Forgets what was said of the last lesson. */
  void clear() {
    say(Optional.empty());
  }

  private void say(Optional<String> words) {
    words.ifPresent(refusal::setText);
    Controls.visible(refusal, words.isPresent());
  }

  /** A lesson and the drive on which it begins, or why there is none. */
  private record Made(Optional<Snapshot> opened, Optional<LessonSheet> sheet, String refusal) {}

  private static Made ready(String name, ReadyLesson lesson) {
    Model model = Demo.named(name);
    LessonSheet sheet = lesson.on(new Setting(model.drive(), model.engine()));
    return new Made(Optional.of(Opening.opened(model, "the lesson")), Optional.of(sheet), "");
  }

  private void beginHunt() {
    Typed typed = Decimals.whole(seed.getText(), "The seed", SEEDS);
    typed.refusal().ifPresent(why -> say(Optional.of(why)));
    if (typed instanceof Typed.Number chosen) {
      Snapshot now = desk.now();
      Seen seen = looksAs;
      int which = number;
      begin(() -> hunted(now, seen, (long) chosen.value(), which));
    }
  }

  private static Made hunted(Snapshot now, Seen seen, long seed, int variant) {
    Setting setting = new Setting(now.drive(), Optional.empty());
    Snapshot opened = Snapshot.opened(now.drive(), now.source(), now.slack());
    return Hunt.drawn(setting, seen, seed)
        .map(hunt -> new Made(Optional.of(opened), Optional.of(hunt.sheet(variant)), ""))
        .orElseGet(() -> new Made(Optional.empty(), Optional.empty(), Hunt.tooLittle(seen)));
  }

  private void begin(Supplier<Made> maker) {
    worker.execute(
        () -> {
          Made made = maker.get();
          boolean before = made.sheet().map(s -> memory.holds(s.memoryName())).orElse(false);
          Platform.runLater(() -> begin(made, before));
        });
  }

  private void begin(Made made, boolean takenBefore) {
    if (made.sheet().isEmpty()) {
      say(Optional.of(made.refusal()));
    } else if (desk.now().lesson().isEmpty()) {
      Snapshot opened = made.opened().orElseThrow();
      LessonSheet sheet = made.sheet().get();
      Look look = desk.now().look();
      desk.begin(
          takenBefore
              ? LessonEdits.begunAgain(opened, sheet, look)
              : LessonEdits.begun(opened, sheet, look));
    }
  }
}
