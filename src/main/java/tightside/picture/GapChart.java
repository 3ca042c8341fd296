package tightside.picture;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import tightside.drive.Part;
import tightside.engine.Clearance;
import tightside.engine.Nearest;
import tightside.geometry.Bearing;
import tightside.geometry.Curve;
import tightside.words.Numbers;
import tightside.words.ValveWords;

/**
 * The room between a valve and its piston against the crank angle: as it is, boldly, over what it
 * is compared with; where it is least is named. All of it stays while the crank turns, but a
 * marker.
 */
public final class GapChart {

  private static final double STEP_DEGREES = 1;
  private static final Part ENGINE = Part.whole().at("engine");

  private final GapScene scene;
  private final GapFrame frame;
  private final double em;
  private final Draft draft = new Draft();

  /** A chart less high than this shows its own valve alone, and names nothing but the axes. */
  private static final double ROOM_FOR_ALL_EMS = 16;

  private GapChart(GapScene asked) {
    boolean roomy = asked.heightMm() > ROOM_FOR_ALL_EMS * asked.emMm();
    scene = roomy ? asked : asked.alone();
    em = scene.emMm();
    Bounds plot =
        new Bounds(3.7 * em, 3.1 * em, scene.widthMm() - 1.1 * em, scene.heightMm() - legendMm());
    frame = new GapFrame(plot, scene.reachDegrees(), scene.leastMm(), scene.mostMm());
  }

  public static GapChart of(GapScene scene) {
    GapChart chart = new GapChart(scene);
    chart.draw();
    return chart;
  }

  /** All but the marker, from 0, 0 to the size that was asked for. */
  public Picture picture() {
    return new Picture(
        draft.shapes(),
        new Bounds(0, 0, scene.widthMm(), scene.heightMm()),
        em / 16,
        "Room between valve and piston against the crank angle",
        ValveWords.valve(scene.now()));
  }

  static Tag tag(Ink ink) {
    return new Tag(ink, ENGINE, Plane.FRONT);
  }

  private void draw() {
    GapScale.draw(draft, frame, em);
    scene.beside().forEach(c -> curve(Ink.CURVE_BESIDE, c));
    scene.before().ifPresent(b -> curve(Ink.CURVE_BEFORE, b.clearance()));
    curve(Ink.CURVE, scene.now());
    GapNotes.draw(draft, frame, scene);
    legend();
  }

  private void curve(Ink ink, Clearance clearance) {
    List<Vector2D> run = new ArrayList<>();
    double reach = frame.reachDegrees();
    for (double degrees = -reach; degrees <= reach; degrees += STEP_DEGREES) {
      double room = room(clearance, degrees);
      boolean inside = room <= frame.mostMm();
      if (inside && run.isEmpty() && degrees > -reach) {
        run.add(top(clearance, degrees - STEP_DEGREES, degrees));
      }
      if (inside) {
        run.add(frame.at(degrees, room));
      } else if (!run.isEmpty()) {
        run.add(top(clearance, degrees - STEP_DEGREES, degrees));
        draw(ink, run);
        run.clear();
      }
    }
    draw(ink, run);
  }

  /** The lift is taken within a turn of the camshaft, so any angle will do. */
  private static double room(Clearance clearance, double degrees) {
    return clearance.mmAt(degrees);
  }

  /** Where a curve crosses the chart's top between two angles, near enough for a drawing. */
  private Vector2D top(Clearance clearance, double from, double to) {
    double before = room(clearance, from);
    double share = (frame.mostMm() - before) / (room(clearance, to) - before);
    return frame.at(from + share * (to - from), frame.mostMm());
  }

  private void draw(Ink ink, List<Vector2D> run) {
    List<Curve> lines = new ArrayList<>();
    for (int i = 1; i < run.size(); i++) {
      lines.add(new Curve.Line(run.get(i - 1), run.get(i)));
    }
    if (!lines.isEmpty()) {
      draft.open(tag(ink), lines);
    }
  }

