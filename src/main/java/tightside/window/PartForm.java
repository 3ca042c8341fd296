package tightside.window;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BiFunction;
import java.util.function.Consumer;
import java.util.function.Function;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import tightside.drive.Limits;
import tightside.drive.Names;
import tightside.drive.Plan;
import tightside.session.Decimals;
import tightside.session.Edit;
import tightside.session.Snapshot;
import tightside.session.Typed;
import tightside.words.Numbers;

/**
 * Fields and choices that say what a part is: what is typed is done at once, or refused in words.
 */
final class PartForm extends VBox {

  private static final double SAME = 1e-9;

  private final Desk desk;
  private final Label refusal = Controls.label("", "refusal");
  private final List<Consumer<Plan>> fillers = new ArrayList<>();
  private boolean filling;

  PartForm(Desk desk) {
    this.desk = desk;
    getStyleClass().add("sentences");
    Controls.visible(refusal, false);
    getChildren().add(refusal);
  }

  /**
   * A number.
   *
   * @param of what the plan has; nothing shows an empty field
   * @param edit what to do with what was typed
   */
  void number(
      String id,
      String words,
      Limits limits,
      Function<Plan, OptionalDouble> of,
      BiFunction<Snapshot, Double, Edit> edit) {
    TextField field = Controls.field(words, 6, text -> typed(text, words, limits, edit));
    field.setId(id);
    add(field, words);
    fillers.add(
        plan -> {
          OptionalDouble value = of.apply(plan);
          if (!shows(field.getText(), value)) {
            field.setText(value.isPresent() ? Numbers.plain(value.getAsDouble()) : "");
          }
        });
  }

  private void add(TextField field, String words) {
    Label label = Controls.label(words);
    HBox line = new HBox(field, label);
    line.getStyleClass().add("line");
    line.setAlignment(Pos.CENTER_LEFT);
    HBox.setHgrow(label, Priority.ALWAYS);
    getChildren().add(getChildren().size() - 1, line);
  }

  private static boolean shows(String text, OptionalDouble value) {
    if (value.isEmpty()) {
      return text.isBlank();
    }
    Limits any = new Limits(-1e6, 1e6, "");
    return Decimals.within(text, "", any) instanceof Typed.Number number
        && Math.abs(number.value() - value.getAsDouble()) < SAME;
  }

  private void typed(
      String text, String words, Limits limits, BiFunction<Snapshot, Double, Edit> edit) {
    if (filling) {
      return;
    }
    boolean whole = limits == Limits.TEETH || limits == Limits.LINKS;
    Typed typed =
        whole ? Decimals.whole(text, words, limits) : Decimals.within(text, words, limits);
    refuse(typed.refusal());
    if (typed instanceof Typed.Number number) {
      act(now -> edit.apply(now, number.value()));
    }
  }

  /** A number that may be left out: an empty field takes it away. */
  void perhaps(
      String id,
      String words,
      Limits limits,
      Function<Plan, OptionalDouble> of,
      BiFunction<Snapshot, OptionalDouble, Edit> edit) {
    number(id, words, limits, of, (now, value) -> edit.apply(now, OptionalDouble.of(value)));
    TextField field = (TextField) lookup("#" + id);
    field
        .textProperty()
        .addListener(
            (o, before, after) -> {
              if (!filling && after.isBlank()) {
                refuse(Optional.empty());
                act(now -> edit.apply(now, OptionalDouble.empty()));
              }
            });
  }

  /** A name: it is taken when it is done, by Enter or by leaving the field. */
  void name(
      String id,
      String words,
      Function<Plan, String> of,
      Function<String, Optional<String>> refuses,
      BiFunction<Snapshot, String, Edit> edit) {
    TextField field = Controls.field(words, 12, text -> refuse(Optional.empty()));
    field.setId(id);
    Runnable done =
        () -> {
          String text = field.getText().strip();
          Optional<String> why = refuses.apply(text);
          refuse(why);
          if (why.isEmpty() && !text.equals(of.apply(desk.now().plan()))) {
            act(now -> edit.apply(now, text));
          }
        };
    field.setOnAction(e -> done.run());
    field
        .focusedProperty()
        .addListener(
            (o, before, after) -> {
              if (!after && field.getScene() != null) {
                done.run();
              }
            });
    add(field, words);
    fillers.add(
        plan -> {
          if (!field.isFocused()) {
            field.setText(of.apply(plan));
          }
        });
  }

  /** Whether a text can be the name of a part, and is no other's. */
  static Optional<String> nameRefusal(Plan plan, String before, String text) {
    if (!Names.FORM.matcher(text).matches()) {
      return Optional.of(
          "A name has 1 to 40 letters, digits, spaces, _ or -, and begins with a letter or digit.");
    }
    boolean taken =
        plan.shaft(text).isPresent() || plan.chain(text).isPresent() || facesHave(plan, text);
    return taken && !text.equals(before)
        ? Optional.of("Another part is called %s already.".formatted(text))
        : Optional.empty();
  }

  private static boolean facesHave(Plan plan, String text) {
    return plan.chains().stream()
        .flatMap(c -> c.route().stream())
        .anyMatch(e -> e instanceof tightside.drive.Face f && f.name().equals(text));
  }

  /** One of a few. */
  <T extends Enum<T>> void choice(
      String words, T[] values, Function<Plan, T> of, BiFunction<Snapshot, T, Edit> edit) {
    Map<T, String> names = new LinkedHashMap<>();
    for (T value : values) {
      names.put(value, value.name().toLowerCase(java.util.Locale.ROOT).replace('_', ' '));
    }
    Segments<T> segments =
        new Segments<T>(words, names, value -> act(now -> edit.apply(now, value))).wrapping();
    getChildren()
        .add(
            getChildren().size() - 1,
            Controls.stack("close-stack", Controls.label(words, "note"), segments));
    fillers.add(plan -> segments.show(of.apply(plan)));
  }

  private void refuse(Optional<String> why) {
    refusal.setText(why.orElse(""));
    Controls.visible(refusal, why.isPresent());
  }

  private void act(Function<Snapshot, Edit> edit) {
    try {
      desk.act(edit);
    } catch (IllegalArgumentException unsound) {
      refuse(Optional.of("That can't be: " + unsound.getMessage() + "."));
    }
  }

  void fill(Plan plan) {
    filling = true;
    fillers.forEach(filler -> filler.accept(plan));
    filling = false;
  }
}
