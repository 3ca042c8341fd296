package tightside.window;

import java.util.List;
import java.util.Locale;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Label;
import javafx.scene.layout.Region;
import javafx.scene.shape.Line;
import javafx.scene.shape.Polyline;
import tightside.session.SlackPage;

/**
 * Slack of the loop, upwards, against the plunger, to the right; millimetres against millimetres.
 */
final class SlackDiagram extends Region {

  private final List<SlackPage.Point> points;
  private final double held;
  private final double travel;
  private final double most;
  private final Polyline line = new Polyline();
  private final Line across = line("ruler-line");
  private final Line upright = line("ruler-line");
  private final Line here = line("slack-held");
  private final Label top;
  private final Label zero = Controls.tag("0", "ruler-number");
  private final Label end;

  /**
   * @param heldMm where the plunger is held
   */
  SlackDiagram(SlackPage.ChainPage chain, double heldMm) {
    points = chain.line().stream().filter(p -> p.slackMm() >= 0).toList();
    held = heldMm;
    travel = chain.line().get(chain.line().size() - 1).extensionMm();
    most = Math.max(0.1, points.stream().mapToDouble(SlackPage.Point::slackMm).max().orElse(0));
    top = Controls.tag(words("%.1f mm slack", most), "ruler-number");
    end = Controls.tag(words("plunger %.1f mm out", travel), "ruler-number");
    line.getStyleClass().add("slack-line");
    getChildren().addAll(across, upright, here, line, top, zero, end);
    setAccessibleRole(AccessibleRole.TEXT);
    setFocusTraversable(true);
    setAccessibleText(
        words(
            "Slack of %s: %.1f mm at most, less the further its plunger is out",
            chain.chain(), most));
  }

  private static String words(String form, Object... values) {
    return String.format(Locale.ROOT, form, values);
  }

  private static Line line(String style) {
    Line line = new Line();
    line.getStyleClass().add(style);
    return line;
  }

  private double em() {
    return zero.getFont().getSize();
  }

  @Override
  protected double computePrefHeight(double width) {
    return Math.ceil(9 * em());
  }

  @Override
  protected double computeMinHeight(double width) {
    return computePrefHeight(width);
  }

  private double x(double mm) {
    return 1.5 * em() + (getWidth() - 3 * em()) * mm / travel;
  }

  private double y(double mm) {
    return 7.3 * em() - 5.6 * em() * mm / most;
  }

  @Override
  protected void layoutChildren() {
    line.getPoints().clear();
    points.forEach(p -> line.getPoints().addAll(x(p.extensionMm()), y(p.slackMm())));
    place(across, x(0), y(0), x(travel), y(0));
    place(upright, x(0), y(0), x(0), y(most));
    place(here, x(held), y(0), x(held), y(most));
    place(top, x(0), 0);
    place(zero, x(0), y(0));
    place(end, x(travel) - end.prefWidth(-1), y(0));
  }

  private static void place(Label label, double x, double y) {
    label.autosize();
    label.relocate(Math.round(x), Math.round(y));
  }

  private static void place(Line line, double x0, double y0, double x1, double y1) {
    line.setStartX(x0);
    line.setStartY(y0);
    line.setEndX(x1);
    line.setEndY(y1);
  }
}
