package tightside.window;

import java.util.Optional;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import tightside.session.Edits;
import tightside.session.Look;
import tightside.session.Snapshot;
import tightside.timing.Lay;

/** One sprocket on the card: its number, how far it sits off, and a tooth either way. */
final class SprocketLine extends HBox {

  private final Wheel wheel;
  private final Label sits = Controls.tag("", "sits");
  private final Button behind;
  private final Button ahead;

  SprocketLine(Desk desk, int number, Wheel wheel) {
    this.wheel = wheel;
    getStyleClass().addAll("line", "sprocket-line");
    setAlignment(Pos.CENTER_LEFT);
    Label name =
        Controls.label("%d  %s, %d teeth".formatted(number, wheel.seat().shaft(), wheel.teeth()));
    name.setMaxWidth(Double.MAX_VALUE);
    HBox.setHgrow(name, Priority.ALWAYS);
    behind = button(desk, "\u2212", "one tooth behind", -1);
    ahead = button(desk, "+", "one tooth ahead", 1);
    getChildren().addAll(name, behind, sits, ahead);
    setOnMouseClicked(e -> select(desk));
  }

  private Button button(Desk desk, String words, String spoken, int teeth) {
    String said = "Set %s of %s %s".formatted(wheel.seat().shaft(), wheel.seat().chain(), spoken);
    Button button =
        Controls.button(
            words,
            said,
            () -> {
              select(desk);
              desk.act(now -> Edits.reseat(now, wheel.seat(), teeth));
            });
    button.setId(
        (teeth > 0 ? "ahead-" : "behind-") + wheel.seat().chain() + "-" + wheel.seat().shaft());
    return button;
  }

  private void select(Desk desk) {
    desk.look(look -> look.selecting(Optional.of(Keys.selection(wheel.seat()))));
  }

  void show(Snapshot now) {
    int teeth = now.state().teethAt(wheel.seat());
    sits.setText(teeth == 0 ? "0" : (teeth > 0 ? "+" : "\u2212") + Math.abs(teeth));
    behind.setDisable(teeth <= -Lay.MOST_TEETH);
    ahead.setDisable(teeth >= Lay.MOST_TEETH);
    Optional<Look.Selection> own = Optional.of(Keys.selection(wheel.seat()));
    pseudoClassStateChanged(Styling.CHOSEN, now.look().selected().equals(own));
  }
}
