package tightside.window;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Label;
import javafx.scene.layout.Region;
import javafx.scene.shape.Line;
import javafx.scene.shape.Rectangle;
import tightside.drive.Chain;
import tightside.drive.Plunger;
import tightside.timing.TensionerReading;

/**
 * How far a plunger stands out, on a straight scale in millimetres. Ratchet steps are ticks above
 * the rod, millimetres are ticks and numbers below it; the scale ends where the travel ends.
 */
final class PlungerScale extends Region {

  private static final int NUMBERS = 4;

  private final double travel;
  private final OptionalDouble step;
  private final String name;
  private final Rectangle housing = new Rectangle();
  private final Rectangle rod = new Rectangle();
  private final Rectangle left = new Rectangle();
  private final List<Line> steps = new ArrayList<>();
  private final List<Line> ticks = new ArrayList<>();
  private final List<Label> numbers = new ArrayList<>();
  private double extension;

  PlungerScale(Chain chain) {
    travel = chain.tensioner().map(t -> t.plunger().travelMm()).orElse(1.0);
    step =
        chain.tensioner().map(t -> t.plunger()).map(Plunger::stepMm).orElse(OptionalDouble.empty());
    name = chain.name();
    getStyleClass().add("plunger-scale");
    setAccessibleRole(AccessibleRole.TEXT);
    setFocusTraversable(true);
    setAccessibleText("Plunger of " + name);
    housing.getStyleClass().add("housing");
    rod.getStyleClass().add("rod");
    left.getStyleClass().add("travel-left");
    for (int k = 1; step.isPresent() && k * step.getAsDouble() <= travel; k++) {
      steps.add(line("step"));
    }
    double each = each();
    for (int k = 0; k * each <= travel + 1e-9; k++) {
      ticks.add(line("ruler-line"));
      numbers.add(Controls.tag(Angles.typed(k * each), "ruler-number"));
    }
    getChildren().addAll(left, rod, housing);
    getChildren().addAll(steps);
    getChildren().addAll(ticks);
    getChildren().addAll(numbers);
  }

  private static Line line(String style) {
    Line line = new Line();
    line.getStyleClass().add(style);
    return line;
  }

  /** Millimetres from number to number: 1, 2, 5, 10 and so on. */
  private double each() {
    double rough = travel / NUMBERS;
    double ten = Math.pow(10, Math.floor(Math.log10(rough)));
    for (double of : new double[] {1, 2, 5}) {
      if (of * ten >= rough) {
        return of * ten;
      }
    }
    return 10 * ten;
  }

  void show(TensionerReading reading) {
    extension = reading.extensionMm();
    rod.pseudoClassStateChanged(Styling.CAUTION, !reading.taut());
    setAccessibleText(
        String.format(
            Locale.ROOT,
            "Plunger of %s: %.1f of %.1f mm out, %.1f mm of travel left",
            name,
            extension,
            travel,
            travel - extension));
    requestLayout();
  }

  private double em() {
    return numbers.get(0).getFont().getSize();
  }

  @Override
  protected double computePrefHeight(double width) {
    return Math.ceil(4.2 * em());
  }

  @Override
  protected double computeMinHeight(double width) {
    return computePrefHeight(width);
  }

  @Override
  protected double computePrefWidth(double height) {
    return 16 * em();
  }

  private double x(double mm) {
    double start = 2.2 * em();
    return Math.floor(start + (getWidth() - start - 1.4 * em()) * mm / travel) + 0.5;
  }

  @Override
  protected void layoutChildren() {
    double em = em();
    box(housing, 0, 0.3 * em, x(0), 2 * em);
    box(rod, x(0), 0.75 * em, x(extension) - x(0), 1.1 * em);
    box(left, x(extension), 0.75 * em, x(travel) - x(extension), 1.1 * em);
    for (int k = 0; k < steps.size(); k++) {
      double x = x((k + 1) * step.getAsDouble());
      boolean passed = (k + 1) * step.getAsDouble() <= extension;
      steps.get(k).setOpacity(passed ? 1 : 0.45);
      upright(steps.get(k), x, 0.4 * em, 0.75 * em);
    }
    for (int k = 0; k < ticks.size(); k++) {
      upright(ticks.get(k), x(k * each()), 1.85 * em, 2.4 * em);
      Label number = numbers.get(k);
      number.autosize();
      number.relocate(Math.round(x(k * each()) - number.getWidth() / 2), Math.round(2.4 * em));
    }
  }

  private static void box(Rectangle box, double x, double y, double width, double height) {
    box.setX(x);
    box.setY(y);
    box.setWidth(Math.max(0, width));
    box.setHeight(height);
  }

  private static void upright(Line line, double x, double from, double to) {
    line.setStartX(x);
    line.setEndX(x);
    line.setStartY(from);
    line.setEndY(to);
  }
}
