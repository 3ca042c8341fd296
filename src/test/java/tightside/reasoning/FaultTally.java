package tightside.reasoning;

import java.util.ArrayList;
import java.util.List;

/** What came of one trial after another. */
public final class FaultTally {
  final int[] answered = new int[FaultStudy.BINS];
  final int[] right = new int[FaultStudy.BINS];
  int trials;
  int first;
  double ranks;
  double logScore;
  int clear;
  int clearFirst;
  int clearAlone;
  int amounts;
  int covered;
  private final List<String> misses = new ArrayList<>();

  public void add(FaultTally other) {
    for (int i = 0; i < FaultStudy.BINS; i++) {
      answered[i] += other.answered[i];
      right[i] += other.right[i];
    }
    trials += other.trials;
    first += other.first;
    ranks += other.ranks;
    logScore += other.logScore;
    clear += other.clear;
    clearFirst += other.clearFirst;
    clearAlone += other.clearAlone;
    amounts += other.amounts;
    covered += other.covered;
    misses.addAll(other.misses);
  }

  void missed(String inWords) {
    misses.add(inWords);
  }

  /** Every clear fault that was not ranked first, in words. */
  public List<String> misses() {
    return List.copyOf(misses);
  }

  private static String share(int of, int all) {
    return all == 0 ? "  -  " : "%5.1f".formatted(100.0 * of / all);
  }

  double clearFirst() {
    return 100.0 * clearFirst / Math.max(1, clear);
  }

  double covered() {
    return 100.0 * covered / Math.max(1, amounts);
  }

  public String line() {
    StringBuilder line = new StringBuilder();
    line.append(
        "%6d  %s  %5.2f  %6.2f  %s (%s) of %5d  %s of %5d "
            .formatted(
                trials,
                share(first, trials),
                ranks / trials,
                logScore / trials,
                share(clearFirst, clear),
                share(clearAlone, clear),
                clear,
                share(covered, amounts),
                amounts));
    for (int i = 4; i < FaultStudy.BINS; i++) {
      line.append("  %s (%d)".formatted(share(right[i], answered[i]), answered[i]));
    }
    return line.toString();
  }

  public static String head() {
    return "trials  first  rank   log p   clear first (alone)      covered of 90   right when answered at"
        + " 40-50, 50-60, ... 90-100 % (so often)";
  }
}
