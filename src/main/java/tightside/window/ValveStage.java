package tightside.window;

import javafx.scene.control.Label;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import tightside.picture.CylinderDrawing;
import tightside.session.Look;
import tightside.session.ValveReading;
import tightside.words.ValveWords;

/**
 * A valve and its piston, large: the room in figures, its chart, and the cylinder cut open; one
 * below the other, or side by side where it is wider than high.
 */
final class ValveStage extends Pane {

  /** Share of the height, or of the width, that the chart takes. */
  private static final double CHART = 0.54;

  private final Label room = Controls.label("", "huge");
  private final Label where = Controls.label("", "where");
  private final Label touching = Controls.label("", "refusal");
  private final Label note =
      Controls.label("To a flat crown, cold. " + ValveWords.eachOther(), "note");
  private final VBox figures = new VBox(room, where, touching, note);
  private final GapView gap = new GapView();
  private final CylinderView whole =
      new CylinderView("The cylinder, cut open", CylinderDrawing::bounds);
  private final CylinderView chamber =
      new CylinderView("Valves and piston from nearer", CylinderDrawing::chamber);

  ValveStage() {
    getStyleClass().addAll("stage", "valve-stage");
    setMinHeight(0);
    getChildren().addAll(figures, gap, whole, chamber);
  }

  /**
   * @param em size of the words, pixels
   */
  void show(ValveReading reading, Look look, double em) {
    room.setText(reading.room());
    room.pseudoClassStateChanged(Styling.CAUTION, reading.roomMm() <= 1e-6);
    where.setText(reading.where());
    touching.setText(reading.touching().orElse(""));
    Controls.visible(touching, reading.touching().isPresent());
    gap.show(reading, look.valves().twoTurns(), em);
    whole.show(reading);
    chamber.show(reading);
    requestLayout();
  }

  @Override
  protected void layoutChildren() {
    double pad = getInsets().getLeft();
    double width = getWidth() - 2 * pad;
    double height = getHeight() - 2 * pad;
    if (width > 1.25 * height) {
      double left = (1 - CHART) * width;
      double rest = figures(pad, left);
      place(gap, pad + left, pad, CHART * width, height);
      place(whole, pad, rest, 0.38 * left, pad + height - rest);
      place(chamber, pad + 0.4 * left, rest, 0.57 * left, pad + height - rest);
    } else {
      double top = figures(pad, width);
      double chart = CHART * (pad + height - top);
      double cut = top + chart;
      place(gap, pad, top, width, chart);
      place(whole, pad, cut, 0.38 * width, pad + height - cut);
      place(chamber, pad + 0.4 * width, cut, 0.58 * width, pad + height - cut);
    }
  }

  /** Places the figures, and says where they end. */
  private double figures(double pad, double width) {
    double high = figures.prefHeight(width - 1);
    place(figures, pad, pad, width - 1, high);
    return pad + high + 4;
  }

  private static void place(Region part, double x, double y, double width, double height) {
    part.resizeRelocate(
        Math.round(x),
        Math.round(y),
        Math.floor(Math.max(0, width)),
        Math.floor(Math.max(0, height)));
  }
}
