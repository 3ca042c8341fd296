package tightside.picture;

import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import tightside.engine.Clearance;
import tightside.engine.Engine;
import tightside.geometry.Curve;

/**
 * One cylinder cut open along its axis: crank throw, rod, piston in its bore, and two valves over
 * it. What is known is drawn to scale: bore, stroke, rod, lift, tilt and the gap; the rest is drawn
 * as such parts usually are.
 *
 * <p>Frame: the crankshaft's centre at 0, 0, the piston above it; it turns clockwise. The intake
 * valve is drawn on the left.
 */
public final class CylinderDrawing {

  /** From the pin to the crown, piston's height, wall, as shares of the bore (no source). */
  private static final double CROWN = 0.42;

  private static final double HEIGHT = 0.66;
  private static final double WALL = 0.09;

  private final Engine engine;
  private final double bore;
  private final double throwMm;
  private final Draft draft = new Draft();

  private CylinderDrawing(Engine engine) {
    this.engine = engine;
    bore = engine.boreMm();
    throwMm = engine.strokeMm() / 2;
  }

  /** Crown of the piston at top dead centre above the crankshaft's centre, mm. */
  private double topMm() {
    return throwMm + engine.rodMm() + CROWN * bore;
  }

  /**
   * All of it, at a crank angle.
   *
   * @param valves to be drawn: of those that let in and of those that let out the first
   * @param degrees from top dead centre at gas exchange
   */
  public static List<Shape> at(Engine engine, List<Clearance> valves, double degrees) {
    CylinderDrawing drawing = new CylinderDrawing(engine);
    List<Clearance> two = two(valves);
    drawing.casting(two);
    drawing.moving(degrees);
    two.forEach(valve -> drawing.valve(valve, degrees));
    return drawing.draft.shapes();
  }

  private static List<Clearance> two(List<Clearance> valves) {
    return Stream.of(true, false)
        .flatMap(side -> valves.stream().filter(c -> c.valve().intake() == side).limit(1))
        .toList();
  }

  /** Round all of it, wherever the crank stands. */
  public static Bounds bounds(Engine engine) {
    CylinderDrawing drawing = new CylinderDrawing(engine);
    double aside = Math.max((0.5 + WALL) * drawing.bore, 1.35 * drawing.throwMm);
    return new Bounds(
            -aside,
            -1.4 * drawing.throwMm,
            aside,
            drawing.topMm() + drawing.gapMm() + 0.97 * drawing.bore)
        .grown(0.02 * engine.boreMm());
  }

  /** Round the chamber, where valves and piston meet. */
  public static Bounds chamber(Engine engine) {
    CylinderDrawing drawing = new CylinderDrawing(engine);
    double aside = (0.52 + WALL) * drawing.bore;
    double top = drawing.topMm() + drawing.gapMm();
    return new Bounds(-aside, top - 0.62 * drawing.bore, aside, top + 0.62 * drawing.bore);
  }

  private double gapMm() {
    return engine.valves().stream().mapToDouble(v -> v.gapMm()).max().orElse(0);
  }

  private static Vector2D p(double x, double y) {
    return Vector2D.of(x, y);
  }

  private static Tag tag(Ink ink) {
    return GapChart.tag(ink);
  }

  private void casting(List<Clearance> valves) {
    double in = bore / 2;
    double out = in + WALL * bore;
    double foot = topMm() - engine.strokeMm() - 0.75 * HEIGHT * bore;
    double left = roof(valves, true, 0);
    double right = roof(valves, false, 0);
    double head = Math.max(roof(valves, true, in), roof(valves, false, in)) + 0.3 * bore;
    draft.polygon(
        tag(Ink.CASTING), List.of(p(-out, foot), p(-in, foot), p(-in, left), p(-out, left)));
    draft.polygon(
        tag(Ink.CASTING), List.of(p(out, foot), p(in, foot), p(in, right), p(out, right)));
    draft.polygon(
        tag(Ink.CASTING),
        List.of(
            p(-out, left),
            p(-in, left),
            p(0, roof(valves, true, in)),
            p(0, roof(valves, false, in)),
            p(in, right),
            p(out, right),
            p(out, head),
            p(-out, head)));
  }

  /** The chamber's roof so far from the wall: in the plane of the closed valve. */
  private double roof(List<Clearance> valves, boolean intake, double fromWall) {
    return valves.stream()
        .filter(c -> c.valve().intake() == intake)
        .findFirst()
        .or(() -> valves.stream().findFirst())
        .map(c -> new Seat(c, topMm(), bore))
        .map(seat -> seat.faceMm(fromWall))
        .orElse(topMm());
  }

