package tightside.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import tightside.drive.Chain;
import tightside.drive.TautPath;
import tightside.geometry.Bearing;
import tightside.geometry.Curve;
import tightside.timing.ChainSolution;
import tightside.timing.TensionerReading;

/**
 * How the run that carries a tensioner hangs where that takes up no more: off its taut path by a
 * parabola, inward and away from what should press on it, just so far that the chain left over
 * finds its room. Past a few pitches it is drawn no deeper.
 */
final class Sag {

  /** Deeper than this, in pitches, a run would be drawn across what lies beside it. */
  private static final double DEEPEST = 3.5;

  /** Points along the run, in pitches from one to the next. */
  private static final double STEP = 0.25;

  /** Halvings of the depth: to a thousandth of the deepest. */
  private static final int HALVINGS = 12;

  private final double from;
  private final double pitches;
  private final double loop;
  private final List<Vector2D> points;
  private final double[] lengths;

  private Sag(double from, double pitches, double loop, List<Vector2D> points) {
    this.from = from;
    this.pitches = pitches;
    this.loop = loop;
    this.points = points;
    lengths = lengths(points);
  }

  /** Nothing where the chain is held tight. */
  static Optional<Sag> of(ChainSolution solved, TautPath path, PathWalk walk) {
    Chain chain = solved.chain();
    Optional<TensionerReading> reading = solved.tensioner().filter(r -> !r.taut());
    if (reading.isEmpty() || chain.tensionerPlace().isEmpty()) {
      return Optional.empty();
    }
    int face = chain.tensionerPlace().get();
    List<Integer> places = chain.sprocketPlaces();
    int before = places.stream().filter(p -> p < face).reduce((a, b) -> b).orElse(last(places));
    int after = places.stream().filter(p -> p > face).findFirst().orElse(places.get(0));
    double from =
        path.pitchesTo(before)
            + path.wrap(before).degrees() * chain.sprocketAt(before).teeth() / 360;
    double length = path.pitchesTo(after) - from;
    length += length < 0 ? walk.pitches() : 0;
    List<Vector2D> taut = taut(walk, from, length);
    Bearing across = Bearing.of(taut.get(0).vectorTo(taut.get(taut.size() - 1)));
    Vector2D aside = across.plus(90, solved.travel()).direction();
    double wanted = total(lengths(taut)) + reading.get().slackLeftMm();
    double depth = depth(taut, aside, wanted, DEEPEST * path.pitchMm());
    return Optional.of(new Sag(from, length, walk.pitches(), hung(taut, aside, depth)));
  }

  private static int last(List<Integer> places) {
    return places.get(places.size() - 1);
  }

  private static List<Vector2D> taut(PathWalk walk, double from, double length) {
    int steps = Math.max(4, (int) Math.ceil(length / STEP));
    List<Vector2D> points = new ArrayList<>(steps + 1);
    for (int i = 0; i <= steps; i++) {
      points.add(walk.pointAt(from + length * i / steps));
    }
    return points;
  }

  private static double depth(List<Vector2D> taut, Vector2D aside, double wanted, double deepest) {
    double low = 0;
    double high = deepest;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (low + high) / 2;
      boolean tooShort = total(lengths(hung(taut, aside, middle))) < wanted;
      low = tooShort ? middle : low;
      high = tooShort ? high : middle;
    }
    return (low + high) / 2;
  }

  private static List<Vector2D> hung(List<Vector2D> taut, Vector2D aside, double depth) {
    List<Vector2D> points = new ArrayList<>(taut.size());
    for (int i = 0; i < taut.size(); i++) {
      double share = i / (taut.size() - 1.0);
      points.add(taut.get(i).add(aside.multiply(4 * depth * share * (1 - share))));
    }
    return points;
  }

  private static double[] lengths(List<Vector2D> points) {
    double[] lengths = new double[points.size()];
    for (int i = 1; i < lengths.length; i++) {
      lengths[i] = lengths[i - 1] + points.get(i - 1).distance(points.get(i));
    }
    return lengths;
  }

  private static double total(double[] lengths) {
    return lengths[lengths.length - 1];
  }

  /** Where the chain lies, so many pitches along its taut path. */
  Vector2D at(PathWalk walk, double place) {
    double into = place - from - loop * Math.floor((place - from) / loop);
    return into >= pitches ? walk.pointAt(place) : along(into / pitches);
  }

  /**
   * A point of the run.
   *
   * @param share of its length, 0 to 1
   */
  Vector2D along(double share) {
    double wanted = share * total(lengths);
    int i = 1;
    while (i < lengths.length - 1 && lengths[i] < wanted) {
      i++;
    }
    double step = lengths[i] - lengths[i - 1];
    double rest = step == 0 ? 0 : (wanted - lengths[i - 1]) / step;
    return points.get(i - 1).lerp(points.get(i), rest);
  }

  /** The way the chain runs there. */
  Bearing headingAt(double share) {
    double near = 0.02;
    return Bearing.of(along(Math.max(0, share - near)).vectorTo(along(Math.min(1, share + near))));
  }

  /** The line of the chain from one end to the other. */
  List<Curve> line() {
    List<Curve> line = new ArrayList<>(points.size());
    for (int i = 1; i < points.size(); i++) {
      line.add(new Curve.Line(points.get(i - 1), points.get(i)));
    }
    return line;
  }
}
