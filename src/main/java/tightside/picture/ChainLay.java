package tightside.picture;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntUnaryOperator;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import tightside.drive.Chain;
import tightside.drive.ChainFit;
import tightside.drive.Sprocket;
import tightside.drive.TautPath;
import tightside.geometry.Bearing;
import tightside.geometry.Rotation;
import tightside.geometry.Tolerance;
import tightside.timing.ChainSolution;
import tightside.timing.Seat;
import tightside.timing.Solution;
import tightside.timing.Strand;

/**
 * How the links of a chain lie along its path.
 *
 * <p>Links are numbered in the direction of travel; number 0 is the one that was painted over the
 * first mark of the route at the reference position. A place on the chain is a real number of
 * links; whole ones are links' middles, halves are pins. A place on the path is a number of pitches
 * from where it begins. Round a sprocket one is the other plus a fixed offset, so that every roller
 * sits in its gap; between two sprockets what is left over (a misfit, or free slack) is shared out
 * evenly.
 */
final class ChainLay {

  private final Chain chain;
  private final PathWalk walk;
  private final double advance;
  private final Map<Integer, Integer> painted;
  private final Optional<Sag> sag;
  private final Map<Integer, Double> offsets;
  private final double[] onChain;
  private final double[] onPath;

  private ChainLay(
      ChainSolution solved,
      TautPath path,
      Map<Integer, Integer> painted,
      Map<Integer, Double> marked) {
    chain = solved.chain();
    advance = solved.advancePitches();
    this.painted = painted;
    walk = new PathWalk(path);
    sag = Sag.of(solved, path, walk);
    offsets = withUnmarked(path, marked);
    List<Integer> places = chain.sprocketPlaces();
    onChain = new double[2 * places.size() + 1];
    onPath = new double[2 * places.size() + 1];
    for (int i = 0; i < places.size(); i++) {
      knots(path, i, places.get(i));
    }
    onPath[2 * places.size()] = onPath[0] + walk.pitches();
    onChain[2 * places.size()] = onChain[0] + chain.links();
  }

  /** Where the chain meets a sprocket and where it leaves it: what lies between is fixed. */
  private void knots(TautPath path, int i, int place) {
    double arrives = path.pitchesTo(place);
    double leaves = arrives + path.wrap(place).degrees() * chain.sprocketAt(place).teeth() / 360;
    onPath[2 * i] = arrives;
    onPath[2 * i + 1] = leaves;
    onChain[2 * i] = arrives - offsets.get(place);
    onChain[2 * i + 1] = leaves - offsets.get(place);
  }

  /**
   * How the chain lies; nothing where no chain could be laid, new or as it is.
   *
   * @param whenPainted teeth by which sprockets sat off when the links under their marks were
   *     painted
   */
  static Optional<ChainLay> of(
      Solution solution, ChainSolution chain, Map<Seat, Integer> whenPainted) {
    IntUnaryOperator overPaint = place -> sinceThen(solution, chain, place, whenPainted);
    Optional<TautPath> path = chain.fit().path();
    if (path.isEmpty()
        || !(chain.whenNew() instanceof ChainFit.Solved fresh)
        || !chain.marksOff().isEmpty()) {
      return Optional.empty();
    }
    Map<Integer, Integer> painted = painted(chain, overPaint);
    Map<Integer, Double> offsets = new HashMap<>();
    painted.forEach(
        (place, link) -> {
          double mark = markOnPath(solution, chain, fresh.taut(), path.get(), place);
          offsets.put(place, mark - overPaint.applyAsInt(place) - link);
        });
    return Optional.of(new ChainLay(chain, path.get(), painted, offsets));
  }

  /** By place of a marked sprocket: the number of the link that was painted over its mark. */
  private static Map<Integer, Integer> painted(ChainSolution chain, IntUnaryOperator overPaint) {
    Map<Integer, Integer> painted = new HashMap<>();
    int link = 0;
    for (Strand strand : chain.strands()) {
      painted.put(strand.fromPlace(), link);
      int over = overPaint.applyAsInt(strand.toPlace()) - overPaint.applyAsInt(strand.fromPlace());
      link += (int) strand.links() - over;
    }
    return painted;
  }

  /** Teeth by which a sprocket sits further ahead than when it was painted. */
  private static int sinceThen(
      Solution solution, ChainSolution chain, int place, Map<Seat, Integer> whenPainted) {
    Seat seat = new Seat(chain.chain().name(), chain.chain().sprocketAt(place).shaft());
    return solution.state().teethAt(seat) - whenPainted.getOrDefault(seat, 0);
  }

