package tightside.window;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.VBox;
import tightside.engine.Engine;
import tightside.session.SessionView;
import tightside.session.Snapshot;
import tightside.session.ValveLook;
import tightside.session.ValvePage;
import tightside.session.ValveReading;
import tightside.session.Valves;

/** The card on which it is read what the camshafts, as they stand, do to valves and compression. */
final class ValvesCard extends Card {

  private static final double[] COLUMNS = {13, 31, 26, 13, 17};

  /** A window narrower than this has no room for the drive beside the valves. */
  private static final double ROOM_FOR_BOTH_EMS = 66;

  private final Desk desk;
  private final ValveStage stage = new ValveStage();
  private final VBox page = Controls.stack("card");
  private Optional<Segments<Integer>> cylinders = Optional.empty();
  private Optional<Segments<Integer>> valves = Optional.empty();
  private Segments<Boolean> range;
  private ToggleButton past;
  private Optional<Valves> shown = Optional.empty();
  private boolean engine;
  private boolean roomy = true;

  /** Whether the drive has the room that is too little for both. */
  private boolean drive;

  private final Segments<Boolean> large;
  private final Label figures = Controls.label("", "verdict");

  ValvesCard(Desk desk) {
    this.desk = desk;
    Map<Boolean, String> words = new LinkedHashMap<>();
    words.put(false, "Valves large");
    words.put(true, "Drive large (D)");
    large = new Segments<>("Shown large", words, chosen -> look(l -> l.drive(chosen)));
  }

  @Override
  Optional<Stage> stage() {
    return engine && (roomy || !drive) ? Optional.of(new Stage(stage, roomy)) : Optional.empty();
  }

  private void look(java.util.function.UnaryOperator<ValveLook> other) {
    desk.look(look -> look.with(other.apply(look.valves())));
  }

  @Override
  void layOut(SessionView view) {
    shown = Optional.empty();
    engine = view.snapshot().engine().isPresent();
    getChildren().setAll(Controls.label("What does it do to the valves?", "card-title"));
    if (!engine) {
      getChildren().add(Controls.label(ValvePage.missing()));
      return;
    }
    getChildren().addAll(large, figures);
    Engine known = view.snapshot().engine().orElseThrow();
    cylinders = choice("Cylinder", "Cylinder ", numbers(known.phasesDegrees().size()), true);
    valves = choice("Valve", "", ValveReading.names(known), false);
    Map<Boolean, String> ranges = new LinkedHashMap<>();
    ranges.put(false, "Near top dead centre");
    ranges.put(true, "Two turns");
    range = new Segments<>("Chart", ranges, wide -> look(l -> l.twoTurns(wide)));
    past = new ToggleButton("Go past, as a drawing only (G)");
    past.setId("past");
    past.setAccessibleText("Turn the drawing past a valve that touches, which no engine can be");
    past.setOnAction(e -> look(l -> l.past(past.isSelected())));
    getChildren().addAll(range, past, page);
  }

  private static List<String> numbers(int count) {
    return java.util.stream.IntStream.rangeClosed(1, count).mapToObj(i -> "" + i).toList();
  }

  private Optional<Segments<Integer>> choice(
      String what, String before, List<String> names, boolean cylinder) {
    if (names.size() < 2) {
      return Optional.empty();
    }
    Map<Integer, String> words = new LinkedHashMap<>();
    for (int i = 0; i < names.size(); i++) {
      words.put(i, i == 0 ? before + names.get(i) : names.get(i));
    }
    Segments<Integer> choice =
        new Segments<>(what, words, i -> look(l -> cylinder ? l.cylinder(i) : l.valve(i)))
            .wrapping();
    getChildren().add(choice);
    return Optional.of(choice);
  }

  @Override
  void fill(SessionView view) {
    Optional<ValveReading> reading = ValveReading.of(view);
    if (!engine || reading.isEmpty()) {
      return;
    }
    Snapshot now = view.snapshot();
    double em = BenchWindow.emPixels(now.look());
    roomy = getScene() == null || getScene().getWidth() > ROOM_FOR_BOTH_EMS * em;
    drive = now.look().valves().drive();
    large.show(drive);
    Controls.visible(large, !roomy);
    // Said large on the stage, and then not laid out here for every frame.
    boolean here = stage().isEmpty();
    Controls.visible(figures, here);
    if (here) {
      figures.setText(reading.get().room() + ", " + reading.get().where());
      figures.pseudoClassStateChanged(Styling.CAUTION, reading.get().roomMm() <= 1e-6);
    }
    stage.show(reading.get(), now.look(), em);
    cylinders.ifPresent(c -> c.show(reading.get().cylinder()));
    valves.ifPresent(v -> v.show(reading.get().valve()));
    range.show(now.look().valves().twoTurns());
    past.setSelected(now.look().valves().past());
    if (!shown.equals(view.valves())) {
      shown = view.valves();
      show(ValvePage.of(now, shown.orElseThrow()));
    }
  }

  private void show(ValvePage made) {
    page.getChildren().setAll(Controls.sentences(made.summary()));
    for (ValvePage.Table table : made.tables()) {
      page.getChildren()
          .addAll(
              Controls.label(
                  table.shaft() + " on another tooth, " + table.perTooth(), "chain-name"),
              table(table));
    }
    page.getChildren().addAll(Controls.sentences(made.notes(), "note"));
  }

  private static VBox table(ValvePage.Table table) {
    VBox rows =
        Controls.stack(
            "small-table",
            Controls.row(
                COLUMNS, Controls.tag("teeth", "note"), "room mm", "at", "ratio", "overlap"));
    for (ValvePage.Row row : table.rows()) {
      Label head = Controls.tag(row.teeth(), "strong", "row-head");
      head.setFocusTraversable(true);
      head.setAccessibleText(row.spoken());
      GridPane line =
          Controls.row(COLUMNS, head, row.room(), row.at(), row.compression(), row.overlap() + "°");
      if (row.touches()) {
        line.getChildren().forEach(n -> n.getStyleClass().add("refusal"));
      }
      rows.getChildren().add(line);
    }
    return rows;
  }
}
