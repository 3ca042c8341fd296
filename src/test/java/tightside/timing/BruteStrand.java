package tightside.timing;

import java.util.ArrayList;
import java.util.List;
import tightside.drive.Chain;
import tightside.drive.Contact;
import tightside.drive.Drive;
import tightside.drive.Face;
import tightside.drive.Shoe;
import tightside.drive.Sprocket;
import tightside.timing.ShortestRun.Disc;
import tightside.timing.ShortestRun.Point;
import tightside.timing.ShortestRun.Row;
import tightside.timing.ShortestRun.Sector;
import tightside.timing.ShortestRun.Solid;
import tightside.timing.ShortestRun.Wall;

/**
 * A strand of a drive that runs clockwise, past faces outside its loop, as points for the
 * brute-force search. A sprocket without a mark that it passes lies inside. A shoe may be pushed
 * out; an arm stands as drawn.
 *
 * @param fine whether sprockets are strewn with points all round, or hold pins in their gaps alone
 */
record BruteStrand(Drive drive, Chain chain, int from, int to, double extension, boolean fine) {

  private static final int FINE_STEPS = 400;
  private static final double FAR = 1000;

  /** A sprocket without a mark is looked at so far to either side. */
  private static final double PASSED_DEGREES = 150;

  /** Pitches from mark to mark, as the crow flies where it must not go round. */
  double pitches() {
    List<Row> rows = new ArrayList<>();
    List<Solid> solids = new ArrayList<>(List.of(disc(from), disc(to)));
    rows.add(arc(from, true));
    double before = 0;
    int size = chain.route().size();
    for (int place = (from + 1) % size; place != to; place = (place + 1) % size) {
      if (chain.route().get(place) instanceof Face face) {
        rows.addAll(rows(face, solids));
      } else {
        solids.add(disc(place));
        rows.add(passed(place, -PASSED_DEGREES, 0));
        before += new ShortestRun(rows, solids, chain.pitchMm(), mayCut()).pitches();
        rows = new ArrayList<>(List.of(passed(place, 0, PASSED_DEGREES)));
      }
    }
    rows.add(arc(to, false));
    return before + new ShortestRun(rows, solids, chain.pitchMm(), mayCut()).pitches();
  }

  /** Between two pins of a sprocket the chain itself cuts the circle, as deep as its polygon. */
  private double mayCut() {
    double fineCut = 1e-3;
    return fine ? fineCut : Math.max(polygonDepth(from), polygonDepth(to)) + fineCut;
  }

  private double polygonDepth(int place) {
    return disc(place).radius() * (1 - Math.cos(Math.PI / teeth(place)));
  }

  private int teeth(int place) {
    return chain.sprocketAt(place).teeth();
  }

  /** A sprocket without a mark, in degrees from the point that looks away from its neighbours. */
  private Row passed(int place, double fromDegrees, double toDegrees) {
    Point before = disc(sprocketBeside(place, -1)).centre();
    Point after = disc(sprocketBeside(place, 1)).centre();
    Point centre = disc(place).centre();
    double in = before.to(centre);
    double out = after.to(centre);
    double away =
        Math.atan2(
            (centre.x() - before.x()) / in + (centre.x() - after.x()) / out,
            (centre.y() - before.y()) / in + (centre.y() - after.y()) / out);
    double step = Math.toRadians(toDegrees - fromDegrees) / FINE_STEPS;
    return ShortestRun.arc(
        disc(place),
        away + Math.toRadians(fromDegrees),
        away + Math.toRadians(toDegrees),
        FINE_STEPS,
        disc(place).radius() * step,
        step * teeth(place) / (2 * Math.PI));
  }

  private int sprocketBeside(int place, int way) {
    int size = chain.route().size();
    int beside = Math.floorMod(place + way, size);
    while (!(chain.route().get(beside) instanceof Sprocket)) {
      beside = Math.floorMod(beside + way, size);
    }
    return beside;
  }

  private Disc disc(int place) {
    Sprocket sprocket = chain.sprocketAt(place);
    var at = drive.shaft(sprocket.shaft()).orElseThrow().at();
    double radius = chain.pitchMm() / Math.sin(Math.PI / sprocket.teeth()) / 2;
    return new Disc(new Point(at.getX(), at.getY()), radius);
  }