  /** Where the mark of a sprocket stands on the path as it is, with the crank not yet turned. */
  private static double markOnPath(
      Solution solution, ChainSolution chain, TautPath fresh, TautPath now, int place) {
    Sprocket sprocket = chain.chain().sprocketAt(place);
    Rotation sense = now.wrap(place).circle().sense();
    double into = fresh.arrivesAt(place).turnTo(sprocket.mark().orElseThrow(), sense);
    if (into > 360 - Tolerance.TURN.value()) {
      into = 0;
    }
    double error = solution.shaft(sprocket.shaft()).map(t -> t.shaftDegrees()).orElse(0.0);
    double shift = fresh.arrivesAt(place).signedTurnTo(now.arrivesAt(place), sense);
    return now.pitchesTo(place) + (into + error - shift) * sprocket.teeth() / 360;
  }

  private Map<Integer, Double> withUnmarked(TautPath path, Map<Integer, Double> marked) {
    Map<Integer, Double> all = new HashMap<>(marked);
    List<Known> known = threeTurns(path, marked);
    for (int place : chain.sprocketPlaces()) {
      double at = path.pitchesTo(place);
      all.computeIfAbsent(place, p -> known.isEmpty() ? 0.0 : between(known, at));
    }
    return all;
  }

  /** An offset that is known, and where on the path. */
  private record Known(double at, double offset) {}

  /** What is known of three turns round the loop, so that every sprocket has a known one before. */
  private List<Known> threeTurns(TautPath path, Map<Integer, Double> marked) {
    double total = walk.pitches();
    double over = total - chain.links();
    List<Known> known = new ArrayList<>();
    for (int turn = -1; turn <= 1; turn++) {
      for (int place : chain.sprocketPlaces()) {
        if (marked.containsKey(place)) {
          known.add(
              new Known(path.pitchesTo(place) + turn * total, marked.get(place) + turn * over));
        }
      }
    }
    return known;
  }

  /**
   * A sprocket without a mark takes the links as they come: its offset lies between those of the
   * marked ones before and after it, by how far it is from each.
   */
  private static double between(List<Known> known, double at) {
    int after = 1;
    while (after < known.size() - 1 && known.get(after).at() < at) {
      after++;
    }
    Known from = known.get(after - 1);
    Known to = known.get(after);
    return from.offset() + (to.offset() - from.offset()) * (at - from.at()) / (to.at() - from.at());
  }

  Chain chain() {
    return chain;
  }

  PathWalk walk() {
    return walk;
  }

  /** The links that were painted at the reference position. */
  List<Integer> paintedLinks() {
    return painted.values().stream().map(link -> Math.floorMod(link, chain.links())).toList();
  }

  /** Where the pin behind a link and the one ahead of it meet the next: as many as links. */
  List<Vector2D> pins() {
    List<Vector2D> pins = new ArrayList<>(chain.links());
    for (int link = 0; link < chain.links(); link++) {
      pins.add(at(link - 0.5));
    }
    return pins;
  }

  private Vector2D at(double link) {
    double place = pathOf(link + advance);
    return sag.map(s -> s.at(walk, place)).orElseGet(() -> walk.pointAt(place));
  }

  /** The middle of the link that was painted over the first mark of the route. */
  Vector2D firstPainted() {
    return at(0);
  }

  /** How the run with the tensioner hangs, where nothing holds it. */
  Optional<Sag> sag() {
    return sag;
  }

  private double pathOf(double place) {
    double c = onChain[0] + floorMod(place - onChain[0], chain.links());
    int i = 0;
    while (i < onChain.length - 2 && c > onChain[i + 1]) {
      i++;
    }
    double length = onChain[i + 1] - onChain[i];
    double share = length > 0 ? (c - onChain[i]) / length : 0;
    return onPath[i] + share * (onPath[i + 1] - onPath[i]);
  }

  private static double floorMod(double value, double by) {
    return value - by * Math.floor(value / by);
  }

  /** The bearing of a tooth of the sprocket at a place, as it stands: one that a link straddles. */
  Bearing toothAt(TautPath path, int place) {
    double teeth = advance + offsets.get(place) - path.pitchesTo(place);
    double degrees = teeth * 360 / chain.sprocketAt(place).teeth();
    return path.arrivesAt(place).plus(degrees, path.wrap(place).circle().sense());
  }
}
