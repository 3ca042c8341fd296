package tightside.window;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
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
        getChildren().add(spoken(Controls.label(sentence.text(), "note"), sentence.text()));
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

  private static GridPane strands(List<StrandRow> rows) {
    GridPane grid = grid("from, to", "links", "between", "misfit");
    int at = 1;
    for (StrandRow row : rows) {
      String name = row.from() + " to " + row.to();
      String more =
          List.of(row.state(), row.visibleWith(), counted(row)).stream()
              .filter(s -> !s.isEmpty())
              .collect(Collectors.joining("; "));
      String all =
          "%s: %s links, %s between, misfit %s; %s"
              .formatted(name, row.links(), row.between(), row.misfit(), more);
      grid.addRow(
          at,
          spoken(Controls.label(name, "strong"), all),
          Controls.tag(row.links()),
          Controls.tag(row.between()),
          Controls.tag(row.misfit()));
      grid.add(Controls.label(more, "note"), 0, at + 1, 4, 1);
      at += 2;
    }
    return grid;
  }

  private static String counted(StrandRow row) {
    return row.counted().isEmpty() ? "" : "counted " + row.counted();
  }

  private static GridPane shafts(List<ShaftRow> rows) {
    GridPane grid = grid("shaft", "own °", "crank °", "");
    int at = 1;
    for (ShaftRow row : rows) {
      String all =
          "%s, %s: %s degrees, %s crank degrees, %s"
              .formatted(
                  row.shaft(), row.role(), row.shaftDegrees(), row.crankDegrees(), row.state());
      grid.addRow(
          at,
          spoken(Controls.label(row.shaft(), "strong"), all),
          Controls.tag(row.shaftDegrees()),
          Controls.tag(row.crankDegrees()),
          Controls.tag(row.state()));
      at++;
    }
    return grid;
  }

  private static GridPane grid(String... heads) {
    GridPane grid = new GridPane();
    grid.getStyleClass().add("table");
    for (int i = 0; i < heads.length; i++) {
      ColumnConstraints column = new ColumnConstraints();
      column.setHgrow(i == 0 ? Priority.ALWAYS : Priority.NEVER);
      grid.getColumnConstraints().add(column);
      grid.add(Controls.tag(heads[i], "note"), i, 0);
    }
    return grid;
  }

  private static Label spoken(Label label, String words) {
    label.setFocusTraversable(true);
    label.setAccessibleText(words);
    label.getStyleClass().add("row-head");
    return label;
  }
}
