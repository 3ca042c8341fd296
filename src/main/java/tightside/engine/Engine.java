package tightside.engine;

import java.util.List;
import tightside.drive.Limits;

/**
 * One cylinder with its crank gear and valves.
 *
 * @param strokeMm twice the crank's throw
 * @param rodMm between the connecting rod's eyes; longer than half the stroke
 * @param compressionRatio nominal, over the whole stroke
 * @param valves one or more
 */
public record Engine(
    double boreMm, double strokeMm, double rodMm, double compressionRatio, List<Valve> valves) {

  public Engine {
    Limits.BORE_MM.refuseOutside("bore", boreMm);
    Limits.STROKE_MM.refuseOutside("stroke", strokeMm);
    Limits.ROD_MM.refuseOutside("rod", rodMm);
    Limits.COMPRESSION_RATIO.refuseOutside("compression-ratio", compressionRatio);
    valves = List.copyOf(valves);
    if (!rodPassesCrank(rodMm, strokeMm)) {
      throw new IllegalArgumentException("a rod must be longer than half the stroke");
    }
    if (valves.isEmpty()) {
      throw new IllegalArgumentException("an engine needs a valve");
    }
  }

  /** Whether the crank can turn all the way round: the rod is longer than half the stroke. */
  public static boolean rodPassesCrank(double rodMm, double strokeMm) {
    return rodMm > strokeMm / 2;
  }
}
