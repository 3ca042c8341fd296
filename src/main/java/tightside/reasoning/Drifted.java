package tightside.reasoning;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import tightside.drive.Chain;
import tightside.drive.Drive;
import tightside.drive.Gearing;
import tightside.timing.ChainSolution;
import tightside.timing.Solution;
import tightside.timing.Strand;

/**
 * Where the shafts come to stand when what guides the chain has moved under it.
 *
 * <p>Taut strands keep the pitches that they have in the drive that is right. With P the pitches
 * from mark to mark there and P' in the changed drive, its marks as drawn, a driven sprocket has to
 * turn ahead by P - P' more than the one before it; timing runs from the driving sprocket both ways
 * up to the slack side (model format 1, timing).
 */
final class Drifted {

  private Drifted() {}

  /** Crank degrees by shaft, those of the chain and those that hang on it. */
  static Map<String, Double> crankDegrees(Solution right, Solution changed, String chainName) {
    ChainSolution before = right.chain(chainName).orElseThrow();
    ChainSolution after = changed.chain(chainName).orElseThrow();
    Chain chain = before.chain();
    Gearing gearing = right.drive().gearing();
    Map<String, Double> pitches = new HashMap<>();
    pitches.put(chain.driver().shaft(), 0.0);
    for (int round = 0; round < before.strands().size(); round++) {
      for (int i = 0; i < before.strands().size(); i++) {
        step(before.strands().get(i), after.strands().get(i), pitches);
      }
    }
    Map<String, Double> degrees = new HashMap<>();
    pitches.forEach((shaft, ahead) -> degrees.put(shaft, degrees(chain, gearing, shaft, ahead)));
    handOn(right.drive(), gearing.order(), degrees);
    return degrees;
  }

  private static void step(Strand before, Strand after, Map<String, Double> pitches) {
    if (!before.taut()) {
      return;
    }
    double grown = before.pitches() - after.pitches();
    Double from = pitches.get(before.from());
    Double to = pitches.get(before.to());
    if (from != null && to == null) {
      pitches.put(before.to(), from + grown);
    } else if (from == null && to != null) {
      pitches.put(before.from(), to - grown);
    }
  }

  private static double degrees(Chain chain, Gearing gearing, String shaft, double pitches) {
    int teeth = chain.sprocketOn(shaft).orElseThrow().teeth();
    return pitches * 360 / teeth / gearing.perCrankTurn(shaft).doubleValue();
  }

  /** In crank degrees, what a driving shaft is off, all that it drives is off as well. */
  private static void handOn(Drive drive, List<Chain> order, Map<String, Double> degrees) {
    for (Chain chain : order) {
      Double driving = degrees.get(chain.driver().shaft());
      if (driving == null || chain.driver().shaft().equals(drive.crankshaft().name())) {
        continue;
      }
      chain.sprockets().forEach(s -> degrees.putIfAbsent(s.shaft(), driving));
    }
  }
}
