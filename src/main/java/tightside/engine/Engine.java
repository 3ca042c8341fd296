package tightside.engine;

import java.util.List;
import java.util.OptionalDouble;
import tightside.drive.Limits;

/**
 * An engine by one of its cylinders, with crank gear and valves; the other cylinders are like it.
 *
 * @param strokeMm twice the crank's throw
 * @param rodMm between the connecting rod's eyes; longer than half the stroke
 * @param compressionRatio nominal, over the whole stroke
 * @param valves of one cylinder, one or more
 * @param phasesDegrees crank degrees by which top dead centre at gas exchange of each cylinder
 *     follows that of the first; the first is 0
 * @param atReferenceDegrees crank degrees past the first cylinder's top dead centre at gas exchange
 *     at which the crankshaft stands at the reference position, if anybody said
 */
public record Engine(
    double boreMm,
    double strokeMm,
    double rodMm,
    double compressionRatio,
    List<Valve> valves,
    List<Double> phasesDegrees,
    OptionalDouble atReferenceDegrees) {

  /** One cylinder alone. */
  public static final List<Double> ONE_CYLINDER = List.of(0.0);

  public Engine {
    Limits.BORE_MM.refuseOutside("bore", boreMm);
    Limits.STROKE_MM.refuseOutside("stroke", strokeMm);
    Limits.ROD_MM.refuseOutside("rod", rodMm);
    Limits.COMPRESSION_RATIO.refuseOutside("compression-ratio", compressionRatio);
    valves = List.copyOf(valves);
    phasesDegrees = List.copyOf(phasesDegrees);
    if (!rodPassesCrank(rodMm, strokeMm)) {
      throw new IllegalArgumentException("a rod must be longer than half the stroke");
    }
    if (valves.isEmpty()) {
      throw new IllegalArgumentException("an engine needs a valve");
    }
    Limits.CYLINDERS.refuseOutside("phases", phasesDegrees.size());
    phasesDegrees.forEach(phase -> Limits.CRANK_DEGREES.refuseOutside("phases", phase));
    if (phasesDegrees.get(0) != 0) {
      throw new IllegalArgumentException("the first cylinder follows itself by 0 degrees");
    }
    atReferenceDegrees.ifPresent(at -> Limits.CRANK_DEGREES.refuseOutside("at-reference", at));
  }

  /** One cylinder, with nothing said about where it stands at the reference position. */
  public Engine(
      double boreMm, double strokeMm, double rodMm, double compressionRatio, List<Valve> valves) {
    this(boreMm, strokeMm, rodMm, compressionRatio, valves, ONE_CYLINDER, OptionalDouble.empty());
  }

  /** Whether the crank can turn all the way round: the rod is longer than half the stroke. */
  public static boolean rodPassesCrank(double rodMm, double strokeMm) {
    return rodMm > strokeMm / 2;
  }

  public CrankGear crankGear() {
    return new CrankGear(strokeMm, rodMm);
  }

  public List<Valve> valvesOn(String shaft) {
    return valves.stream().filter(v -> v.shaft().equals(shaft)).toList();
  }

  /** The camshafts that open valves, in the order in which they are named first. */
  public List<String> camshafts() {
    return valves.stream().map(Valve::shaft).distinct().toList();
  }

  /** The same engine with a camshaft called otherwise. */
  public Engine renamed(String before, String after) {
    List<Valve> others =
        valves.stream().map(v -> v.shaft().equals(before) ? v.on(after) : v).toList();
    return new Engine(
        boreMm, strokeMm, rodMm, compressionRatio, others, phasesDegrees, atReferenceDegrees);
  }
}
