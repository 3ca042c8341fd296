package tightside.window;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BooleanSupplier;
import java.util.function.DoubleFunction;
import java.util.function.Function;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.VBox;
import tightside.drive.Heat;
import tightside.drive.Limits;
import tightside.session.Decimals;
import tightside.session.Edit;
import tightside.session.SlackEdits;
import tightside.session.SlackSetup;
import tightside.session.Snapshot;
import tightside.session.Typed;

/** The figures that the card of the slack chain goes by. */
final class SlackFields extends VBox {

  private static final double MILLION = 1e6;

  /** A field and the number that it shows. */
  private record Entry(TextField field, Function<SlackSetup, OptionalDouble> of, Label refusal) {}

  private final Desk desk;
  private final BooleanSupplier showing;
  private final List<Entry> entries = new ArrayList<>();
  private Optional<SlackSetup> shown = Optional.empty();

  SlackFields(Desk desk, BooleanSupplier showing) {
    this.desk = desk;
    this.showing = showing;
    getStyleClass().add("sentences");
    add(
        "slack-engagement",
        "Engagement on the nose, mm",
        SlackSetup.ENGAGEMENT_MM,
        s -> OptionalDouble.of(s.engagementMm()),
        v -> now -> SlackEdits.engagement(now, v));
    add(
        "slack-play",
        "Tool play, cam degrees",
        Limits.LOCKING_PLAY_DEGREES,
        SlackSetup::playDegrees,
        v -> now -> SlackEdits.play(now, OptionalDouble.of(v)));
    heat(
        "slack-cold",
        "Cold, degrees Celsius",
        SlackSetup.CELSIUS,
        1,
        Heat::coldCelsius,
        Heats::cold);
    heat("slack-hot", "Hot, degrees Celsius", SlackSetup.CELSIUS, 1, Heat::hotCelsius, Heats::hot);
    heat(
        "slack-block",
        "Block growth, millionths/K",
        SlackSetup.GROWTH,
        MILLION,
        Heat::blockPerKelvin,
        Heats::block);
    heat(
        "slack-chain",
        "Chain growth, millionths/K",
        SlackSetup.GROWTH,
        MILLION,
        Heat::chainPerKelvin,
        Heats::chain);
  }

  private void heat(
      String id,
      String words,
      Limits limits,
      double scale,
      Function<Heat, Double> of,
      Heats changed) {
    add(
        id,
        words,
        limits,
        s -> OptionalDouble.of(Math.rint(of.apply(s.heat()) * scale * 1000) / 1000),
        v -> now -> SlackEdits.heat(now, changed.with(now.slack().heat(), v / scale)));
  }

  private void add(
      String id,
      String words,
      Limits limits,
      Function<SlackSetup, OptionalDouble> of,
      DoubleFunction<Function<Snapshot, Edit>> edit) {
    Label refusal = Controls.label("", "refusal");
    Controls.visible(refusal, false);
    TextField field = Controls.field(words, 4, text -> typed(text, words, limits, edit, refusal));
    field.setId(id);
    entries.add(new Entry(field, of, refusal));
    getChildren().addAll(Controls.flow(field, Controls.tag(words)), refusal);
  }

  private void typed(
      String text,
      String words,
      Limits limits,
      DoubleFunction<Function<Snapshot, Edit>> edit,
      Label refusal) {
    if (showing.getAsBoolean()) {
      return;
    }
    if (text.isBlank() && limits == Limits.LOCKING_PLAY_DEGREES) {
      Controls.visible(refusal, false);
      desk.act(now -> SlackEdits.play(now, OptionalDouble.empty()));
      return;
    }
    Typed typed = Decimals.within(text, words, limits);
    typed.refusal().ifPresent(why -> refusal.setText(naming(words, why)));
    Controls.visible(refusal, typed.refusal().isPresent());
    if (typed instanceof Typed.Number number) {
      desk.act(edit.apply(number.value())::apply);
    }
  }

  /** Forgets what was typed and refused: it was meant for another drive. */
  void forget() {
    shown = Optional.empty();
  }

  /** What was refused stays to be mended as long as the figure beside it has not changed. */
  void show(SlackSetup setup) {
    Optional<SlackSetup> before = shown;
    shown = Optional.of(setup);
    for (Entry entry : entries) {
      OptionalDouble value = entry.of().apply(setup);
      boolean same = before.filter(b -> entry.of().apply(b).equals(value)).isPresent();
      if (same && entry.refusal().isVisible()) {
        continue;
      }
      if (!shows(entry.field().getText(), value)) {
        entry.field().setText(value.isPresent() ? Angles.typed(value.getAsDouble()) : "");
        Controls.visible(entry.refusal(), false);
      }
    }
  }

  /** Why not, with the field's own name where it does not begin with that already. */
  private static String naming(String words, String why) {
    return why.startsWith(words) ? why : words + ": " + why;
  }

  private static boolean shows(String text, OptionalDouble value) {
    if (value.isEmpty()) {
      return text.isBlank();
    }
    return Decimals.within(text, "", new Limits(-1e6, 1e6, "")) instanceof Typed.Number number
        && Math.abs(number.value() - value.getAsDouble()) < 1e-3;
  }
}
