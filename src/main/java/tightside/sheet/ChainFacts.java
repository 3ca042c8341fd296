package tightside.sheet;

import java.util.List;
import java.util.Optional;
import tightside.drive.Chain;
import tightside.drive.Seen;
import tightside.readings.LayTable;
import tightside.timing.ChainSolution;
import tightside.timing.CountJudge;
import tightside.timing.HoldBack;
import tightside.timing.Strand;

/**
 * What a sheet says of one chain.
 *
 * @param solution at the reference position, new
 * @param hold held back and locked; nothing where that takes measures that the model has not
 * @param table of wrong lays; nothing where there is no hold-back
 * @param driven marked shafts but the driving one, in the direction of travel
 * @param camshafts those of them that are camshafts
 */
record ChainFacts(
    ChainSolution solution,
    Optional<HoldBack> hold,
    Optional<LayTable> table,
    List<String> driven,
    List<String> camshafts) {

  Chain chain() {
    return solution.chain();
  }

  String name() {
    return chain().name();
  }

  String driver() {
    return chain().driver().shaft();
  }

  List<Strand> strands() {
    return solution.strands();
  }

  /** Every marked shaft of the chain. */
  List<String> marked() {
    return strands().stream().map(Strand::from).distinct().toList();
  }

  List<Strand> countable(Seen cover) {
    return strands().stream().filter(s -> CountJudge.countable(s, cover)).toList();
  }

  List<Strand> hidden(Seen cover) {
    return strands().stream().filter(s -> !CountJudge.countable(s, cover)).toList();
  }

  /** Whether the mark on a shaft's sprocket can be seen. */
  boolean markSeen(String shaft, Seen cover) {
    return chain().sprocketOn(shaft).filter(s -> sees(cover, s.seen())).isPresent();
  }

  boolean plungerSeen(Seen cover) {
    return chain().tensioner().filter(t -> sees(cover, t.seen())).isPresent();
  }

  static boolean sees(Seen cover, Seen needs) {
    return needs != Seen.NEVER && needs.compareTo(cover) <= 0;
  }
}
