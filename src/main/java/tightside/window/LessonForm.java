package tightside.window;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiFunction;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.VBox;
import tightside.lesson.Cause;
import tightside.lesson.Diagnosis;
import tightside.lesson.LessonRun;
import tightside.lesson.LessonSheet;
import tightside.lesson.Way;
import tightside.session.Edit;
import tightside.session.LessonEdits;
import tightside.session.Snapshot;

/** What a class is told, and where it writes its prediction. */
final class LessonForm extends VBox {

  private final Desk desk;
  private final Segments<Cause> cause;
  private final Segments<String> shaft;
  private final Segments<Way> way;
  private final TextField amount;
  private final Label missing = Controls.label("", "note");
  private final Button commit;
  private boolean showing;

  LessonForm(Desk desk, LessonSheet sheet) {
    this.desk = desk;
    getStyleClass().add("sentences");
    cause = segments("What is wrong", causes(), LessonEdits::cause);
    shaft = segments("Which sprocket", shafts(sheet), LessonEdits::shaft);
    way = segments("Which way", ways(), LessonEdits::way);
    amount = Controls.field("Amount, " + sheet.quantity().limits().unit(), 6, this::typed);
    amount.setId("lesson-amount");
    amount.setOnAction(e -> commit());
    commit = LessonCard.wide(Controls.button("Commit", "Commit the prediction", this::commit));
    commit.setId("lesson-commit");
    told(sheet);
    asked(sheet);
  }

  private void told(LessonSheet sheet) {
    sheet.belief().ifPresent(belief -> getChildren().add(Controls.label(belief, "belief")));
    getChildren().add(Controls.label(sheet.story()));
    getChildren().add(Controls.label("What belongs there", "chain-name"));
    getChildren().addAll(Controls.sentences(sheet.belongs()));
    getChildren().add(Controls.label("What you see " + sheet.accessWords(), "chain-name"));
    getChildren().addAll(Controls.sentences(sheet.seen()));
  }

  private void asked(LessonSheet sheet) {
    getChildren()
        .addAll(
            Controls.label("Your prediction", "chain-name"),
            Controls.label(sheet.ask(), "verdict"),
            Controls.label("What is wrong?"),
            cause,
            Controls.label("Which sprocket, or which shaft the most?"),
            shaft,
            Controls.label("Which way does it stand? Advanced is early, retarded late."),
            way,
            Controls.label(sheet.quantity().question()),
            Controls.flow(
                amount,
                Controls.tag(sheet.quantity().limits().unit()),
                Controls.tag("(" + sheet.margin().words() + ")", "note")),
            missing,
            commit);
  }

  private static Map<Cause, String> causes() {
    Map<Cause, String> words = new LinkedHashMap<>();
    words.put(Cause.NOTHING, "Nothing");
    words.put(Cause.WRONG_TOOTH, "Wrong tooth");
    words.put(Cause.WORN_CHAIN, "Worn chain");
    words.put(Cause.JOINT, "Phaser or joint");
    return words;
  }

  private static Map<String, String> shafts(LessonSheet sheet) {
    Map<String, String> words = new LinkedHashMap<>();
    sheet.shafts().forEach(name -> words.put(name, name));
    words.put(Diagnosis.NO_SHAFT, "None");
    return words;
  }

  private static Map<Way, String> ways() {
    Map<Way, String> words = new LinkedHashMap<>();
    words.put(Way.ADVANCED, "Advanced");
    words.put(Way.RETARDED, "Retarded");
    words.put(Way.NEITHER, "Neither");
    return words;
  }

  private <T> Segments<T> segments(
      String what, Map<T, String> words, BiFunction<Snapshot, T, Edit> edit) {
    return new Segments<>(what, words, (T chosen) -> desk.act(now -> edit.apply(now, chosen)))
        .wrapping();
  }

  private void typed(String text) {
    if (!showing) {
      desk.act(now -> LessonEdits.amount(now, text));
    }
  }

  private void commit() {
    desk.act(LessonEdits::commit);
  }

  void show(LessonRun run) {
    run.draft().cause().ifPresentOrElse(cause::show, cause::none);
    run.draft().shaft().ifPresentOrElse(shaft::show, shaft::none);
    run.draft().way().ifPresentOrElse(way::show, way::none);
    if (!amount.getText().equals(run.draft().amount())) {
      showing = true;
      amount.setText(run.draft().amount());
      showing = false;
    }
    List<String> lacks = LessonEdits.missing(run);
    missing.setText(
        lacks.isEmpty()
            ? "Once committed it can't be changed."
            : lacks.get(0)
                + (lacks.size() > 1 ? " (" + (lacks.size() - 1) + " more to write)" : ""));
    commit.setDisable(!lacks.isEmpty());
  }
}
