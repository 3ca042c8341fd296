package tightside.window;

import java.util.List;
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

  /** Share of the width, where the cutaway stands beside it for want of height. */
  private static final double CHART_BESIDE = 0.66;

  private static final double LEAST_CHART_EMS = 10.5;
  private static final double LEAST_CUTAWAY_EMS = 7;
  private static final double BOTH_CUTAWAYS_EMS = 11;

  /** Less height than this has no room for the largest figures. */
  private static final double SMALL_EMS = 28;

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

  /** What the height of the figures hangs on. */
  private List<?> laid = List.of();

  private double emPixels = BenchWindow.TYPE;

  ValveStage() {
    figures.getStyleClass().add("figures");
    getStyleClass().addAll("stage", "valve-stage");
    setMinHeight(0);
    getChildren().addAll(figures, gap, whole, chamber);
    // What changes in one of them from frame to frame is laid out there and nowhere else.
    getChildren().forEach(part -> part.setManaged(false));
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
    List<?> lines = List.of(reading.where().length(), reading.touching(), em);
    if (!lines.equals(laid)) {
      laid = lines;
      emPixels = em;
      requestLayout();
    }
  }

  @Override
  protected void layoutChildren() {
    double pad = getInsets().getLeft();
    double width = getWidth() - 2 * pad;
    double height = getHeight() - 2 * pad;
    double em = emPixels;
    boolean small = height < SMALL_EMS * em;
    figures.pseudoClassStateChanged(Styling.NARROW, small);
    // Said at the end of the card too.
    Controls.visible(note, !small);
    figures.applyCss();
    if (width > 1.25 * height) {
      double left = (1 - CHART) * width;
      double rest = figures(pad, left);
      place(gap, pad + left, pad, CHART * width, height);
      cutaways(pad, rest, left, pad + height - rest);
      return;
    }
    double top = figures(pad, width);
    double rest = pad + height - top;
    double chart = Math.max(LEAST_CHART_EMS * em, CHART * rest);
    if (rest - chart < LEAST_CUTAWAY_EMS * em) {
      place(gap, pad, top, CHART_BESIDE * width, rest);
      cutaways(pad + CHART_BESIDE * width, top, (1 - CHART_BESIDE) * width, rest);
    } else {
      place(gap, pad, top, width, chart);
      cutaways(pad, top + chart, width, rest - chart);
    }
  }

  /** The whole cylinder and its chamber; where there is room for one, the chamber. */
  private void cutaways(double x, double y, double width, double height) {
    boolean both = width > BOTH_CUTAWAYS_EMS * emPixels;
    whole.setVisible(both);
    double aside = both ? 0.4 * width : 0.04 * width;
    place(whole, x, y, 0.38 * width, height);
    place(chamber, x + aside, y, 0.97 * width - aside, height);
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