  private record Entry(Ink ink, String words) {}

  private List<Entry> entries() {
    List<Entry> entries = new ArrayList<>();
    entries.add(new Entry(Ink.CURVE, ValveWords.name(scene.now().valve()) + ", as it is"));
    scene.before().ifPresent(b -> entries.add(new Entry(Ink.CURVE_BEFORE, b.name())));
    scene.beside().stream()
        .map(c -> ValveWords.name(c.valve()))
        .distinct()
        .forEach(name -> entries.add(new Entry(Ink.CURVE_BESIDE, name)));
    return entries;
  }

  private double widthMm(Entry entry) {
    return 2.8 * em + TextSize.widthMm(entry.words(), em) + em;
  }

  private double legendMm() {
    return (1.2 + 1.35 * rows().size()) * em;
  }

  private List<List<Entry>> rows() {
    List<List<Entry>> rows = new ArrayList<>(List.of(new ArrayList<>()));
    double x = 0;
    for (Entry entry : entries()) {
      if (x > 0 && x + widthMm(entry) > scene.widthMm() - 2 * em) {
        rows.add(new ArrayList<>());
        x = 0;
      }
      rows.get(rows.size() - 1).add(entry);
      x += widthMm(entry);
    }
    return rows;
  }

  private void legend() {
    double y = scene.heightMm() - 1.1 * em;
    for (List<Entry> row : rows()) {
      double x = em;
      for (Entry entry : row) {
        Vector2D from = Vector2D.of(x, y + 0.3 * em);
        draft.line(tag(entry.ink()), from, from.add(Vector2D.of(2.2 * em, 0)));
        draft.text(
            tag(Ink.LABEL), Vector2D.of(x + 2.8 * em, y), entry.words(), em, Shape.Align.LEFT);
        x += widthMm(entry);
      }
      y -= 1.35 * em;
    }
  }

  /** How far the marker reaches to either side of its angle, mm. */
  public double markerReachMm() {
    return 0.8 * em;
  }

  /**
   * Where the marker stands across the chart, mm from its left; at an edge for what lies beyond.
   */
  public double markerX(double degrees) {
    double reach = frame.reachDegrees();
    return frame.x(Math.max(-reach, Math.min(reach, degrees)));
  }

  /**
   * The marker of a crank angle: a line, and a dot on the curve; an arrow where either lies beyond
   * the chart.
   *
   * @param degrees from the cylinder's top dead centre at gas exchange, within +-360
   */
  public List<Shape> marker(double degrees) {
    Draft marker = new Draft();
    Tag here = tag(Ink.HERE);
    double x = markerX(degrees);
    if (!frame.shows(degrees)) {
      Vector2D tip = Vector2D.of(x, frame.plot().centre().getY());
      marker.arrowhead(here, tip, new Bearing(degrees > 0 ? 90 : 270), 1.2 * em, 1.2 * em);
      return marker.shapes();
    }
    marker.line(here, Vector2D.of(x, frame.plot().bottom()), Vector2D.of(x, frame.plot().top()));
    double room = scene.now().mmAt(degrees);
    if (room > frame.mostMm()) {
      marker.arrowhead(
          here, Vector2D.of(x, frame.plot().top()), new Bearing(0), 0.8 * em, 0.8 * em);
    } else {
      double y = Math.max(frame.y(room), frame.plot().bottom());
      marker.circle(here, Vector2D.of(x, y), 0.42 * em);
    }
    return marker.shapes();
  }

  /** Room in words, where it is least. */
  static List<String> least(Nearest nearest) {
    String where = ValveWords.angle(nearest.atDegrees());
    return nearest.contact()
        ? List.of("touches by " + Numbers.mm(-nearest.clearanceMm()), "at " + where)
        : List.of("least " + Numbers.mm(nearest.clearanceMm()), "at " + where);
  }
}
