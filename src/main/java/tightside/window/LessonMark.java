package tightside.window;

import java.util.List;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import tightside.lesson.Closing;
import tightside.lesson.Diagnosis;
import tightside.lesson.Explained;
import tightside.lesson.LessonRun;
import tightside.lesson.Opened;
import tightside.lesson.Part;
import tightside.lesson.Quantity;
import tightside.session.LessonEdits;
import tightside.words.Numbers;

/** The mark in its four parts, why each is as it is, and the question that ends the lesson. */
final class LessonMark extends VBox {

  LessonMark(Desk desk, LessonRun run) {
    getStyleClass().add("sentences");
    Opened opened = run.opened().orElseThrow();
    getChildren()
        .add(Controls.label(opened.marking().points() + " of 4 parts right", "chain-name"));
    if (run.takenBefore()) {
      getChildren().add(Controls.label("Taken before: this mark may come from memory.", "note"));
    }
    for (Explained explained : opened.explained()) {
      getChildren().add(part(run, opened, explained));
    }
    getChildren().add(Controls.label("What happened", "chain-name"));
    getChildren().addAll(Controls.sentences(opened.after()));
    run.sheet().closing().ifPresent(closing -> close(desk, run, closing));
  }

  private static VBox part(LessonRun run, Opened opened, Explained explained) {
    Part part = explained.part();
    boolean right = opened.marking().right(part);
    Label name = Controls.tag(part.words(), "strong");
    Label mark = Controls.tag(right ? "\u2713 right" : "\u2717 not right", "strong");
    if (!right) {
      mark.getStyleClass().add("refusal");
    }
    Label told = Controls.label(told(run, opened, part, right));
    HBox.setHgrow(told, Priority.ALWAYS);
    VBox box =
        Controls.stack(
            "mark-part", Controls.flow(name, mark), told, Controls.label(explained.why(), "note"));
    name.setFocusTraversable(true);
    name.setAccessibleText(
        "%s: %s. %s %s"
            .formatted(
                part.words(), right ? "right" : "not right", told.getText(), explained.why()));
    name.getStyleClass().addAll("row-head", "first");
    return box;
  }

  private static String told(LessonRun run, Opened opened, Part part, boolean right) {
    Quantity quantity = run.sheet().quantity();
    Diagnosis wrote = run.committed().orElseThrow();
    String is = said(opened.right(), part, quantity);
    String said =
        part == Part.AMOUNT
            ? Numbers.plain(wrote.amount()) + " " + quantity.limits().unit()
            : said(wrote, part, quantity);
    return right && said.equals(is)
        ? "You wrote: " + said + "."
        : "You wrote: %s. It is: %s.".formatted(said, is);
  }

  private static String said(Diagnosis diagnosis, Part part, Quantity quantity) {
    return switch (part) {
      case CAUSE -> diagnosis.cause().words();
      case SPROCKET -> diagnosis.shaftWords();
      case DIRECTION -> diagnosis.way().words();
      case AMOUNT -> quantity.words(diagnosis.amount());
    };
  }

  private void close(Desk desk, LessonRun run, Closing closing) {
    getChildren()
        .addAll(
            Controls.label("What do you say now?", "chain-name"),
            Controls.label(closing.question(), "verdict"));
    List<String> options = closing.options();
    for (int i = 0; i < options.size(); i++) {
      int option = i;
      Button button =
          LessonCard.wide(
              Controls.button(
                  options.get(i),
                  options.get(i),
                  () -> desk.act(now -> LessonEdits.state(now, option))));
      button.setWrapText(true);
      button.setId("lesson-state-" + (i + 1));
      button.setMinWidth(0);
      button.setDisable(run.done());
      button.getStyleClass().add("statement");
      button.pseudoClassStateChanged(
          Styling.CHOSEN, run.answer().isPresent() && run.answer().getAsInt() == option);
      getChildren().add(button);
    }
    if (run.done()) {
      getChildren()
          .add(
              Controls.label(
                  "That is right, and you have said it: " + options.get(run.answer().getAsInt()),
                  "verdict"));
    } else if (run.answer().isPresent()) {
      getChildren()
          .add(
              Controls.label(
                  "\u2717 Not so. Read above what happened, and choose again.", "refusal"));
    }
  }
}
