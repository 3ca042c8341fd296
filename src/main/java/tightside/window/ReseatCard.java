package tightside.window;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import tightside.session.Edits;
import tightside.session.SessionView;
import tightside.session.ShaftRow;

/** The card on which sprockets are lifted and set over, and what that does to the shafts. */
final class ReseatCard extends Card {

  private final Desk desk;
  private final List<SprocketLine> lines = new ArrayList<>();
  private final Map<String, Label> shafts = new LinkedHashMap<>();
  private final Button right;

  ReseatCard(Desk desk) {
    this.desk = desk;
    right =
        Controls.button(
            "Put all right", "Put every sprocket right", () -> desk.act(Edits::putAllRight));
    right.setId("put-all-right");
  }

  @Override
  void layOut(SessionView view) {
    lines.clear();
    shafts.clear();
    getChildren().setAll(Controls.label("Lift a sprocket and set it over", "card-title"));
    getChildren()
        .add(
            Controls.label(
                "Drag it round in the picture, or set it here. Ahead is the way its shaft turns.",
                "note"));
    List<Wheel> wheels = Wheel.all(view.snapshot().drive());
    String chain = "";
    for (Wheel wheel : wheels) {
      if (!wheel.seat().chain().equals(chain)) {
        chain = wheel.seat().chain();
        getChildren().add(Controls.label(chain, "chain-name"));
      }
      SprocketLine line = new SprocketLine(desk, lines.size() + 1, wheel);
      lines.add(line);
      getChildren().add(line);
    }
    getChildren().addAll(right, Controls.label("How the shafts stand", "chain-name"), shafts(view));
    getChildren()
        .add(
            Controls.label(
                "On the engine: lock the shafts and follow its maker's procedure.", "note"));
  }

  private VBox shafts(SessionView view) {
    VBox box = Controls.stack("sentences");
    for (ShaftRow row : view.shaftRows()) {
      Label label = Controls.label("");
      shafts.put(row.shaft(), label);
      box.getChildren().add(label);
    }
    return box;
  }

  @Override
  void fill(SessionView view) {
    lines.forEach(line -> line.show(view.snapshot()));
    right.setDisable(view.snapshot().reseats().isEmpty());
    for (ShaftRow row : view.shaftRows()) {
      Optional.ofNullable(shafts.get(row.shaft())).ifPresent(label -> show(label, row));
    }
  }

  private static void show(Label label, ShaftRow row) {
    boolean off = row.known() && !row.state().equals("right");
    label.setText(
        off
            ? "%s: %s° %s, %s° crank, %s"
                .formatted(
                    row.shaft(),
                    row.shaftDegrees(),
                    row.role().equals("camshaft") ? "cam" : "shaft",
                    row.crankDegrees(),
                    row.state())
            : row.shaft() + ": " + row.state());
    label.getStyleClass().remove("refusal");
    if (off) {
      label.getStyleClass().add("refusal");
    }
  }
}
