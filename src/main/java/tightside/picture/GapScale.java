package tightside.picture;

import org.apache.commons.geometry.euclidean.twod.Vector2D;
import tightside.words.Numbers;

/** The axes of a chart of room against crank angle, and what lies below no room. */
final class GapScale {

  private static final String TOUCHED = "piston touched";

  /** A chart narrower than this names its ends alone. */
  private static final double ROOM_FOR_ANGLES_EMS = 22;

  /** And one narrower than this does not name its middle. */
  private static final double ROOM_FOR_CENTRE_EMS = 14.5;

  private final Draft draft;
  private final GapFrame frame;
  private final double em;

  private GapScale(Draft draft, GapFrame frame, double em) {
    this.draft = draft;
    this.frame = frame;
    this.em = em;
  }

  static void draw(Draft draft, GapFrame frame, double em) {
    GapScale scale = new GapScale(draft, frame, em);
    scale.room();
    scale.angles();
    scale.touched();
  }

  private void room() {
    double step = frame.mostMm() <= 10 ? 2 : frame.mostMm() <= 20 ? 5 : 10;
    Bounds plot = frame.plot();
    for (double mm = 0; mm <= frame.mostMm(); mm += step) {
      double y = frame.y(mm);
      if (mm > 0) {
        line(Ink.SCALE, plot.left(), y, plot.right(), y);
      }
      boolean top = mm + step > frame.mostMm();
      String words = Numbers.fixed(mm, 0) + (top ? " mm" : "");
      Vector2D at = Vector2D.of(plot.left() - 0.4 * em, y - 0.32 * em);
      double size = top ? 0.86 * em : em;
      draft.text(GapChart.tag(Ink.LABEL), at, words, size, Shape.Align.RIGHT);
    }
  }

  private void angles() {
    Bounds plot = frame.plot();
    double reach = frame.reachDegrees();
    double step = reach > 200 ? 180 : 60;
    boolean narrow = plot.width() < ROOM_FOR_ANGLES_EMS * em;
    for (double at = -reach; at <= reach; at += step) {
      double x = frame.x(at);
      line(Ink.SCALE, x, plot.bottom(), x, plot.top());
      if (!narrow && Math.abs(at) < reach) {
        under(x, 1.1, Numbers.fixed(Math.abs(at), 0) + "°", Shape.Align.MIDDLE);
      }
    }
    String end = Numbers.fixed(reach, 0) + "°";
    under(plot.left(), 1.1, end, Shape.Align.LEFT);
    under(plot.right(), 1.1, end, Shape.Align.RIGHT);
    under(plot.left(), 2.35, "before", Shape.Align.LEFT);
    under(plot.right(), 2.35, "after", Shape.Align.RIGHT);
    boolean tight = plot.width() < ROOM_FOR_CENTRE_EMS * em;
    String centre = tight ? "0\u00b0" : "top dead centre";
    under(frame.x(0), narrow ? 1.1 : 2.35, centre, Shape.Align.MIDDLE);
  }

  private void under(double x, double ems, String words, Shape.Align align) {
    Vector2D at = Vector2D.of(x, frame.plot().bottom() - ems * em);
    draft.text(GapChart.tag(Ink.LABEL), at, words, em, align);
  }

  /** Hatched, for a grey print has no other sign of it. */
  private void touched() {
    Bounds plot = frame.plot();
    double nought = frame.y(0);
    double depth = nought - plot.bottom();
    double from = plot.left() + TextSize.widthMm(TOUCHED, 0.9 * em) + em;
    for (double x = from; x < plot.right() - depth; x += 0.7 * em) {
      line(Ink.BEYOND, x, plot.bottom(), x + depth, nought);
    }
    line(Ink.NOUGHT, plot.left(), nought, plot.right(), nought);
    Vector2D at = Vector2D.of(plot.left() + 0.4 * em, nought - 1.05 * em);
    draft.text(GapChart.tag(Ink.LABEL), at, TOUCHED, 0.9 * em, Shape.Align.LEFT);
  }

  private void line(Ink ink, double x0, double y0, double x1, double y1) {
    draft.line(GapChart.tag(ink), Vector2D.of(x0, y0), Vector2D.of(x1, y1));
  }
}
