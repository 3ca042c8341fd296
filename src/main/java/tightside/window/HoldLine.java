package tightside.window;

import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.VBox;
import tightside.drive.Chain;
import tightside.drive.Limits;
import tightside.session.Decimals;
import tightside.session.Edits;
import tightside.session.Typed;
import tightside.timing.TensionerReading;
import tightside.words.Numbers;

/** The plunger held back by hand tools, or let go. */
final class HoldLine extends VBox {

  private final Desk desk;
  private final String chain;
  private final Limits travel;
  private final TextField at;
  private boolean typed;
  private boolean showing;
  private final Label refusal = Controls.label("", "refusal");

  HoldLine(Desk desk, Chain chain) {
    this.desk = desk;
    this.chain = chain.name();
    travel = new Limits(0, chain.tensioner().orElseThrow().plunger().travelMm(), "mm");
    at = Controls.field("Hold the plunger of " + this.chain + " at millimetres", 3, t -> typed());
    at.setId("hold-at-" + this.chain);
    at.setOnAction(e -> hold());
    var hold = Controls.button("Hold", "Hold the plunger of " + this.chain, this::hold);
    hold.setId("hold-" + this.chain);
    var free = Controls.button("Let go", "Let the plunger of " + this.chain + " go", this::free);
    free.setId("free-" + this.chain);
    clear();
    getChildren()
        .addAll(
            Controls.flow(Controls.tag("Plunger"), at, Controls.tag("mm"), hold, free), refusal);
  }

  /** The field follows the plunger until a person types in it. */
  void show(TensionerReading reading) {
    if (!typed && !at.isFocused()) {
      showing = true;
      at.setText(Numbers.fixed(reading.extensionMm(), 1));
      showing = false;
    }
  }

  private void typed() {
    typed |= !showing;
    clear();
  }

  private void clear() {
    Controls.visible(refusal, false);
  }

  private void hold() {
    Typed typed = Decimals.within(at.getText(), "The plunger", travel);
    typed.refusal().ifPresent(refusal::setText);
    Controls.visible(refusal, typed.refusal().isPresent());
    if (typed instanceof Typed.Number number) {
      this.typed = false;
      desk.act(now -> Edits.hold(now, chain, number.value()));
    }
  }

  private void free() {
    typed = false;
    desk.act(now -> Edits.release(now, chain));
  }
}
