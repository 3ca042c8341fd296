package tightside.timing;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import tightside.drive.Seen;

/**
 * Judges the links that a person counted against those that belong there. Links only: nothing here
 * depends on a length.
 */
public final class CountJudge {

  private static final Comparator<Recount> LIKELIEST_MISTAKE =
      Comparator.<Recount>comparingInt(r -> tooFar(r.otherwise()) ? 1 : 0)
          .thenComparingInt(r -> r.otherwise().moved().size())
          .thenComparingInt(r -> r.otherwise().mostTeeth())
          .thenComparing(r -> r.strand().taut())
          .thenComparing(r -> -r.strand().links());

  private final LoopLays lays;

  private CountJudge(LoopLays lays) {
    this.lays = lays;
  }

  /**
   * The judge of one chain. It has no strands to judge where the new chain does not fit.
   *
   * @throws IllegalArgumentException if the drive has no such chain
   */
  public static CountJudge of(Solver solver, String chain) {
    ChainSolution right =
        solver
            .solve(State.reference())
            .chain(chain)
            .orElseThrow(() -> new IllegalArgumentException("the drive has no chain " + chain));
    return new CountJudge(new LoopLays(solver, right.chain(), right.strands()));
  }

  /** The strands with the links that belong there, in the direction of travel. */
  public List<Strand> strands() {
    return lays.strands();
  }

  /** Whether a person can count a strand with the cover as it is. */
  public static boolean countable(Strand strand, Seen cover) {
    return strand.seen() != Seen.NEVER && strand.seen().compareTo(cover) <= 0;
  }

  /**
   * The verdict.
   *
   * @param linksByFrom links counted from mark to mark, by the shaft that the strand leaves; a
   *     count of a strand that can't be seen is left out
   * @param cover what can be seen: {@link Seen#COVER_ON}, {@link Seen#COVER_OFF} or {@link
   *     Seen#BORESCOPE}, each with all before it
   * @throws IllegalArgumentException if no strand leaves such a shaft, or a count is below 1 or
   *     more than the chain has
   */
  public CountVerdict judge(Map<String, Long> linksByFrom, Seen cover) {
    linksByFrom.forEach(this::refuseNonsense);
    Map<Integer, Long> counted = new LinkedHashMap<>();
    for (int i = 0; i < strands().size(); i++) {
      Long links = linksByFrom.get(lays.shaft(i));
      if (links != null && countable(strands().get(i), cover)) {
        counted.put(i, links);
      }
    }
    boolean allCounted = !counted.isEmpty() && counted.size() == strands().size();
    long tooMany = allCounted ? CountedLoop.sum(counted) - lays.chain().links() : 0;
    return tooMany == 0
        ? judge(counted)
        : new CountVerdict.SumWrong(tooMany, again(counted), unproved(Map.of()));
  }

  private void refuseNonsense(String from, long links) {
    if (strands().stream().noneMatch(s -> s.from().equals(from))) {
      throw new IllegalArgumentException("no strand of " + lays.chain().name() + " leaves " + from);
    }
    if (links < 1 || links > lays.chain().links()) {
      throw new IllegalArgumentException(
          "a strand has 1 to " + lays.chain().links() + " links, not " + links);
    }
  }

  /** The verdict on counts that can all be right together. */
  private CountVerdict judge(Map<Integer, Long> counted) {
    if (counted.isEmpty()) {
      return new CountVerdict.NothingCounted(unproved(counted));
    }
    List<Lay> simplest = lays.simplest(counted);
    if (simplest.get(0).moved().isEmpty()) {
      return new CountVerdict.Fits(unproved(counted));
    }
    return tooFar(simplest.get(0))
        ? new CountVerdict.TooFar(simplest, again(counted), unproved(counted))
        : new CountVerdict.Misplaced(simplest, unproved(counted));
  }

  private static boolean tooFar(Lay lay) {
    return lay.mostTeeth() > Lay.MOST_TEETH;
  }

  private Unproved unproved(Map<Integer, Long> counted) {
    return new Openness(lays).after(counted, lays.simplest(counted).get(0));
  }

  /**
   * Each counted strand as if it alone were wrong, the simplest rest first; among equals the slack
   * side, where a count goes wrong most easily, then the longest.
   */
  private List<Recount> again(Map<Integer, Long> counted) {
    return counted.keySet().stream()
        .map(i -> again(i, counted))
        .filter(r -> r.wouldBe() >= 1 && r.wouldBe() != r.counted())
        .sorted(LIKELIEST_MISTAKE)
        .toList();
  }

  private Recount again(int strand, Map<Integer, Long> counted) {
    Map<Integer, Long> others = new LinkedHashMap<>(counted);
    others.remove(strand);
    Lay otherwise = lays.simplest(others).get(0);
    Strand right = strands().get(strand);
    long wouldBe = right.links() + otherwise.teethOf(right.to()) - otherwise.teethOf(right.from());
    return new Recount(right, counted.get(strand), wouldBe, otherwise);
  }
}
