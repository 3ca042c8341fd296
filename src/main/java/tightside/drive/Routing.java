package tightside.drive;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tightside.geometry.OrientedCircle;
import tightside.geometry.Outline;
import tightside.geometry.StringPiece;
import tightside.geometry.TautString;
import tightside.geometry.Tolerance;

/** What comes of laying a string through a chain's route. */
public sealed interface Routing permits Routing.Routed, ChainFit.SprocketMissed, ChainFit.NoRoom {

  /** A path. */
  record Routed(TautPath path) implements Routing {}

  /**
   * The taut string through a route. Every sprocket is wrapped, or the string has missed it; faces
   * are touched only where it meets them.
   *
   * @param pitchMm the chain's mean pitch as it is
   * @param extensionMm how far the plunger is out
   */
  static Routing of(ChainInPlace chain, double pitchMm, double extensionMm) {
    List<Outline> outlines = new ArrayList<>();
    for (int place = 0; place < chain.chain().route().size(); place++) {
      outlines.add(chain.outline(place, pitchMm, extensionMm));
    }
    List<Integer> places = chain.chain().sprocketPlaces();
    List<TautString> strands = new ArrayList<>();
    for (int i = 0; i < places.size(); i++) {
      int from = places.get(i);
      int to = places.get((i + 1) % places.size());
      int end = i + 1 < places.size() ? to : outlines.size();
      Optional<TautString> strand =
          TautString.between(outlines.get(from), outlines.get(to), outlines.subList(from + 1, end));
      if (strand.isEmpty()) {
        return new ChainFit.NoRoom(from, to);
      }
      strands.add(strand.get());
    }
    return closed(chain, pitchMm, places, strands);
  }

  private static Routing closed(
      ChainInPlace chain, double pitchMm, List<Integer> places, List<TautString> strands) {
    List<TautPath.Leg> legs = new ArrayList<>();
    double turned = 0;
    int mostWrapped = 0;
    double mostDegrees = 0;
    for (int i = 0; i < places.size(); i++) {
      int place = places.get(i);
      OrientedCircle circle = chain.pitchCircle(place, pitchMm);
      TautString arriving = strands.get((i + places.size() - 1) % places.size());
      TautString leaving = strands.get(i);
      double degrees = arriving.arrival().turnTo(leaving.departure(), circle.sense());
      if (degrees < Tolerance.TURN.value() || crossed(circle, degrees, arriving, leaving)) {
        return new ChainFit.SprocketMissed(place);
      }
      if (degrees > mostDegrees) {
        mostDegrees = degrees;
        mostWrapped = place;
      }
      StringPiece.Turn wrap =
          new StringPiece.Turn(place, StringPiece.Spot.ROUND, circle, arriving.arrival(), degrees);
      legs.add(leg(chain, pitchMm, wrap, place));
      turned += circle.sense().sign() * degrees;
      for (StringPiece piece : leaving.pieces()) {
        if (piece instanceof StringPiece.Turn t) {
          int at = place + 1 + t.outline();
          legs.add(leg(chain, pitchMm, t.named(at), at));
          turned += t.circle().sense().sign() * t.degrees();
        } else {
          legs.add(leg(chain, pitchMm, piece, TautPath.NOWHERE));
        }
      }
    }
    boolean once = Math.abs(turned - chain.travel().sign() * 360.0) < 1e-6;
    return once
        ? new Routed(new TautPath(pitchMm, legs))
        : new ChainFit.SprocketMissed(mostWrapped);
  }

  /**
   * Whether the string would cross itself to turn so far round a circle: turned by more than half,
   * the runs that touch it meet again at radius x tan(half of what lacks of a full turn) from where
   * they touch.
   */
  private static boolean crossed(
      OrientedCircle circle, double degrees, TautString arriving, TautString leaving) {
    if (degrees <= 180) {
      return false;
    }
    double meetMm = circle.radiusMm() * Math.tan(Math.toRadians((360 - degrees) / 2));
    StringPiece last = arriving.pieces().get(arriving.pieces().size() - 1);
    return Math.min(last.lengthMm(), leaving.pieces().get(0).lengthMm()) > meetMm;
  }

  /**
   * A piece with its length in pitches: teeth on a sprocket; length / p on a straight; chords of
   * the arc on a face, angle / (2 asin(p / 2r)); length / p round a face's end.
   */
  private static TautPath.Leg leg(
      ChainInPlace chain, double pitchMm, StringPiece piece, int place) {
    double pitches = piece.lengthMm() / pitchMm;
    if (piece instanceof StringPiece.Turn turn) {
      if (turn.spot() == StringPiece.Spot.ROUND) {
        pitches = turn.degrees() * chain.chain().sprocketAt(place).teeth() / 360;
      } else if (turn.spot() == StringPiece.Spot.FACE_ARC) {
        double half = Math.min(1, pitchMm / (2 * turn.circle().radiusMm()));
        pitches = Math.toRadians(turn.degrees()) / (2 * Math.asin(half));
      }
    }
    return new TautPath.Leg(piece, place, pitches);
  }
}
