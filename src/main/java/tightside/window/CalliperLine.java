package tightside.window;

import java.util.OptionalDouble;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.VBox;
import tightside.drive.Chain;
import tightside.drive.Limits;
import tightside.session.Decimals;
import tightside.session.Edits;
import tightside.session.Typed;
import tightside.session.Words;
import tightside.timing.CalliperStretch;

/** A measurement with a calliper: so many links, so many millimetres. */
final class CalliperLine extends VBox {

  private static final Limits LINKS = new Limits(0, 2_000, "links");
  private static final Limits LENGTH = new Limits(0.1, 20_000, "mm");

  private final Desk desk;
  private final Chain chain;
  private final TextField links;
  private final TextField length;
  private final Label reads = Controls.label("", "note");
  private final Label answer = Controls.label("", "note");
  private OptionalDouble runsOutPercent = OptionalDouble.empty();

  CalliperLine(Desk desk, Chain chain) {
    this.desk = desk;
    this.chain = chain;
    links = Controls.field("Links measured on " + chain.name(), 2, text -> clear());
    links.setId("links-" + chain.name());
    links.setText("10");
    length = Controls.field("Millimetres over them on " + chain.name(), 4, text -> clear());
    length.setId("length-" + chain.name());
    length.setOnAction(e -> take());
    var use = Controls.button("Use", "Use what was measured on " + chain.name(), this::take);
    use.setId("use-" + chain.name());
    Controls.visible(answer, false);
    getChildren()
        .addAll(
            Controls.flow(
                Controls.tag("Calliper"),
                links,
                Controls.tag("links"),
                length,
                Controls.tag("mm"),
                use),
            answer,
            reads);
  }

  /**
   * @param percent the stretch at which the tensioner runs out
   */
  void show(OptionalDouble percent) {
    runsOutPercent = percent;
    expect();
  }

  /** Says what to look for over so many links, where that can be said. */
  private void expect() {
    boolean known = runsOutPercent.isPresent() && chain.size().pitchMm().isPresent();
    boolean told = known && pitches() instanceof Typed.Number n && n.value() >= 2;
    Controls.visible(reads, told);
    if (told && pitches() instanceof Typed.Number n) {
      reads.setText(
          Words.calliperReads((int) n.value(), chain.pitchMm(), runsOutPercent.getAsDouble()));
    }
  }

  private Typed pitches() {
    return Decimals.whole(links.getText(), "The number of links", LINKS);
  }

  private void clear() {
    expect();
    Controls.visible(answer, false);
  }

  private void say(String words, boolean refused) {
    answer.getStyleClass().setAll("label", refused ? "refusal" : "note");
    answer.setText(words);
    Controls.visible(answer, true);
  }

  private void take() {
    Typed pitches = pitches();
    Typed mm = Decimals.within(length.getText(), "The length", LENGTH);
    pitches.refusal().or(mm::refusal).ifPresent(why -> say(why, true));
    if (pitches instanceof Typed.Number n && mm instanceof Typed.Number l) {
      CalliperStretch measured = CalliperStretch.of(chain, (int) n.value(), l.value());
      if (measured instanceof CalliperStretch.Measured m) {
        desk.act(now -> Edits.stretch(now, chain.name(), m.stretchPercent()));
      }
      say(Words.calliper(measured), measured instanceof CalliperStretch.Refused);
    }
  }
}
