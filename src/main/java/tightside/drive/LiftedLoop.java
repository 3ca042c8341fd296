package tightside.drive;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.IntStream;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import tightside.geometry.OrientedCircle;
import tightside.geometry.Outline;
import tightside.geometry.StringPiece;
import tightside.geometry.TautString;

/**
 * The shortest loop round a route on which sprockets have been moved off their shafts, or whose
 * teeth the chain rides over instead of lying between them. It says how much chain that takes.
 *
 * @param pitchMm the chain's mean pitch as it is
 * @param extensionMm how far the plunger is out
 * @param lifted sprockets by place that are not where they belong
 * @param without places of the route that are left out
 */
public record LiftedLoop(
    ChainInPlace chain,
    double pitchMm,
    double extensionMm,
    Map<Integer, Lifted> lifted,
    Set<Integer> without) {

  /** A string that would have to turn further than this round a sprocket has let go of it. */
  private static final double MOST_WRAP_DEGREES = 300;

  /**
   * How a sprocket stands.
   *
   * @param moved from its shaft, mm
   * @param liftMm by how much the chain rides above its seat in the teeth
   */
  public record Lifted(Vector2D moved, double liftMm) {}

  public LiftedLoop {
    lifted = Map.copyOf(lifted);
    without = Set.copyOf(without);
  }

  /** Nothing moved, nothing lifted, nothing left out. */
  public static LiftedLoop seated(ChainInPlace chain, double pitchMm, double extensionMm) {
    return new LiftedLoop(chain, pitchMm, extensionMm, Map.of(), Set.of());
  }

  public LiftedLoop lifting(Map<Integer, Lifted> other) {
    return new LiftedLoop(chain, pitchMm, extensionMm, other, without);
  }

  public LiftedLoop leavingOut(Set<Integer> places) {
    return new LiftedLoop(chain, pitchMm, extensionMm, lifted, places);
  }

  /**
   * The chain that the loop takes, in pitches: seated links by teeth, ridden arcs by their chords.
   *
   * @return nothing where no string fits
   */
  public OptionalDouble pitches() {
    List<Integer> sprockets = sprockets();
    if (sprockets.size() < 2) {
      return OptionalDouble.empty();
    }
    List<Optional<TautString>> strands =
        IntStream.range(0, sprockets.size()).mapToObj(i -> strand(sprockets, i)).toList();
    if (strands.stream().anyMatch(Optional::isEmpty)) {
      return OptionalDouble.empty();
    }
    double sum = 0;
    for (int i = 0; i < sprockets.size(); i++) {
      TautString leaving = strands.get(i).orElseThrow();
      TautString arriving =
          strands.get((i + sprockets.size() - 1) % sprockets.size()).orElseThrow();
      int place = sprockets.get(i);
      double degrees = arriving.arrival().turnTo(leaving.departure(), chain.senses().get(place));
      if (degrees > MOST_WRAP_DEGREES) {
        return lifted.containsKey(place) ? letGo(place).pitches() : OptionalDouble.empty();
      }
      sum += wrapPitches(place, degrees);
      sum += leaving.pieces().stream().mapToDouble(this::piecePitches).sum();
    }
    return OptionalDouble.of(sum);
  }

  private LiftedLoop letGo(int place) {
    Set<Integer> more = new HashSet<>(without);
    more.add(place);
    return leavingOut(more);
  }

  private List<Integer> sprockets() {
    return chain.chain().sprocketPlaces().stream().filter(p -> !without.contains(p)).toList();
  }

  /** The run from one sprocket to the next, past the faces between them. */
  private Optional<TautString> strand(List<Integer> sprockets, int i) {
    int from = sprockets.get(i);
    int to = sprockets.get((i + 1) % sprockets.size());
    int size = chain.chain().route().size();
    int steps = Math.floorMod(to - from - 1, size);
    List<Outline> faces =
        IntStream.rangeClosed(1, steps)
            .map(step -> (from + step) % size)
            .filter(place -> chain.chain().route().get(place) instanceof Face)
            .filter(place -> !without.contains(place))
            .mapToObj(place -> chain.outline(place, pitchMm, extensionMm))
            .toList();
    return TautString.between(outline(from), outline(to), faces);
  }

  private Outline outline(int place) {
    return Outline.of(circle(place));
  }

  private OrientedCircle circle(int place) {
    OrientedCircle seat = chain.pitchCircle(place, pitchMm);
    Lifted how = lifted.getOrDefault(place, new Lifted(Vector2D.ZERO, 0));
    return new OrientedCircle(
        seat.centre().add(how.moved()), seat.radiusMm() + how.liftMm(), seat.sense());
  }

  private double wrapPitches(int place, double degrees) {
    boolean rides = lifted.containsKey(place) && lifted.get(place).liftMm() != 0;
    return rides
        ? chords(circle(place).radiusMm(), degrees)
        : degrees * chain.chain().sprocketAt(place).teeth() / 360;
  }

  private double piecePitches(StringPiece piece) {
    return piece instanceof StringPiece.Turn turn && turn.spot() == StringPiece.Spot.FACE_ARC
        ? chords(turn.circle().radiusMm(), turn.degrees())
        : piece.lengthMm() / pitchMm;
  }

  /** Links on an arc, as corners of a polygon: angle / (2 asin(p / 2r)). */
  private double chords(double radiusMm, double degrees) {
    return Math.toRadians(degrees) / (2 * Math.asin(Math.min(1, pitchMm / (2 * radiusMm))));
  }
}