  private void moving(double degrees) {
    double theta = Math.toRadians(degrees);
    Vector2D crankpin = p(throwMm * Math.sin(theta), throwMm * Math.cos(theta));
    double crown = topMm() - engine.crankGear().dropMm(degrees);
    Vector2D pin = p(0, crown - CROWN * bore);
    crank(crankpin);
    piston(crown);
    link(Ink.ROD, pin, crankpin, 0.09 * bore, 0.12 * bore);
    draft.circle(tag(Ink.ROD), pin, 0.13 * bore);
    draft.circle(tag(Ink.ROD), crankpin, 0.18 * bore);
    draft.circle(tag(Ink.CASTING), pin, 0.07 * bore);
    draft.circle(tag(Ink.CASTING), crankpin, 0.1 * bore);
  }

  private void crank(Vector2D crankpin) {
    draft.circle(tag(Ink.SCALE), p(0, 0), throwMm);
    link(Ink.CRANK, crankpin.multiply(-0.9), crankpin.multiply(1.15), 0.3 * bore, 0.17 * bore);
    draft.circle(tag(Ink.CASTING), p(0, 0), 0.15 * bore);
  }

  private void piston(double crown) {
    double half = 0.49 * bore;
    double foot = crown - HEIGHT * bore;
    draft.polygon(
        tag(Ink.PISTON), List.of(p(-half, crown), p(half, crown), p(half, foot), p(-half, foot)));
    for (double ring : new double[] {0.07, 0.14, 0.22}) {
      draft.line(tag(Ink.LEADER), p(-half, crown - ring * bore), p(half, crown - ring * bore));
    }
  }

  /** A bar from one point to another, so wide to either side at its ends. */
  private void link(Ink ink, Vector2D from, Vector2D to, double wideFrom, double wideTo) {
    Vector2D way = from.directionTo(to);
    Vector2D across = p(-way.getY(), way.getX());
    draft.polygon(
        tag(ink),
        List.of(
            from.add(across.multiply(wideFrom)),
            to.add(across.multiply(wideTo)),
            to.subtract(across.multiply(wideTo)),
            from.subtract(across.multiply(wideFrom))));
  }

  private void valve(Clearance clearance, double degrees) {
    Seat seat = new Seat(clearance, topMm(), bore);
    double lift = clearance.valve().liftMm(degrees + clearance.advancedDegrees());
    List<Curve> outline = seat.outline(lift);
    draft.closed(tag(Ink.VALVE), outline);
    if (clearance.mmAt(degrees) <= 1e-6) {
      draft.circle(tag(Ink.TOUCH), seat.lowest(lift), 0.1 * bore);
    }
  }

  /**
   * A valve on its seat. Its lowest corner stands the gap above the piston at top dead centre, and
   * comes down along the stem.
   *
   * @param topMm the crown at top dead centre
   */
  private record Seat(Clearance clearance, double topMm, double bore) {

    private static final double EDGE = 0.05;
    private static final double DISC = 0.4;

    private int side() {
      return clearance.valve().intake() ? -1 : 1;
    }

    private double tilt() {
      return Math.toRadians(clearance.valve().tiltDegrees());
    }

    /** Along the face, away from the wall. */
    private Vector2D along() {
      return p(-side() * Math.cos(tilt()), Math.sin(tilt()));
    }

    /** Up the stem. */
    private Vector2D up() {
      return p(side() * Math.sin(tilt()), Math.cos(tilt()));
    }

    /** Middle of the face, so far open along the stem. */
    private Vector2D middle(double liftMm) {
      double half = DISC * bore / 2;
      double x = side() * (bore / 2 - EDGE * bore - half * Math.cos(tilt()));
      double y = topMm + clearance.valve().gapMm() + half * Math.abs(Math.sin(tilt()));
      return p(x, y).subtract(up().multiply(liftMm));
    }

    double faceMm(double fromWall) {
      Vector2D middle = middle(0);
      double wall = bore / 2 - Math.abs(middle.getX());
      return middle.getY() + (fromWall - wall) * Math.tan(tilt());
    }

    Vector2D lowest(double liftMm) {
      double way = tilt() < 0 ? 0.5 : -0.5;
      return middle(liftMm).add(along().multiply(way * DISC * bore));
    }

    private Vector2D own(double liftMm, double along, double up) {
      return middle(liftMm).add(along().multiply(along * bore)).add(up().multiply(up * bore));
    }

    /** Disc, neck and stem. */
    List<Curve> outline(double liftMm) {
      double[][] half = {
        {0, 0}, {0.2, 0}, {0.2, 0.035}, {0.05, 0.16}, {0.035, 0.2}, {0.035, 0.85}, {0, 0.85}
      };
      List<Vector2D> corners =
          Stream.concat(
                  Stream.of(half).map(c -> own(liftMm, c[0], c[1])),
                  java.util.stream.IntStream.range(1, half.length - 1)
                      .mapToObj(i -> half[half.length - 1 - i])
                      .map(c -> own(liftMm, -c[0], c[1])))
              .toList();
      return java.util.stream.IntStream.range(0, corners.size())
          .<Curve>mapToObj(
              i -> new Curve.Line(corners.get(i), corners.get((i + 1) % corners.size())))
          .toList();
    }
  }
}
