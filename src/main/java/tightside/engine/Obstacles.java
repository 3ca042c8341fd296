package tightside.engine;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Where a valve stands in the way of its piston, over two turns of the crankshaft.
 *
 * <p>The room is gone over pieces in which it goes on falling, or grows again, as the crankshaft
 * turns forward. Forward it can't be turned into the first kind, backward not into the second; out
 * of either it can.
 *
 * @param pieces in the order of their angles
 */
public record Obstacles(List<Piece> pieces) {

  private static final double CYCLE_DEGREES = 720;

  /**
   * A piece of the turn without room.
   *
   * @param fromDegrees crank degrees from top dead centre at gas exchange
   * @param toDegrees where it ends, no smaller
   * @param falling whether the room gets smaller from there to here
   */
  public record Piece(double fromDegrees, double toDegrees, boolean falling) {}

  public Obstacles {
    pieces = List.copyOf(pieces);
  }

  public static Obstacles of(Clearance clearance) {
    List<Double> knots = clearance.knots();
    List<Piece> pieces = new ArrayList<>();
    for (int i = 1; i < knots.size(); i++) {
      add(pieces, clearance, knots.get(i - 1), knots.get(i));
    }
    return new Obstacles(pieces);
  }

  /** Between two knots the room only falls or only grows, so it is gone on one side of a root. */
  private static void add(List<Piece> pieces, Clearance clearance, double from, double to) {
    double before = clearance.mmAt(from);
    double after = clearance.mmAt(to);
    if (before > 0 && after > 0) {
      return;
    }
    boolean falling = after < before;
    double root = before > 0 || after > 0 ? clearance.zeroBetween(from, to) : falling ? from : to;
    Piece piece = falling ? new Piece(root, to, true) : new Piece(from, root, false);
    int last = pieces.size() - 1;
    if (last >= 0
        && pieces.get(last).toDegrees == piece.fromDegrees
        && pieces.get(last).falling == falling) {
      pieces.set(last, new Piece(pieces.get(last).fromDegrees, piece.toDegrees, falling));
    } else if (piece.toDegrees > piece.fromDegrees) {
      pieces.add(piece);
    }
  }

  /** Where the valve first meets the piston as the crankshaft turns forward, if it does. */
  public OptionalDouble firstTouchDegrees() {
    return pieces.stream().filter(Piece::falling).mapToDouble(Piece::fromDegrees).findFirst();
  }

  /**
   * How far the crankshaft can be turned.
   *
   * @param from crank degrees from top dead centre at gas exchange; whole turns count
   * @param to where it is to be turned, either way
   * @return the angle of first touch on the way, or {@code to} where there is none
   */
  public double reach(double from, double to) {
    double reached = to;
    for (Piece piece : pieces) {
      if (to > from && piece.falling) {
        reached = Math.min(reached, forward(piece, from, to));
      } else if (to < from && !piece.falling) {
        reached = Math.max(reached, -forward(mirrored(piece), -from, -to));
      }
    }
    return reached;
  }

  private static Piece mirrored(Piece piece) {
    return new Piece(-piece.toDegrees, -piece.fromDegrees, true);
  }

  private static double forward(Piece piece, double from, double to) {
    double turns = Math.floor((from - piece.toDegrees) / CYCLE_DEGREES) + 1;
    double touch = Math.max(from, piece.fromDegrees + turns * CYCLE_DEGREES);
    return Math.min(to, touch);
  }
}
