package tightside.window;

import java.util.List;
import java.util.Optional;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import tightside.picture.CylinderDrawing;
import tightside.session.Look;
import tightside.session.SessionView;
import tightside.session.ShowItem;
import tightside.session.ValveReading;
import tightside.words.ValveWords;

/** One strand or valve, one number, one question, to be read from ten metres. */
final class Projected extends VBox {

  /** Words in the chart, beside those of the bench. */
  private static final double CHART = 1.3;

  /** Names of sprockets, beside the words of the bench. */
  private static final double RINGS = 2;

  /** Ems across and down, however large the window and its other text: a class sits far off. */
  private static final double WIDE_EMS = 91;

  private static final double HIGH_EMS = 51;

  private double em = BenchWindow.TYPE;
  private SessionView view;
  private final PictureCanvas picture = new PictureCanvas();
  private final Rings rings = new Rings(picture);
  private final StackPane drive = new StackPane(picture, rings);
  private final GapView gap = new GapView();
  private final CylinderView chamber =
      new CylinderView("Valves and piston from near", CylinderDrawing::chamber);
  private final VBox valve = new VBox(gap, chamber);
  private final HBox left = new HBox();
  private final Label question = Controls.label("", "question");
  private final Label number = Controls.label("", "giant");
  private final Label unit = Controls.label("", "giant-unit");
  private final Label crank = Controls.label("", "giant-unit");
  private final Label note = Controls.label(ValveWords.eachOther(), "giant-note");
  private final Label caution = Controls.label("", "sentence");

  Projected(Desk desk) {
    getStyleClass().add("projected");
    setFocusTraversable(true);
    setAccessibleText("One thing, large, for a class");
    new PictureHand(picture, desk);
    picture.withoutWords();
    VBox figures = new VBox(number, unit, crank, note);
    figures.getStyleClass().add("giant-figures");
    for (Region part : List.of(left, figures)) {
      part.setMinWidth(0);
      part.setPrefWidth(100);
      HBox.setHgrow(part, Priority.ALWAYS);
    }
    figures.setPrefWidth(70);
    for (Region part : List.of(gap, chamber)) {
      part.setMinHeight(0);
      part.setPrefHeight(100);
      VBox.setVgrow(part, Priority.ALWAYS);
    }
    gap.setPrefHeight(220);
    gap.setFocusTraversable(false);
    HBox middle = new HBox(left, figures);
    middle.setMinHeight(0);
    middle.setPrefHeight(0);
    VBox.setVgrow(middle, Priority.ALWAYS);
    caution.pseudoClassStateChanged(Styling.CAUTION, true);
    getChildren().addAll(question, middle, caution);
  }

  @Override
  protected void layoutChildren() {
    double fits = Math.min(getWidth() / WIDE_EMS, getHeight() / HIGH_EMS);
    if (view != null && fits > 1 && Math.abs(fits - em) > 0.01) {
      em = fits;
      setStyle("-fx-font-size: " + em + "px;");
      show(view);
    }
    super.layoutChildren();
  }

  void show(SessionView next) {
    view = next;
    Optional<ShowItem> item = ShowItem.shown(view);
    Look look = view.snapshot().look();
    question.setText(item.map(ShowItem::question).orElse("Nothing can be counted here."));
    boolean answered = look.show().answered();
    number.setText(answered ? item.map(ShowItem::number).orElse("") : "?");
    unit.setText(answered ? item.map(ShowItem::unit).orElse("") : "say your number first");
    crank.setText("crank at " + Angles.typed(view.snapshot().crank().degrees()) + "°");
    Controls.visible(note, item.flatMap(ShowItem::valve).isPresent());
    Headline headline = Headline.of(view);
    caution.setText(headline.text());
    Controls.visible(caution, headline.tone() == Headline.Tone.CAUTION);
    Region shown = item.flatMap(ShowItem::valve).isPresent() ? valve : drive;
    if (!left.getChildren().equals(List.of(shown))) {
      left.getChildren().setAll(List.of(shown));
      HBox.setHgrow(shown, Priority.ALWAYS);
      shown.setMinWidth(0);
      shown.setPrefWidth(100);
    }
    if (shown == drive) {
      picture.show(view);
      rings.show(view.snapshot().drive(), item.map(ShowItem::ends).orElse(List.of()), RINGS * em);
    } else {
      valve(view, item.flatMap(ShowItem::valve).orElseThrow());
    }
  }

  private void valve(SessionView view, int which) {
    Look look = view.snapshot().look();
    ValveReading reading = ValveReading.of(view, which).orElseThrow();
    gap.show(reading, false, CHART * em);
    chamber.show(reading);
    Controls.visible(gap, look.show().answered());
  }
}