  /** From the mark on, or up to the mark, over 200 degrees. */
  private Row arc(int place, boolean onward) {
    double mark = Math.toRadians(chain.sprocketAt(place).mark().orElseThrow().degrees());
    double tooth = 2 * Math.PI / teeth(place);
    int pins = (int) Math.ceil(Math.toRadians(200) / tooth);
    int steps = fine ? FINE_STEPS : pins;
    double reach = pins * tooth;
    double stepPitches = (double) pins / steps;
    double stepLength = fine ? disc(place).radius() * reach / steps : chain.pitchMm();
    double turn = chain.sprocketAt(place).contact() == Contact.INSIDE ? reach : -reach;
    return ShortestRun.arc(
        disc(place),
        onward ? mark : mark - turn,
        onward ? mark + turn : mark,
        steps,
        stepLength,
        stepPitches);
  }

  private List<Row> rows(Face face, List<Solid> solids) {
    Point[] p = points(face);
    double half = chain.plateHeightMm() / 2;
    Point centre = circumcentre(p[0], p[1], p[2]);
    Disc disc = new Disc(centre, centre.to(p[1]) + half);
    Disc first = new Disc(p[0], half);
    Disc last = new Disc(p[2], half);
    solids.addAll(List.of(new Sector(disc, p[0], p[2]), first, last));
    for (Point point : p) {
      solids.add(new Wall(point, away(point, centre)));
    }
    double a0 = Math.atan2(p[0].x() - centre.x(), p[0].y() - centre.y());
    double a1 =
        a0
            + Math.IEEEremainder(
                Math.atan2(p[2].x() - centre.x(), p[2].y() - centre.y()) - a0, 2 * Math.PI);
    int steps = 200;
    double step = Math.abs(a1 - a0) / steps;
    double chord = 2 * Math.asin(chain.pitchMm() / (2 * disc.radius()));
    return List.of(
        end(first, a0, 1.5, 0),
        ShortestRun.arc(disc, a0, a1, steps, step * disc.radius(), step / chord),
        end(last, a1, 0, -1.5));
  }

  /**
   * The turn round a face's end: as far as it can go, before or after the arc, counterclockwise.
   */
  private Row end(Disc disc, double angle, double before, double after) {
    int steps = 60;
    double step = (before - after) / steps * disc.radius();
    return ShortestRun.arc(
        disc, angle + before, angle + after, steps, step, step / chain.pitchMm());
  }

  private Point[] points(Face face) {
    double dx = 0;
    double dy = 0;
    if (face instanceof Shoe shoe) {
      double bearing = Math.toRadians(shoe.plunger().bearing().degrees());
      dx = extension * Math.sin(bearing);
      dy = extension * Math.cos(bearing);
    }
    var c = face.curve();
    return new Point[] {
      new Point(c.start().getX() + dx, c.start().getY() + dy),
      new Point(c.middle().getX() + dx, c.middle().getY() + dy),
      new Point(c.end().getX() + dx, c.end().getY() + dy)
    };
  }

  /** Far behind a face, where no chain runs. */
  private static Point away(Point point, Point centre) {
    double distance = point.to(centre);
    return new Point(
        point.x() + (centre.x() - point.x()) / distance * FAR,
        point.y() + (centre.y() - point.y()) / distance * FAR);
  }

  /** Equally far from three points, by Cramer's rule. */
  private static Point circumcentre(Point a, Point b, Point c) {
    double a1 = 2 * (b.x() - a.x());
    double b1 = 2 * (b.y() - a.y());
    double c1 = b.x() * b.x() - a.x() * a.x() + b.y() * b.y() - a.y() * a.y();
    double a2 = 2 * (c.x() - a.x());
    double b2 = 2 * (c.y() - a.y());
    double c2 = c.x() * c.x() - a.x() * a.x() + c.y() * c.y() - a.y() * a.y();
    double det = a1 * b2 - a2 * b1;
    return new Point((c1 * b2 - c2 * b1) / det, (a1 * c2 - a2 * c1) / det);
  }
}
