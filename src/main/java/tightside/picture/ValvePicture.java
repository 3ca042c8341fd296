package tightside.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import tightside.engine.Clearance;
import tightside.engine.Engine;
import tightside.engine.Nearest;
import tightside.engine.TimedEngine;
import tightside.words.Numbers;
import tightside.words.ValveWords;

/**
 * The valves of an engine on paper: for each valve a chart of its room, right and as it stands, and
 * under them one cylinder cut open at a crank angle. One page wide, 180 mm.
 */
public final class ValvePicture {

  private static final double WIDE = 180;
  private static final double CHART = 84;
  private static final double CYLINDER = 104;
  private static final double EM = 4.6;

  /** Of the room in figures: over a twenty-fifth of the width, to be read from afar. */
  private static final double FIGURES = WIDE / 14;

  private static final double SAME = 1e-6;

  private final TimedEngine timed;
  private final double degrees;
  private final Draft draft = new Draft();
  private double y;

  private ValvePicture(TimedEngine timed, double degrees) {
    this.timed = timed;
    this.degrees = degrees;
  }

  /** The crank angle at which any valve comes nearest to its piston. */
  public static double nearestDegrees(TimedEngine timed) {
    return timed.clearances().stream()
        .map(Clearance::least)
        .reduce(Nearest::nearer)
        .map(Nearest::atDegrees)
        .orElse(0.0);
  }

  /**
   * @param name of the drive
   * @param degrees of the crank from the cylinder's top dead centre at gas exchange, within +-360
   */
  public static Picture of(String name, TimedEngine timed, double degrees) {
    return new ValvePicture(timed, degrees).picture(name);
  }

  private Picture picture(String name) {
    heading(name, 1.25 * EM);
    timed.clearances().forEach(this::chart);
    cylinder();
    return new Picture(
        draft.shapes(),
        new Bounds(-4, y - 4, WIDE + 4, 8),
        EM / 16,
        name + ": room between valves and pistons",
        String.join(" ", timed.clearances().stream().map(ValveWords::valve).toList()));
  }

  private void heading(String words, double size) {
    StringBuilder line = new StringBuilder();
    for (String word : words.split(" ")) {
      if (TextSize.widthMm(line + " " + word, size) > WIDE) {
        line(line.toString(), size);
        line.setLength(0);
      }
      line.append(line.isEmpty() ? "" : " ").append(word);
    }
    line(line.toString(), size);
    y += 0.7 * size;
  }

  private void line(String words, double size) {
    draft.text(GapChart.tag(Ink.COUNT), Vector2D.of(0, y), words, size, Shape.Align.LEFT);
    y -= 1.3 * size;
  }

  /** The least room, large, and beside it what it is of. */
  private void figures(Clearance now) {
    Nearest least = now.least();
    Ink ink = least.contact() ? Ink.WARNING : Ink.COUNT;
    String room = Numbers.mm(Math.abs(least.clearanceMm()));
    draft.text(GapChart.tag(ink), Vector2D.of(0, y), room, FIGURES, Shape.Align.LEFT);
    double x = TextSize.widthMm(room, FIGURES) + 1.5 * EM;
    List<String> words =
        List.of(
            ValveWords.name(now.valve())
                + (least.contact() ? " would stand in its piston," : " to piston,"),
            (least.contact() ? "deepest " : "least ") + ValveWords.fromTop(least.atDegrees()));
    for (int i = 0; i < 2; i++) {
      Vector2D at = Vector2D.of(x, y + (1 - i) * 1.3 * EM);
      draft.text(GapChart.tag(ink), at, words.get(i), EM, Shape.Align.LEFT);
    }
    y -= 1.8 * EM;
  }

  private void chart(Clearance now) {
    y -= FIGURES;
    figures(now);
    heading(ValveWords.valve(now), 0.9 * EM);
    Optional<GapScene.Before> right =
        Math.abs(now.advancedDegrees()) > SAME
            ? Optional.of(
                new GapScene.Before(new Clearance(now.gear(), now.valve(), 0), "as it should be"))
            : Optional.empty();
    List<Clearance> beside = timed.clearances().stream().filter(c -> !c.equals(now)).toList();
    GapChart chart = GapChart.of(new GapScene(now, right, beside, false, WIDE, CHART, EM));
    List<Shape> shapes = new ArrayList<>(chart.picture().shapes());
    shapes.addAll(chart.marker(degrees));
    y -= CHART;
    draft.shapes().addAll(new Moved(1, Vector2D.of(0, y)).all(shapes));
  }

  private void cylinder() {
    y -= 2 * EM;
    String crank =
        "One cylinder with the crank %s, to scale where it is known. %s"
            .formatted(ValveWords.fromTop(degrees), ValveWords.eachOther());
    heading(crank, 0.9 * EM);
    Engine engine = timed.engine();
    Bounds room = new Bounds(0, y - CYLINDER, WIDE / 2, y);
    List<Shape> shapes = CylinderDrawing.at(engine, timed.clearances(), degrees);
    draft.shapes().addAll(Moved.into(CylinderDrawing.bounds(engine), room).all(shapes));
    double at = y - 3 * EM;
    for (String line : List.of("left: intake valve", "right: exhaust valve")) {
      Vector2D place = Vector2D.of(WIDE / 2 + 2 * EM, at);
      draft.text(GapChart.tag(Ink.LABEL), place, line, EM, Shape.Align.LEFT);
      at -= 1.5 * EM;
    }
    y -= CYLINDER;
  }
}
