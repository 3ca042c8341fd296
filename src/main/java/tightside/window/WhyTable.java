package tightside.window;

import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import tightside.reasoning.Answer;
import tightside.reasoning.Group;
import tightside.reasoning.Weighed;
import tightside.words.ExplainWords;
import tightside.words.Numbers;
import tightside.words.WhyWords;

/**
 * Explanations as rows: prior, the factor of every reading, and what comes of them; it scrolls
 * sideways where there are more readings than room.
 */
final class WhyTable {

  private static final double LEAST_WIDTH = 130;

  private WhyTable() {}

  static ScrollPane of(Answer answer) {
    ScrollPane scroll = new ScrollPane(grid(answer));
    scroll.setFitToWidth(true);
    scroll.setVbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
    scroll.setAccessibleText("How the figures come about, a row for each explanation");
    return scroll;
  }

  private static GridPane grid(Answer answer) {
    GridPane grid = new GridPane();
    grid.getStyleClass().add("why-table");
    ColumnConstraints first = new ColumnConstraints();
    first.setHgrow(Priority.ALWAYS);
    first.setMinWidth(LEAST_WIDTH);
    grid.getColumnConstraints().add(first);
    int readings = answer.evidence().readings().size();
    grid.add(Controls.label("", "strong"), 0, 0);
    grid.add(Controls.tag("prior", "strong"), 1, 0);
    for (int i = 0; i < readings; i++) {
      grid.add(Controls.tag("x " + (i + 1), "strong"), 2 + i, 0);
    }
    grid.add(Controls.tag("now", "strong"), 2 + readings, 0);
    int row = 1;
    for (Group group : WhyWords.shown(answer)) {
      for (Weighed one : WhyWords.members(group)) {
        addRow(grid, row++, one);
      }
    }
    return grid;
  }

  private static void addRow(GridPane grid, int row, Weighed one) {
    grid.add(Controls.label(WhyWords.brief(one.what())), 0, row);
    grid.add(number(share(one.prior())), 1, row);
    int readings = one.factors().size();
    for (int i = 0; i < readings; i++) {
      String off = WhyWords.briefly(one.foreseen().get(i));
      grid.add(number(ExplainWords.factor(one.factors().get(i)) + "\n" + off), 2 + i, row);
    }
    grid.add(number(share(one.probability())), 2 + readings, row);
  }

  private static String share(double probability) {
    return Numbers.fixed(100 * probability, 1) + " %";
  }

  private static Label number(String words) {
    return Controls.tag(words);
  }
}
