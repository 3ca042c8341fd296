package tightside.drive;

import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import tightside.geometry.Bearing;
import tightside.geometry.StringPiece;

/**
 * The closed path of a chain's pitch line: the taut string through its route.
 *
 * @param pitchMm the chain's mean pitch as it is
 * @param legs in the direction of travel, the first being the turn round the driving sprocket
 */
public record TautPath(double pitchMm, List<Leg> legs) {

  /** A {@link Leg#place} of a straight run. */
  public static final int NOWHERE = -1;

  /**
   * A piece of the path.
   *
   * @param place on the route that it lies on, or {@link #NOWHERE} for a straight run
   * @param pitches its length in chain pitches
   */
  public record Leg(StringPiece piece, int place, double pitches) {}

  public TautPath {
    legs = List.copyOf(legs);
  }

  /** Length in chain pitches, as the links lie: corners of a polygon on sprockets and faces. */
  public double pitches() {
    return legs.stream().mapToDouble(Leg::pitches).sum();
  }

  /** Length of the pitch line itself, true arcs included, mm. */
  public double lengthMm() {
    return legs.stream().mapToDouble(leg -> leg.piece().lengthMm()).sum();
  }

  /** The turn round the sprocket at a place of the route. */
  public StringPiece.Turn wrap(int place) {
    return (StringPiece.Turn) legs.get(legOf(place)).piece();
  }

  /** Pitches from where the path begins to where it meets the sprocket at a place. */
  public double pitchesTo(int place) {
    return legs.subList(0, legOf(place)).stream().mapToDouble(Leg::pitches).sum();
  }

  private int legOf(int place) {
    for (int i = 0; i < legs.size(); i++) {
      if (legs.get(i).place() == place) {
        return i;
      }
    }
    throw new IllegalArgumentException("the path does not touch place " + place);
  }

  /** Whether the chain touches what stands at a place of the route. */
  public boolean touches(int place) {
    return legs.stream().anyMatch(leg -> leg.place() == place);
  }

  /** Bearing from a sprocket's centre to where the chain meets it. */
  public Bearing arrivesAt(int place) {
    StringPiece.Turn wrap = wrap(place);
    return wrap.circle().bearingAt(wrap.in());
  }

  /** Bearing from a sprocket's centre to where the chain leaves it. */
  public Bearing leavesAt(int place) {
    StringPiece.Turn wrap = wrap(place);
    return wrap.circle().bearingAt(wrap.out());
  }

  /**
   * How the length of the pitch line (mm) grows as what stands at a place is moved (per mm): the
   * heading with which the chain arrives less the one with which it leaves, as unit vectors.
   * Turning points slide, but to first order that changes no length.
   *
   * @return zero for a face that the chain does not touch
   */
  public Vector2D lengthGradient(int place) {
    List<StringPiece.Turn> turns =
        legs.stream()
            .filter(leg -> leg.place() == place)
            .map(Leg::piece)
            .filter(StringPiece.Turn.class::isInstance)
            .map(StringPiece.Turn.class::cast)
            .toList();
    if (turns.isEmpty()) {
      return Vector2D.ZERO;
    }
    Vector2D in = turns.get(0).in().direction();
    return in.subtract(turns.get(turns.size() - 1).out().direction());
  }

  /**
   * The point of the path so many pitches after its beginning.
   *
   * @param pitches any number; taken round the loop
   */
  public Vector2D pointAt(double pitches) {
    double total = pitches();
    double rest = pitches - total * Math.floor(pitches / total);
    for (Leg leg : legs) {
      if (rest <= leg.pitches()) {
        return along(leg.piece(), leg.pitches() == 0 ? 0 : rest / leg.pitches());
      }
      rest -= leg.pitches();
    }
    return legs.get(0).piece().start();
  }

  private static Vector2D along(StringPiece piece, double fraction) {
    if (piece instanceof StringPiece.Turn turn) {
      Bearing heading = turn.in().plus(fraction * turn.degrees(), turn.circle().sense());
      return turn.circle().touchAt(heading);
    }
    return piece.start().lerp(piece.end(), fraction);
  }
}
