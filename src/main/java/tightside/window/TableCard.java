package tightside.window;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.VBox;
import tightside.drive.Chain;
import tightside.session.Sentence;
import tightside.session.SessionView;
import tightside.session.ShaftRow;
import tightside.session.StrandRow;

/**
 * What the picture shows, in words and rows. Tab goes from row to row, and each is spoken whole.
 */
final class TableCard extends Card {

  private List<Object> shown = List.of();

  @Override
  void layOut(SessionView view) {
    shown = List.of();
  }

  @Override
  void fill(SessionView view) {
    List<Object> rows = rows(view);
    if (rows.equals(shown)) {
      return;
    }
    shown = rows;
    getChildren().setAll(Controls.label("The drive in figures", "card-title"));
    for (Chain chain : view.snapshot().drive().chains()) {
      getChildren().add(Controls.label(chain.name(), "chain-name"));
      getChildren().add(strands(view.strandRows(chain.name())));
      for (Sentence sentence : view.stands(chain.name())) {
        boolean caution = sentence.topic() == Sentence.Topic.CAUTION;
        Label label =
            caution ? Controls.caution(sentence.text()) : Controls.label(sentence.text(), "note");
        getChildren().add(spoken(label, label.getText()));
      }
    }
    getChildren().add(Controls.label("Shafts, positive = advanced", "chain-name"));
    getChildren().add(shafts(view.shaftRows()));
  }

  /**
   * Everything that the table says; while that stays, so does the table, and what has the focus.
   */
  private static List<Object> rows(SessionView view) {
    List<Object> rows = new ArrayList<>(view.shaftRows());
    for (Chain chain : view.snapshot().drive().chains()) {
      rows.addAll(view.strandRows(chain.name()));
      rows.addAll(view.stands(chain.name()));
    }
    return rows;
  }

  private static VBox strands(List<StrandRow> rows) {
    VBox table =
        Controls.stack("table", line(Controls.tag("from, to", "note"), "links", "betw.", "misfit"));
    for (StrandRow row : rows) {
      String name = row.from() + " to " + row.to();
      String more =
          List.of(row.state(), row.visibleWith(), counted(row)).stream()
              .filter(s -> !s.isEmpty())
              .collect(Collectors.joining("; "));
      String all =
          "%s: %s links, %s between, misfit %s; %s"
              .formatted(name, row.links(), row.between(), row.misfit(), more);
      Label head = spoken(Controls.label(name, "strong"), all);
      table
          .getChildren()
          .addAll(
              line(head, row.links(), row.between(), row.misfit()), Controls.label(more, "note"));
    }
    return table;
  }

  private static String counted(StrandRow row) {
    return row.counted().isEmpty() ? "" : "counted " + row.counted();
  }

  private static VBox shafts(List<ShaftRow> rows) {
    VBox table =
        Controls.stack("table", line(Controls.tag("shaft", "note"), "own °", "crank °", ""));
    for (ShaftRow row : rows) {
      String all =
          "%s, %s: %s degrees, %s crank degrees, %s"
              .formatted(
                  row.shaft(), row.role(), row.shaftDegrees(), row.crankDegrees(), row.state());
      Label head = spoken(Controls.label(row.shaft(), "strong"), all);
      table
          .getChildren()
          .add(
              row.known()
                  ? line(head, row.shaftDegrees(), row.crankDegrees(), row.state())
                  : unknown(head, row.state()));
    }
    return table;
  }

  /** A row: what it is about, and three short entries in columns. */
  private static GridPane line(Label head, String... entries) {
    GridPane line = new GridPane();
    for (double percent : new double[] {40, 19, 18, 23}) {
      ColumnConstraints column = new ColumnConstraints();
      column.setPercentWidth(percent);
      line.getColumnConstraints().add(column);
    }
    line.add(head, 0, 0);
    for (int i = 0; i < entries.length; i++) {
      line.add(Controls.tag(entries[i]), i + 1, 0);
    }
    return line;
  }

  /** A row without figures has the room of its columns for why. */
  private static GridPane unknown(Label head, String why) {
    GridPane line = line(head);
    line.add(Controls.label(why), 1, 0, 3, 1);
    return line;
  }

  private static Label spoken(Label label, String words) {
    label.setFocusTraversable(true);
    label.setAccessibleText(words);
    label.getStyleClass().add("row-head");
    return label;
  }
}
