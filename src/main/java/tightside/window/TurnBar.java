package tightside.window;

import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Slider;
import javafx.scene.control.TextField;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import tightside.session.Crank;
import tightside.session.Decimals;
import tightside.session.SessionView;
import tightside.session.Turns;
import tightside.session.Typed;

/** Everything by which the engine is turned without touching the picture. */
final class TurnBar extends VBox {

  private final Desk desk;
  private final Player player;
  private final TurnRuler ruler;
  private final TextField angle;
  private final Label refusal = Controls.tag("", "refusal");
  private final Label pace = Controls.tag("");
  private final Button play;
  private boolean showing;

  TurnBar(Desk desk, Player player) {
    this.desk = desk;
    this.player = player;
    getStyleClass().add("turn-bar");
    ruler = new TurnRuler(degrees -> desk.act(now -> Turns.to(now, degrees)));
    angle = Controls.field("Crank angle in degrees", 5, text -> typed());
    angle.setId("angle");
    angle.setOnAction(e -> take());
    play = Controls.button("Play", "Let the engine turn by itself", this::toggle);
    play.setId("play");
    player.whenStopped(this::playing);
    Controls.visible(refusal, false);
    getChildren().addAll(ruler, buttons());
  }

  private FlowPane buttons() {
    FlowPane flow =
        Controls.flow(
            named("reference", "Reference", "Jump to the reference position", this::reference),
            named("tooth-back", "\u2212 tooth", "One tooth back", () -> teeth(-1)),
            named("degree-back", "\u2212 1°", "One degree back", () -> by(-1)),
            angle,
            named("degree-on", "+ 1°", "One degree on", () -> by(1)),
            named("tooth-on", "+ tooth", "One tooth on", () -> teeth(1)),
            named("two-turns", "Two turns", "Two turns on", this::twoTurns),
            play,
            speed(),
            pace,
            refusal);
    flow.setAlignment(Pos.CENTER);
    return flow;
  }

  private static Button named(String id, String words, String spoken, Runnable action) {
    Button button = Controls.button(words, spoken, action);
    button.setId(id);
    return button;
  }

  private Slider speed() {
    Slider speed = new Slider(Player.SLOWEST, Player.FASTEST, Player.USUAL);
    speed.setId("speed");
    speed.setAccessibleText("Speed of play in crank degrees per second");
    speed.setBlockIncrement(6);
    speed.setMinWidth(Slider.USE_PREF_SIZE);
    speed
        .valueProperty()
        .addListener(
            (o, before, after) -> {
              player.speed(after.doubleValue());
              pace(after.doubleValue());
            });
    pace(Player.USUAL);
    return speed;
  }

  private void pace(double degrees) {
    pace.setText(Math.round(degrees) + "°/s");
  }

  void reference() {
    player.stop();
    desk.act(Turns::toReference);
  }

  /** Turned, not jumped: a person sees the paint move on. */
  void twoTurns() {
    player.sweep(TurnRuler.CYCLE);
    playing();
  }

  void by(double degrees) {
    desk.act(now -> Turns.by(now, degrees));
  }

  void teeth(int teeth) {
    desk.act(now -> Turns.byTeeth(now, teeth));
  }

  void toggle() {
    player.toggle();
    playing();
  }

  private void playing() {
    play.setText(player.running() ? "Pause" : "Play");
    play.setAccessibleText(player.running() ? "Stop the engine" : "Let the engine turn by itself");
  }

  private void typed() {
    if (!showing) {
      Controls.visible(refusal, false);
    }
  }

  /** Turns to what was typed, or says why not. */
  private void take() {
    Typed typed = Decimals.within(angle.getText(), "The crank angle", Crank.ANGLE);
    typed.refusal().ifPresent(refusal::setText);
    Controls.visible(refusal, typed.refusal().isPresent());
    if (typed instanceof Typed.Number number) {
      desk.act(now -> Turns.to(now, number.value()));
      show(desk.view());
    }
  }

  void show(SessionView view) {
    double degrees = view.snapshot().crank().degrees();
    setDisable(view.snapshot().sealed());
    ruler.show(view.snapshot(), Angles.crankTeeth(view.snapshot().drive()), player.running());
    playing();
    Typed typed = Decimals.within(angle.getText(), "", Crank.ANGLE);
    if (!(typed instanceof Typed.Number n && n.value() == degrees)) {
      showing = true;
      angle.setText(Angles.typed(degrees));
      Controls.visible(refusal, false);
      showing = false;
    }
  }
}
