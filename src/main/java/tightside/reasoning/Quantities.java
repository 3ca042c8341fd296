package tightside.reasoning;

import java.util.ArrayList;
import java.util.List;
import tightside.drive.Chain;
import tightside.drive.Drive;
import tightside.timing.ChainSolution;
import tightside.timing.Solution;
import tightside.timing.Strand;

/**
 * Where each quantity of a drive stands in a list of numbers: what readings depend on, and what
 * explanations change.
 */
final class Quantities {

  private final List<String> shafts;
  private final List<String> chains;
  private final List<String> strands;

  private Quantities(List<String> shafts, List<String> chains, List<String> strands) {
    this.shafts = List.copyOf(shafts);
    this.chains = List.copyOf(chains);
    this.strands = List.copyOf(strands);
  }

  static Quantities of(Solution right) {
    Drive drive = right.drive();
    String crank = drive.crankshaft().name();
    List<String> strands = new ArrayList<>();
    for (ChainSolution chain : right.chains()) {
      chain.strands().forEach(s -> strands.add(strandKey(chain.chain().name(), s.from(), s.to())));
    }
    return new Quantities(
        right.shafts().stream().map(s -> s.shaft()).filter(s -> !s.equals(crank)).toList(),
        drive.chains().stream().map(Chain::name).toList(),
        strands);
  }

  private static String strandKey(String chain, String from, String to) {
    return chain + "/" + from + ".." + to;
  }

  List<String> shafts() {
    return shafts;
  }

  int size() {
    return 3 * shafts.size() + 2 * chains.size() + strands.size();
  }

  boolean times(String shaft) {
    return shafts.contains(shaft);
  }

  boolean hasStrand(String chain, String from, String to) {
    return strands.contains(strandKey(chain, from, to));
  }

  /** How far a shaft stands off for good, crank degrees. */
  int turned(String shaft) {
    return shaftPlace(shaft);
  }

  /** How far its phaser is driven off its rest, crank degrees. */
  int driven(String shaft) {
    return shafts.size() + shaftPlace(shaft);
  }

  /** How far its sensor reads wrong, crank degrees. */
  int wheel(String shaft) {
    return 2 * shafts.size() + shaftPlace(shaft);
  }

  /** How far a chain's plunger stands out, mm. */
  int plunger(String chain) {
    return 3 * shafts.size() + chainPlace(chain);
  }

  /** A chain's stretch, percent. */
  int stretch(String chain) {
    return 3 * shafts.size() + chains.size() + chainPlace(chain);
  }

  /** Links from mark to mark. */
  int links(String chain, String from, String to) {
    int place = strands.indexOf(strandKey(chain, from, to));
    if (place < 0) {
      throw new IllegalArgumentException("no run leads from " + from + " to " + to);
    }
    return 3 * shafts.size() + 2 * chains.size() + place;
  }

  private int shaftPlace(String shaft) {
    int place = shafts.indexOf(shaft);
    if (place < 0) {
      throw new IllegalArgumentException("nothing is said about the timing of " + shaft);
    }
    return place;
  }

  private int chainPlace(String chain) {
    int place = chains.indexOf(chain);
    if (place < 0) {
      throw new IllegalArgumentException("the drive has no chain " + chain);
    }
    return place;
  }

  /** All quantities of a solution. */
  double[] valuesOf(Solution solution) {
    double[] values = new double[size()];
    for (String shaft : shafts) {
      values[turned(shaft)] = solution.shaft(shaft).map(s -> s.crankDegrees()).orElse(Double.NaN);
    }
    for (ChainSolution chain : solution.chains()) {
      String name = chain.chain().name();
      values[plunger(name)] = chain.tensioner().map(t -> t.extensionMm()).orElse(0.0);
      values[stretch(name)] = solution.state().stretchOf(name);
      for (Strand strand : chain.strands()) {
        values[links(name, strand.from(), strand.to())] = strand.links();
      }
    }
    return values;
  }
}
