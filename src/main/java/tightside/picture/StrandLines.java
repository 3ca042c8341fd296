package tightside.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tightside.drive.TautPath;
import tightside.geometry.Curve;
import tightside.geometry.StringPiece;
import tightside.timing.Strand;

/** The pitch line of each strand, from where it leaves one marked sprocket to the next. */
final class StrandLines {

  private StrandLines() {}

  static void draw(Draft draft, ChainView view) {
    for (Strand strand : view.solved().strands()) {
      Ink ink = Pull.of(view.solved(), view.solution().state(), strand).line();
      List<Curve> line =
          hanging(view, strand).orElseGet(() -> curves(between(view.path().orElseThrow(), strand)));
      if (!line.isEmpty()) {
        draft.open(view.tag(ink, strand.fromPlace()), line);
      }
    }
  }

  private static Optional<List<Curve>> hanging(ChainView view, Strand strand) {
    return strand.taut() ? Optional.empty() : view.lay().flatMap(lay -> lay.sag().map(Sag::line));
  }

  /** The legs of a strand that lie on neither of its two sprockets. */
  static List<TautPath.Leg> between(TautPath path, Strand strand) {
    List<TautPath.Leg> legs = path.legs();
    int leg = 0;
    while (legs.get(leg).place() != strand.fromPlace()) {
      leg++;
    }
    List<TautPath.Leg> between = new ArrayList<>();
    for (int i = 1; i < legs.size(); i++) {
      TautPath.Leg next = legs.get((leg + i) % legs.size());
      if (next.place() == strand.toPlace()) {
        break;
      }
      between.add(next);
    }
    return between;
  }

  static List<Curve> curves(List<TautPath.Leg> legs) {
    List<Curve> curves = new ArrayList<>();
    for (TautPath.Leg leg : legs) {
      if (leg.piece() instanceof StringPiece.Turn turn) {
        if (turn.degrees() > 0) {
          curves.add(Curve.Arc.of(turn));
        }
      } else if (leg.piece().lengthMm() > 0) {
        curves.add(new Curve.Line(leg.piece().start(), leg.piece().end()));
      }
    }
    return curves;
  }
}
