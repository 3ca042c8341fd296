package tightside.window;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.control.Slider;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import tightside.drive.Chain;
import tightside.drive.Limits;
import tightside.session.Decimals;
import tightside.session.Edits;
import tightside.session.Sentence;
import tightside.session.SessionView;
import tightside.session.Typed;
import tightside.timing.TensionerReading;

/** One chain's wear: its stretch, typed or drawn along, a measurement of it, and its plunger. */
final class ChainWear extends VBox {

  /** Where the slider ends, percent; a field takes more. */
  private static final double SLIDER_END = 2;

  private final Desk desk;
  private final String chain;
  private final BooleanSupplier showing;
  private final TextField percent;
  private final Slider slider = new Slider(0, SLIDER_END, 0);
  private final Label refusal = Controls.label("", "refusal");
  private final CalliperLine calliper;
  private final PlungerScale plunger;
  private final Optional<HoldLine> hold;
  private final VBox stands = Controls.stack("sentences");
  private List<Sentence> said = List.of();

  ChainWear(Desk desk, Chain chain, BooleanSupplier showing) {
    this.desk = desk;
    this.chain = chain.name();
    this.showing = showing;
    getStyleClass().add("chain-wear");
    percent = Controls.field("Stretch of " + this.chain + " in percent", 4, this::typed);
    percent.setId("stretch-" + this.chain);
    slider.setId("slider-" + this.chain);
    slider.setAccessibleText("Stretch of " + this.chain + " in percent, to draw along");
    slider.setBlockIncrement(0.05);
    slider.valueProperty().addListener((o, before, after) -> drawn(after.doubleValue()));
    Controls.visible(refusal, false);
    calliper = new CalliperLine(desk, chain);
    plunger = new PlungerScale(chain);
    hold = chain.tensioner().map(t -> new HoldLine(desk, chain));
    Controls.visible(plunger, chain.tensioner().isPresent());
    getChildren()
        .addAll(
            Controls.label(this.chain, "chain-name"), line(), refusal, calliper, plunger, stands);
    hold.ifPresent(getChildren()::add);
  }

  private HBox line() {
    HBox line = new HBox(Controls.tag("Stretch"), percent, Controls.tag("%"), slider);
    line.getStyleClass().add("line");
    line.setAlignment(Pos.CENTER_LEFT);
    HBox.setHgrow(slider, Priority.ALWAYS);
    slider.setMinWidth(60);
    slider.setPrefWidth(80);
    return line;
  }

  private Typed read() {
    return Decimals.within(percent.getText(), "The stretch", Limits.STRETCH_PERCENT);
  }

  private void typed(String text) {
    if (showing.getAsBoolean()) {
      return;
    }
    Typed typed = read();
    typed.refusal().ifPresent(refusal::setText);
    Controls.visible(refusal, typed.refusal().isPresent());
    if (typed instanceof Typed.Number number) {
      desk.act(now -> Edits.stretch(now, chain, number.value()));
    }
  }

  private void drawn(double value) {
    double hundredths = Math.rint(value * 100) / 100;
    boolean beyond = desk.now().state().stretchOf(chain) > SLIDER_END && value == SLIDER_END;
    if (!showing.getAsBoolean() && !beyond) {
      desk.act(now -> Edits.stretch(now, chain, hundredths));
    }
  }

  void show(SessionView view) {
    double stretch = view.snapshot().state().stretchOf(chain);
    if (!(read() instanceof Typed.Number number && number.value() == stretch)) {
      percent.setText(shortest(stretch));
      Controls.visible(refusal, false);
    }
    if (Math.abs(slider.getValue() - stretch) > 0.0051) {
      slider.setValue(stretch);
    }
    view.solution().chain(chain).flatMap(c -> c.tensioner()).ifPresent(this::show);
    calliper.show(view.runsOutPercent(chain));
    show(view.stands(chain));
  }

  private void show(TensionerReading reading) {
    plunger.show(reading);
    hold.ifPresent(line -> line.show(reading));
  }

  private void show(List<Sentence> sentences) {
    if (sentences.equals(said)) {
      return;
    }
    said = sentences;
    stands.getChildren().clear();
    for (Sentence sentence : sentences) {
      boolean caution = sentence.topic() == Sentence.Topic.CAUTION;
      stands
          .getChildren()
          .add(
              caution
                  ? Controls.caution(sentence.text())
                  : Controls.label(sentence.text(), "note"));
    }
  }

  private static String shortest(double value) {
    return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
  }
}
