package tightside.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.Labeled;
import javafx.scene.control.TextInputControl;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.Tooltip;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import tightside.picture.Ink;
import tightside.session.Edits;
import tightside.session.History;
import tightside.session.Turns;
import tightside.timing.Seat;

/** A lesson in the window, and that nothing in the window gives its answer away. */
class LessonCardTest {

  private static Screen screen;

  @BeforeAll
  static void open() throws IOException {
    Files.deleteIfExists(JobSetting.passing(Runnable::run).folder().root().resolve("lessons.txt"));
    screen = new Screen(Models.opened("two-cams-arm"));
  }

  @BeforeEach
  void choosing() {
    screen.act(
        w -> {
          w.desk().open(Models.opened("two-cams-arm"));
          w.bench().turnTo(Bench.Card.LESSON);
        });
  }

  @AfterEach
  void end() {
    screen.act(w -> w.desk().end());
  }

  private static void begin(String lesson) {
    screen.fire("lesson-" + lesson);
    screen.work();
    screen.act(w -> {});
  }

  private static void predict(String cause, String shaft, String way, String amount) {
    screen.choose(cause);
    screen.choose(shaft);
    screen.choose(way);
    screen.type("lesson-amount", amount);
  }

  /** All that can be read, heard or hovered over anywhere in the window. */
  private static List<String> readable() {
    List<String> words = new ArrayList<>();
    for (Node node : screen.all()) {
      words.add(node.getAccessibleText());
      words.add(node.getAccessibleHelp());
      words.add(node.getId());
      if (node instanceof Labeled l) {
        words.add(l.getText());
        Tooltip tip = l instanceof ButtonBase b ? b.getTooltip() : null;
        words.add(tip == null ? "" : tip.getText());
      }
      if (node instanceof TextInputControl field) {
        words.add(field.getText());
      }
      if (node instanceof ToggleButton button && button.isSelected()) {
        words.add("selected " + button.getText());
      }
    }
    words.removeIf(w -> w == null || w.isBlank());
    return words;
  }

  @Test
  void aLessonIsGoneThroughAndEndsWithTheRightBeliefStated() {
    begin("paint");
    assertThat(screen.words()).contains("From exhaust to crank you count 51 links");
    predict("Wrong tooth", "exhaust", "Retarded", "10");
    screen.fire("lesson-commit");
    screen.fire("lesson-turn");
    assertThat(screen.now().reseats()).containsEntry(new Seat("main", "exhaust"), -1);
    screen.fire("lesson-explain");
    assertThat(screen.words())
        .contains("3 of 4 parts right", "You wrote: 10 crank degrees. It is: 20.0 crank degrees.")
        .contains("360/36 = 10.00 degrees");
    screen.fire("lesson-state-1");
    assertThat(screen.words()).contains("Read above what happened, and choose again");
    screen.fire("lesson-state-2");
    assertThat(screen.words())
        .contains("That is right, and you have said it: Only where that link");
  }

  @Test
  void theSessionBeforeComesBackExactly() {
    screen.act(w -> w.desk().act(now -> Edits.reseat(now, new Seat("main", "intake"), 1)));
    screen.act(w -> w.desk().act(now -> Turns.by(now, 33)));
    screen.act(w -> w.desk().undo());
    History before = Screen.on(() -> screen.window().desk().history());
    begin("two-turns");
    predict("Nothing", "None", "Neither", "118");
    screen.fire("lesson-commit");
    screen.fire("lesson-turn");
    screen.act(w -> assertThat(w.desk().now().lesson()).isPresent());
    screen.fire("lesson-end");
    assertThat(Screen.on(() -> screen.window().desk().history())).isEqualTo(before);
    assertThat(screen.words()).doesNotContain("parts right");
  }

  @Test
  void nothingReadableNamesTheFaultBeforeThePredictionOnAnyCard() {
    begin("tool-goes-in");
    for (Bench.Card card : Bench.Card.values()) {
      screen.act(w -> w.bench().turnTo(card));
      assertThat(String.join("\n", readable()))
          .as("%s", card)
          .doesNotContain("2.03")
          .doesNotContain("1.01")
          .doesNotContain("0.20 %")
          .doesNotContain("degrees retarded")
          .doesNotContain("ests where it belongs")
          .doesNotContain("tool-goes-in.");
      assertThat(screen.sentence()).startsWith("A lesson is on: nothing moves");
    }
  }

  /** The drive of this lesson is called by what it is to teach. */
  @Test
  void theNameOfTheDriveWaitsForThePredictionAndALargeViewDoesNotWaitBehindIt() {
    begin("early-cam");
    assertThat(readable()).noneMatch(words -> words != null && words.contains("forgives"));
    screen.press(KeyCode.F11);
    assertThat(Screen.on(() -> screen.window().desk().now().look().show().projected())).isFalse();
  }

  /** Two variants of one hunt look different only in what can be counted. */
  @Test
  void whatTheWindowSaysBesideTheCountsIsTheSameForEveryFault() {
    List<List<String>> said = new ArrayList<>();
    for (int variant = 1; variant <= 5; variant++) {
      screen.choose(" " + variant + " ");
      begin("hunt");
      screen.act(w -> w.bench().turnTo(Bench.Card.LESSON));
      List<String> words = readable();
      words.removeIf(
          w -> w.contains("you count") || w.startsWith("The plunger of") || w.contains("variant"));
      said.add(words);
      screen.fire("lesson-end");
    }
    assertThat(said).allMatch(words -> words.equals(said.get(0)));
  }

