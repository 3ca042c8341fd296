package tightside.window;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import javafx.util.StringConverter;
import tightside.drive.Limits;
import tightside.session.Decimals;
import tightside.session.Snapshot;
import tightside.session.Typed;
import tightside.survey.Adjustment;
import tightside.survey.Measurement;
import tightside.survey.Measurement.Distance;
import tightside.survey.Measurement.Span;
import tightside.survey.Proposal;
import tightside.survey.Proposals;
import tightside.survey.Spot;
import tightside.words.Numbers;
import tightside.words.SurveyWords;

/**
 * Where a measurement is added: what was measured, chosen from all that can be, and what it read.
 */
final class MeasureAdding extends VBox {

  private static final Limits DIAMETER = new Limits(0.5, 400, "mm");

  private final Consumer<Measurement> added;
  private final ComboBox<Measurement> what = choice(MeasureAdding::brief);
  private final ComboBox<Span> span = choice(MeasureAdding::words);
  private final TextField first = Controls.field("Diameter at the first shaft, mm", 3, text -> {});
  private final TextField second = Controls.field("Diameter at the other, mm", 3, text -> {});
  private final MeasureTyped typed = new MeasureTyped();
  private final Label unit = Controls.tag("");
  private final Label whole = Controls.label("", "note");
  private final FlowPane diameters =
      Controls.flow(Controls.tag("diameters"), first, second, Controls.tag("mm"));
  private List<String> offered = List.of();

  MeasureAdding(Consumer<Measurement> added) {
    this.added = added;
    getStyleClass().add("sentences");
    what.setId("measure-what");
    what.setAccessibleText("What was measured");
    what.setMaxWidth(Double.MAX_VALUE);
    what.valueProperty().addListener((o, was, is) -> chosen(is));
    span.setId("measure-span");
    span.setAccessibleText("How the distance was taken");
    span.getItems().setAll(Span.values());
    span.getSelectionModel().selectFirst();
    span.valueProperty()
        .addListener((o, was, is) -> Controls.visible(diameters, is != Span.CENTRES));
    first.setId("measure-first");
    second.setId("measure-second");
    typed.read.setId("measure-read");
    typed.sigma.setId("measure-sigma");
    typed.read.setOnAction(e -> add());
    typed.sigma.setOnAction(e -> add());
    Controls.visible(diameters, false);
    getChildren()
        .addAll(
            Controls.label("Add a measurement", "chain-name"),
            what,
            whole,
            span,
            diameters,
            Controls.flow(
                typed.read,
                unit,
                typed.sigma,
                Controls.button("Add", "Add this measurement", this::add)),
            typed.refusal);
  }

  private static <T> ComboBox<T> choice(java.util.function.Function<T, String> words) {
    ComboBox<T> box = new ComboBox<>();
    box.setConverter(
        new StringConverter<>() {
          @Override
          public String toString(T one) {
            return one == null ? "" : words.apply(one);
          }

          @Override
          public T fromString(String text) {
            return null;
          }
        });
    return box;
  }

  /** In few words, for a list; in full it is said below. */
  private static String brief(Measurement m) {
    if (m instanceof Measurement.Mark k) {
      return "mark of %s (%s) from %s".formatted(k.shaft(), k.chain(), k.from());
    }
    return m instanceof Measurement.Offset o
        ? "%s off %s to %s".formatted(o.point(), o.from(), o.to())
        : SurveyWords.measurement(m);
  }

  private static String words(Span span) {
    return switch (span) {
      case CENTRES -> "centre to centre";
      case OVER -> "over both, outer edge to outer edge";
      case BETWEEN -> "between them, inner edge to inner edge";
    };
  }

  private void chosen(Measurement m) {
    boolean shafts =
        m instanceof Distance d
            && d.first().spot() == Spot.CENTRE
            && d.second().spot() == Spot.CENTRE;
    Controls.visible(span, shafts);
    span.getSelectionModel().selectFirst();
    if (m != null) {
      unit.setText(MeasureTyped.unit(m) + " \u00b1");
      whole.setText(SurveyWords.measurement(m));
      typed.spoken(m, SurveyWords.measurement(m));
      typed.sigma.setText(Numbers.plain(m.reading().sigma()));
    }
  }

  /** Offers all that can be measured on a drive. */
  void offer(Snapshot now) {
    List<Measurement> all = now.drive().countedOnly() ? List.of() : Proposals.all(now.drive());
    List<String> words = all.stream().map(SurveyWords::measurement).toList();
    if (!words.equals(offered)) {
      offered = words;
      what.getItems().setAll(all);
      what.getSelectionModel().selectFirst();
    }
  }

  /** Chooses what is to be measured next; what was typed has been taken. */
  void propose(Optional<Adjustment> now) {
    typed.read.clear();
    typed.refuse("");
    now.flatMap(Adjustment::next)
        .flatMap(Adjustment.Next::proposal)
        .map(Proposal::measurement)
        .map(m -> offered.indexOf(SurveyWords.measurement(m)))
        .filter(i -> i >= 0)
        .ifPresent(i -> what.getSelectionModel().select(i));
  }

  void refuse(String why) {
    typed.refuse(why);
  }

  private void add() {
    Measurement m = what.getValue() == null ? null : typed.typed(what.getValue());
    if (m instanceof Distance d && span.isVisible() && span.getValue() != Span.CENTRES) {
      m = spanned(d);
    }
    if (m != null) {
      added.accept(m);
    }
  }

  private Measurement spanned(Distance d) {
    Typed one = Decimals.within(first.getText(), "The first diameter", DIAMETER);
    Typed other = Decimals.within(second.getText(), "The other diameter", DIAMETER);
    typed.refuse(one.refusal().or(other::refusal).orElse(""));
    return one instanceof Typed.Number a && other instanceof Typed.Number b
        ? new Distance(d.first(), d.second(), span.getValue(), a.value(), b.value(), d.reading())
        : null;
  }
}
