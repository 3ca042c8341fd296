package tightside.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import tightside.drive.TautPath;
import tightside.geometry.Bearing;
import tightside.geometry.Rotation;
import tightside.geometry.StringPiece;
import tightside.timing.Strand;

/** The counts beside each strand. */
final class StrandLabels {

  private static final double[] ALONG = {0.5, 0.42, 0.58, 0.34, 0.66, 0.26, 0.74, 0.18, 0.82};

  private StrandLabels() {}

  static List<Label> of(ChainView view, PictureOptions options, double em) {
    List<Label> labels = new ArrayList<>();
    for (Strand strand : view.solved().strands()) {
      labels.add(
          new Label(
              view.words(strand.trusted() ? Ink.COUNT : Ink.WARNING, strand.fromPlace()),
              view.words(Ink.LABEL, strand.fromPlace()),
              PictureWords.strand(view.solution(), view.solved(), strand, options),
              spots(view, strand, em)));
    }
    return labels;
  }

  /** Beside the strand, inside the loop first, in the middle first. */
  private static List<Label.Spot> spots(ChainView view, Strand strand, double em) {
    Optional<ChainLay> hanging = view.lay().filter(l -> !strand.taut() && l.sag().isPresent());
    List<TautPath.Leg> legs = StrandLines.between(view.path().orElseThrow(), strand);
    Rotation travel = view.solved().travel();
    double start = 0.6 * view.plateMm();
    List<Label.Spot> spots = new ArrayList<>();
    for (Rotation side : List.of(travel, travel.opposite())) {
      for (double gap : new double[] {1.3 * em, 2.4 * em, 4 * em}) {
        for (double along : ALONG) {
          spots.add(
              hanging
                  .map(lay -> hanging(lay, along, side, start, start + gap))
                  .orElseGet(() -> spot(legs, along, side, start, start + gap)));
        }
      }
    }
    return spots;
  }

  private static Label.Spot hanging(
      ChainLay lay, double along, Rotation side, double start, double gap) {
    Sag sag = lay.sag().orElseThrow();
    Vector2D away = sag.headingAt(along).plus(90, side).direction();
    return new Label.Spot(sag.along(along), away, start, gap);
  }

  private static Label.Spot spot(
      List<TautPath.Leg> legs, double along, Rotation side, double start, double gap) {
    double total = legs.stream().mapToDouble(leg -> leg.piece().lengthMm()).sum();
    double rest = along * total;
    for (TautPath.Leg leg : legs) {
      double length = leg.piece().lengthMm();
      if (rest <= length) {
        return spot(leg.piece(), length == 0 ? 0 : rest / length, side, start, gap);
      }
      rest -= length;
    }
    return spot(legs.get(legs.size() - 1).piece(), 1, side, start, gap);
  }

  private static Label.Spot spot(
      StringPiece piece, double share, Rotation side, double start, double gap) {
    if (piece instanceof StringPiece.Turn turn) {
      Bearing heading = turn.in().plus(share * turn.degrees(), turn.circle().sense());
      Vector2D at = turn.circle().touchAt(heading);
      return new Label.Spot(at, heading.plus(90, side).direction(), start, gap);
    }
    Bearing heading = ((StringPiece.Straight) piece).tangent().heading();
    return new Label.Spot(
        piece.start().lerp(piece.end(), share), heading.plus(90, side).direction(), start, gap);
  }
}