  @Test
  void otherCardsAreClosedWithTheReasonUntilTheEngineIsTurned() {
    begin("paint");
    screen.control(KeyCode.DIGIT4);
    assertThat(screen.words())
        .contains("nothing is told before a prediction is committed")
        .doesNotContain("The drive in figures")
        .doesNotContain("misfit");
    screen.act(w -> w.bench().turnTo(Bench.Card.LESSON));
    predict("Nothing", "None", "Neither", "0");
    screen.fire("lesson-commit");
    assertThat(screen.sentence())
        .startsWith("Your prediction is committed. Turn the engine")
        .doesNotContain("before");
    screen.control(KeyCode.DIGIT4);
    assertThat(screen.words()).doesNotContain("The drive in figures");
    screen.act(w -> w.bench().turnTo(Bench.Card.LESSON));
    screen.fire("lesson-turn");
    screen.control(KeyCode.DIGIT4);
    assertThat(screen.words()).contains("The drive in figures", "-10.00", "retarded");
  }

  @Test
  void noKeyDragOrWheelMovesTheEngineOrShowsMoreBeforeThePrediction() {
    begin("paint");
    var before = screen.now();
    screen.press(KeyCode.ESCAPE);
    for (KeyCode key :
        List.of(KeyCode.RIGHT, KeyCode.T, KeyCode.SPACE, KeyCode.PAGE_UP, KeyCode.HOME)) {
      screen.press(key);
    }
    screen.press(KeyCode.DIGIT3);
    screen.press(KeyCode.PLUS);
    screen.drag("exhaust", 30, 0, 23);
    screen.drag("crank", 30, 0, 60);
    screen.control(KeyCode.Z);
    assertThat(screen.now().with(before.look())).isEqualTo(before);
    assertThat(screen.find("play").isDisabled()).isTrue();
  }

  @Test
  void thePictureShowsNoErrorNoFixedMarkAndNoCountAndItsDescriptionNeither() {
    begin("paint");
    assertThat(inks(Ink.ERROR) + inks(Ink.GHOST) + inks(Ink.DIMENSION) + inks(Ink.POINTER))
        .isZero();
    assertThat(inks(Ink.MARK)).isEqualTo(3);
    assertThat(screen.window().picture().getAccessibleText())
        .contains("From exhaust to crank you count 51 links")
        .doesNotContain("retarded")
        .doesNotContain("exhaust: ")
        .doesNotContain("tight side");
    predict("Nothing", "None", "Neither", "0");
    screen.fire("lesson-commit");
    assertThat(inks(Ink.ERROR)).isZero();
    screen.fire("lesson-turn");
    assertThat(inks(Ink.ERROR)).isEqualTo(1);
  }

  private static long inks(Ink ink) {
    return screen.window().picture().picture().orElseThrow().shapes().stream()
        .filter(s -> s.tag().ink() == ink)
        .count();
  }

  @Test
  void undoAndRedoNameNoFault() {
    begin("plain-links");
    predict("Worn chain", "crank", "Advanced", "3");
    assertThat(screen.find("undo").getAccessibleText()).isEqualTo("Undo: Predict the amount");
    screen.fire("lesson-commit");
    assertThat(screen.find("undo").isDisabled()).isTrue();
    assertThat(screen.find("redo").isDisabled()).isTrue();
  }

  @Test
  void aLessonCanBeEndedFromItsTopAndItsBottom() {
    for (String where : List.of("lesson-end", "lesson-end-below")) {
      begin("paint");
      assertThat(screen.now().lesson()).isPresent();
      screen.fire(where);
      assertThat(screen.now().lesson()).isEmpty();
    }
  }

  /** Nor does the title of the window: it is the program's name, whatever is open. */
  @Test
  void theNameAboveThePictureIsTheDrivesAndTheSourceSaysNothing() {
    begin("early-cam");
    assertThat(screen.now().drive().name()).isEqualTo("One tooth forgives");
    assertThat(screen.now().source()).isEqualTo("the lesson");
  }

  @Test
  void ofTheLastLessonTheSameRemembersNothingButThatItWasTaken() {
    begin("ten-degrees");
    List<String> first = readable();
    predict("Wrong tooth", "left-intake", "Retarded", "9");
    screen.fire("lesson-commit");
    screen.fire("lesson-turn");
    screen.fire("lesson-explain");
    screen.fire("lesson-state-1");
    screen.act(w -> w.bench().turnTo(Bench.Card.TABLE));
    screen.act(w -> w.bench().turnTo(Bench.Card.LESSON));
    screen.fire("lesson-end");
    begin("ten-degrees");
    List<String> again = readable();
    String fact = "Taken before on this computer: whoever took it may know what is wrong.";
    assertThat(again).contains(fact);
    again.remove(fact);
    assertThat(again).isEqualTo(first);
    assertThat(screen.now().reseats()).isEmpty();
    predict("Wrong tooth", "left-intake", "Retarded", "9");
    screen.fire("lesson-commit");
    screen.fire("lesson-turn");
    screen.fire("lesson-explain");
    assertThat(screen.words()).contains("Taken before: this mark may come from memory.");
    screen.fire("lesson-end");
    begin("plain-links");
    assertThat(readable()).doesNotContain(fact);
  }

  @Test
  void aHuntThatCanNotBeDrawnSaysWhy() {
    screen.choose("Class: cover on");
    begin("hunt");
    assertThat(screen.words()).contains("Too little can be seen of this drive with the cover on");
    assertThat(screen.now().lesson()).isEmpty();
    screen.type("lesson-seed", "x");
    screen.fire("lesson-hunt");
    assertThat(screen.words()).contains("\"x\" is no number");
    screen.type("lesson-seed", "1");
    screen.choose("Class: borescope");
  }
}
