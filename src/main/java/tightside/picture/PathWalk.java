package tightside.picture;

import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import tightside.drive.TautPath;
import tightside.geometry.Bearing;
import tightside.geometry.StringPiece;

/** A path measured once, to be walked many times: what the hundreds of pins of a picture need. */
final class PathWalk {

  private final List<TautPath.Leg> legs;
  private final double[] starts;

  PathWalk(TautPath path) {
    legs = path.legs();
    starts = new double[legs.size() + 1];
    for (int i = 0; i < legs.size(); i++) {
      starts[i + 1] = starts[i] + legs.get(i).pitches();
    }
  }

  double pitches() {
    return starts[legs.size()];
  }

  /** The point so many pitches after the path's beginning, taken round the loop. */
  Vector2D pointAt(double pitches) {
    double rest = withinLoop(pitches);
    int leg = legAt(rest);
    return along(legs.get(leg).piece(), fraction(leg, rest));
  }

  /** The way the chain runs there. */
  Bearing headingAt(double pitches) {
    double rest = withinLoop(pitches);
    int leg = legAt(rest);
    return legs.get(leg).piece() instanceof StringPiece.Turn turn
        ? turn.in().plus(fraction(leg, rest) * turn.degrees(), turn.circle().sense())
        : ((StringPiece.Straight) legs.get(leg).piece()).tangent().heading();
  }

  private double withinLoop(double pitches) {
    return pitches - pitches() * Math.floor(pitches / pitches());
  }

  private int legAt(double rest) {
    int leg = 0;
    while (leg < legs.size() - 1 && rest > starts[leg + 1]) {
      leg++;
    }
    return leg;
  }

  private double fraction(int leg, double rest) {
    double length = legs.get(leg).pitches();
    return length == 0 ? 0 : (rest - starts[leg]) / length;
  }

  private static Vector2D along(StringPiece piece, double fraction) {
    if (piece instanceof StringPiece.Turn turn) {
      return turn.circle()
          .touchAt(turn.in().plus(fraction * turn.degrees(), turn.circle().sense()));
    }
    return piece.start().lerp(piece.end(), fraction);
  }
}
