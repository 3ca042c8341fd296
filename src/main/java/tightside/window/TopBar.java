package tightside.window;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import tightside.drive.Drive;
import tightside.drive.Seen;
import tightside.session.Edits;
import tightside.session.History;
import tightside.session.SessionView;

/** What is on the bench, the way back, how much can be seen, and how large it is written. */
final class TopBar extends HBox {

  /** Said of such a drive wherever it is shown. */
  private static final String COUNTED_ONLY = "counted only: no geometry";

  private final Label name = Controls.tag("", "drive-name");
  private final Button undo;
  private final Button redo;
  private final Segments<Seen> cover;
  private final Label size = Controls.tag("", "text-percent");

  /**
   * @param open asks for another model
   * @param keys shows what the keys do
   */
  TopBar(Desk desk, Runnable open, Runnable keys) {
    getStyleClass().add("top-bar");
    undo = Controls.button("Undo", "Undo", desk::undo);
    undo.setId("undo");
    redo = Controls.button("Redo", "Redo", desk::redo);
    redo.setId("redo");
    cover = new Segments<>("Access", covers(), seen -> desk.act(now -> Edits.cover(now, seen)));
    cover.setId("cover");
    Button opening = Controls.button("Open", "Open a model file", open);
    opening.setId("open");
    Button help = Controls.button("Keys", "Show what the keys do", keys);
    help.setId("keys");
    FlowPane flow = Controls.flow(name, opening, undo, redo, cover, help);
    HBox.setHgrow(flow, Priority.ALWAYS);
    getChildren().addAll(flow, text(desk));
    setMinHeight(USE_PREF_SIZE);
  }

  private static Map<Seen, String> covers() {
    Map<Seen, String> covers = new LinkedHashMap<>();
    covers.put(Seen.COVER_ON, "Cover on");
    covers.put(Seen.COVER_OFF, "Cover off");
    covers.put(Seen.BORESCOPE, "Borescope");
    return covers;
  }

  /** In the corner of the window, which stays where it is however large the text. */
  private Node text(Desk desk) {
    Button smaller = Controls.button("A\u2212", "Smaller text", () -> resize(desk, -1));
    smaller.setId("smaller");
    Button larger = Controls.button("A+", "Larger text", () -> resize(desk, 1));
    larger.setId("larger");
    HBox text = new HBox(size, smaller, larger);
    text.getStyleClass().add("close");
    text.setAlignment(Pos.CENTER_RIGHT);
    text.setMaxHeight(USE_PREF_SIZE);
    return text;
  }

  static void resize(Desk desk, int steps) {
    desk.look(look -> look.textSteps(steps));
  }

  /** The name of a lesson's drive may say what it is to teach. */
  private static String name(SessionView view, Drive drive) {
    if (view.snapshot().sealed()) {
      return "The drive of a lesson";
    }
    return drive.countedOnly() ? drive.name() + " \u2014 " + COUNTED_ONLY : drive.name();
  }

  void show(SessionView view, History history) {
    Drive drive = view.snapshot().drive();
    name.setText(name(view, drive));
    show(undo, "Undo", history.undoName());
    show(redo, "Redo", history.redoName());
    cover.show(view.snapshot().cover());
    cover.setDisable(view.snapshot().sealed());
    size.setText(view.snapshot().look().textPercent() + " %");
  }

  /** The step is named in a tip: words that grow would move all that lies beside and below. */
  private static void show(Button button, String verb, Optional<String> step) {
    String words = step.map(name -> verb + ": " + name).orElse(verb);
    button.setDisable(step.isEmpty());
    if (words.equals(button.getAccessibleText())) {
      return;
    }
    button.setAccessibleText(words);
    if (button.getTooltip() == null) {
      button.setTooltip(new Tooltip(words));
    } else {
      button.getTooltip().setText(words);
    }
  }
}
