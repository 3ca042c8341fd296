package tightside.window;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleConsumer;
import javafx.scene.AccessibleAttribute;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Label;
import javafx.scene.layout.Region;
import javafx.scene.shape.LineTo;
import javafx.scene.shape.MoveTo;
import javafx.scene.shape.Path;
import javafx.scene.shape.PathElement;
import javafx.scene.shape.Polygon;
import tightside.session.Snapshot;
import tightside.words.Numbers;

/**
 * Two turns of the crank laid out straight, a tick for each tooth of its sprocket and a number at
 * each quarter turn. The grip says where the crank stands; dragged, it turns the engine.
 */
final class TurnRuler extends Region {

  static final double CYCLE = 720;
  private static final int NUMBER_EVERY = 90;

  /** The ruler's edge and all its ticks: one node, for the start waits for the style of each. */
  private final Path lines = new Path();

  private final List<Label> numbers = new ArrayList<>();
  private final Polygon grip = new Polygon();

  /** Which two turns the ruler stands for, where they are not the first. */
  private final Label turnsMade = Controls.tag("", "ruler-number");

  /** After whole cycles the crank stands at both ends of the ruler. */
  private final Polygon other = new Polygon();

  /** What the ruler was laid out for. */
  private List<?> ruled = List.of();

  private int teeth = -1;
  private double degrees;
  private double told;

  /**
   * @param turnTo is told the angle to which the grip is dragged, in the cycle it stands in
   */
  TurnRuler(DoubleConsumer turnTo) {
    getStyleClass().add("ruler");
    setFocusTraversable(true);
    setAccessibleRole(AccessibleRole.SLIDER);
    setAccessibleText("Crank angle on a ruler of two turns");
    lines.getStyleClass().add("ruler-line");
    grip.getStyleClass().add("grip");
    other.getStyleClass().add("other-grip");
    for (int at = 0; at <= CYCLE; at += NUMBER_EVERY) {
      Label number = Controls.tag(at + "°", "ruler-number");
      number.setMouseTransparent(true);
      numbers.add(number);
    }
    setOnMousePressed(e -> drag(e.getX(), turnTo));
    setOnMouseDragged(e -> drag(e.getX(), turnTo));
  }

  private void drag(double x, DoubleConsumer turnTo) {
    requestFocus();
    double share = Math.max(0, Math.min(1, (x - inset()) / along()));
    turnTo.accept(Math.floor(degrees / CYCLE) * CYCLE + share * CYCLE);
  }

  /**
   * @param underWay whether the engine turns by itself: then a screen reader hears where it stops,
   *     not every step on the way
   */
  void show(Snapshot now, int crankTeeth, boolean underWay) {
    degrees = now.crank().degrees();
    if (teeth != crankTeeth) {
      teeth = crankTeeth;
      getChildren().setAll(lines);
      getChildren().addAll(numbers);
      getChildren().addAll(turnsMade, other, grip);
    }
    place();
    if (!underWay && degrees != told) {
      told = degrees;
      notifyAccessibleAttributeChanged(AccessibleAttribute.VALUE);
    }
  }

  private double em() {
    return numbers.get(0).getFont().getSize();
  }

  private double inset() {
    return 2 * em();
  }

  private double along() {
    return Math.max(1, getWidth() - 2 * inset());
  }

  private double x(double ofCycle) {
    return inset() + along() * ofCycle / CYCLE;
  }

  private static double line(double x) {
    return Math.floor(x) + 0.5;
  }

  @Override
  protected double computePrefHeight(double width) {
    return Math.ceil(3.1 * em());
  }

  @Override
  protected double computeMinHeight(double width) {
    return computePrefHeight(width);
  }

  @Override
  protected void layoutChildren() {
    List<?> size = List.of(getWidth(), em(), teeth);
    if (size.equals(ruled)) {
      return;
    }
    ruled = size;
    double y = line(1.35 * em());
    lines.getElements().setAll(rule(y));
    for (int i = 0; i < numbers.size(); i++) {
      Label number = numbers.get(i);
      number.autosize();
      number.relocate(
          Math.round(x(i * NUMBER_EVERY) - number.getWidth() / 2), Math.round(y + 0.8 * em()));
    }
    double em = em();
    double half = 0.6 * em;
    for (Polygon each : List.of(grip, other)) {
      each.getPoints()
          .setAll(-half, 0.0, half, 0.0, half, 0.7 * em, 0.0, 1.25 * em, -half, 0.7 * em);
      each.setLayoutY(0.1 * em);
    }
    other.setLayoutX(x(CYCLE));
    place();
  }

  private List<PathElement> rule(double y) {
    List<PathElement> rule = new ArrayList<>();
    rule.add(new MoveTo(line(x(0)), y));
    rule.add(new LineTo(line(x(CYCLE)), y));
    for (int k = 0; k <= 2 * teeth; k++) {
      double x = line(x(k * 360.0 / teeth));
      rule.add(new MoveTo(x, y));
      rule.add(new LineTo(x, y + (k % teeth == 0 ? 0.8 : 0.45) * em()));
    }
    return rule;
  }

  /** Which two turns the ruler stands for; before the reference position, how far before it. */
  static String turnsMade(double degrees) {
    if (degrees < 0) {
      return Numbers.fixed(-degrees, 1) + "° before the reference position";
    }
    long turns = 2 * (long) Math.floor(degrees / CYCLE);
    return turns == 0 ? "" : "after " + turns + " turns";
  }

  private void place() {
    double ofCycle = degrees - Math.floor(degrees / CYCLE) * CYCLE;
    // Moved, not laid out: the rest of the ruler stays as it is.
    grip.setTranslateX(x(ofCycle));
    String made = turnsMade(degrees);
    if (!made.equals(turnsMade.getText())) {
      turnsMade.setText(made);
    }
    if (!made.isEmpty()) {
      placeWords(x(ofCycle));
    }
    other.setVisible(degrees != 0 && ofCycle == 0);
  }

  /** At the right end, or at the left one while the grip is there. */
  private void placeWords(double gripX) {
    turnsMade.autosize();
    double clear = 1.5 * em();
    double right = x(CYCLE) - turnsMade.getWidth() - clear;
    boolean covered = gripX > right - clear;
    turnsMade.relocate(Math.round(covered ? x(0) + clear : right), 0);
  }

  @Override
  public Object queryAccessibleAttribute(AccessibleAttribute attribute, Object... parameters) {
    return switch (attribute) {
      case VALUE -> degrees;
      case MIN_VALUE -> 0.0;
      case MAX_VALUE -> CYCLE;
      default -> super.queryAccessibleAttribute(attribute, parameters);
    };
  }
}
