package tightside.window;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.VBox;
import tightside.session.ComparePage;
import tightside.session.Comparing;
import tightside.session.SessionView;

/** The card on which a state is kept as A, and read beside what is there now. */
final class CompareCard extends Card {

  private static final double[] COLUMNS = {56, 23, 21};

  private final Desk desk;
  private final Button forget;
  private final Segments<Boolean> lay;
  private final VBox page = Controls.stack("card");
  private Optional<ComparePage> shown = Optional.empty();

  CompareCard(Desk desk) {
    this.desk = desk;
    forget = Controls.button("Forget A", "Forget the state that is compared with", this::forget);
    forget.setId("forget");
    Map<Boolean, String> words = new LinkedHashMap<>();
    words.put(false, "One on the other");
    words.put(true, "Side by side");
    lay = new Segments<>("Compared", words, this::lay);
  }

  private void forget() {
    desk.act(Comparing::forget);
  }

  private void lay(boolean sideBySide) {
    desk.look(look -> look.with(look.show().sideBySide(sideBySide)));
  }

  @Override
  void layOut(SessionView view) {
    shown = Optional.empty();
    Button keep =
        Controls.button("Keep this as A", "Keep this state to compare others with", this::keep);
    keep.setId("keep");
    page.getChildren().clear();
    getChildren()
        .setAll(
            Controls.label("Compare two states", "card-title"),
            Controls.label(
                "Keep what is there as A (key A), then change what you like: that is B. Outlines"
                    + " in dashes are A's marks and painted links. Key O: one on the other, or"
                    + " side by side.",
                "note"),
            Controls.flow(keep, forget),
            lay,
            page);
  }

  private void keep() {
    desk.act(Comparing::keep);
  }

  @Override
  void fill(SessionView view) {
    Optional<SessionView> kept = view.kept();
    forget.setDisable(kept.isEmpty());
    lay.show(view.snapshot().look().show().sideBySide());
    Optional<ComparePage> made = kept.map(a -> ComparePage.of(a, view));
    if (made.isPresent() && made.equals(shown)) {
      return;
    }
    shown = made;
    page.getChildren()
        .setAll(
            made.map(CompareCard::table)
                .map(List::of)
                .orElse(List.of(Controls.stack("table", Controls.label("Nothing is kept yet.")))));
  }

  private static VBox table(ComparePage page) {
    VBox table =
        Controls.stack(
            "small-table",
            Controls.row(
                COLUMNS, Controls.label("different in bold", "note"), "A, kept", "B, now"));
    for (ComparePage.Row row : page.rows()) {
      String weight = row.differs() ? "strong" : "note";
      Label head = Controls.label(row.what(), weight, "row-head");
      head.setFocusTraversable(true);
      head.setAccessibleText("%s: A %s, B %s".formatted(row.what(), row.a(), row.b()));
      GridPane line = Controls.row(COLUMNS, head, row.a(), row.b());
      line.getChildren().stream().skip(1).forEach(n -> n.getStyleClass().add(weight));
      table.getChildren().add(line);
    }
    return table;
  }
}
