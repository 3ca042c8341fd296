package tightside.window;

import java.util.OptionalDouble;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import tightside.drive.Limits;
import tightside.session.Decimals;
import tightside.session.Typed;
import tightside.survey.Measurement;
import tightside.survey.Reading;
import tightside.words.Numbers;

/** The two numbers of a measurement: what was read, and give or take how much. */
final class MeasureTyped {

  private static final Limits ANGLE = new Limits(-360, 360, "degrees");
  private static final Limits LENGTH = new Limits(-999, 999, "mm");

  final TextField read = Controls.field("What was read", 5, text -> {});
  final TextField sigma = Controls.field("Give or take", 3, text -> {});
  final Label refusal = Controls.label("", "refusal");

  MeasureTyped() {
    Controls.visible(refusal, false);
  }

  static String unit(Measurement m) {
    return m.angle() ? "degrees" : "mm";
  }

  void spoken(Measurement m, String words) {
    read.setAccessibleText("Read %s, %s".formatted(words, unit(m)));
    sigma.setAccessibleText("Standard uncertainty of %s, %s".formatted(words, unit(m)));
  }

  /** Shows a measurement, but for a field in which someone is typing. */
  void show(Measurement m) {
    show(read, Numbers.plain(m.reading().value()));
    show(sigma, Numbers.plain(m.reading().sigma()));
  }

  private static void show(TextField field, String text) {
    if (!field.isFocused()) {
      field.setText(text);
    }
  }

  void refuse(String why) {
    refusal.setText(why);
    Controls.visible(refusal, !why.isEmpty());
  }

  /** The measurement as typed; null, and a word why, where that is none. */
  Measurement typed(Measurement m) {
    Typed value = Decimals.within(read.getText(), "What was read", m.angle() ? ANGLE : LENGTH);
    Typed spread = Decimals.within(sigma.getText(), "Give or take", Reading.SIGMA);
    refuse(value.refusal().or(spread::refusal).orElse(""));
    if (value instanceof Typed.Number v && spread instanceof Typed.Number s) {
      Reading was = m.reading();
      OptionalDouble given = s.value() == was.sigma() ? was.given() : OptionalDouble.of(s.value());
      return m.with(new Reading(v.value(), was.tool(), given));
    }
    return null;
  }
}
