package tightside.timing;

import java.util.ArrayList;
import java.util.List;
import tightside.drive.TautPath;
import tightside.geometry.StringPiece;

/** The pieces of a path between the sprockets at the two ends of a strand. */
final class StrandLegs {

  private StrandLegs() {}

  /** Which legs of the path lie between the two wraps, both left out. */
  static List<Integer> between(TautPath path, Strand strand) {
    List<TautPath.Leg> legs = path.legs();
    List<Integer> between = new ArrayList<>();
    int leg = (legOf(path, strand.fromPlace()) + 1) % legs.size();
    while (legs.get(leg).place() != strand.toPlace()) {
      between.add(leg);
      leg = (leg + 1) % legs.size();
    }
    return between;
  }

  private static int legOf(TautPath path, int place) {
    int leg = 0;
    while (path.legs().get(leg).place() != place) {
      leg++;
    }
    return leg;
  }

  /** The longest straight run of a strand, where a thumb finds most to press, mm. */
  static double longestRunMm(TautPath path, Strand strand) {
    return between(path, strand).stream()
        .map(leg -> path.legs().get(leg).piece())
        .filter(StringPiece.Straight.class::isInstance)
        .mapToDouble(StringPiece::lengthMm)
        .max()
        .orElse(0);
  }
}
