package tightside.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import tightside.drive.Chain;
import tightside.survey.Adjustment;
import tightside.survey.CountedLinks;
import tightside.survey.SureCount;
import tightside.survey.Survey;

/**
 * Whether a measured drive is proved: counts of the engine agree with it on every strand that can
 * be seen. What is typed on the card Count proves as the model's own counts do.
 */
public final class Proof {

  private Proof() {}

  /** Whether a drive is measured and not proved. */
  public static boolean isOpen(Snapshot now) {
    return now.unadjusted().isPresent() || now.measured().filter(a -> !proved(now, a)).isPresent();
  }

  private static boolean proved(Snapshot now, Adjustment a) {
    List<SureCount> seen = a.counts().stream().filter(c -> c.strand().seen()).toList();
    return a.suspect().isEmpty()
        && !seen.isEmpty()
        && seen.stream().allMatch(c -> c.agrees() || agrees(now, c))
        && a.counts().stream().noneMatch(c -> differs(now, c));
  }

  /** The links from mark to mark that were typed for a strand. */
  public static OptionalLong typed(Snapshot now, SureCount count) {
    var strand = count.strand();
    Count typed = now.counts().get(new StrandId(strand.chain(), strand.from(), strand.to()));
    Optional<Chain> chain = now.drive().chain(strand.chain());
    return typed != null
            && chain.isPresent()
            && typed.links(chain.get()) instanceof Typed.Number number
        ? OptionalLong.of((long) number.value())
        : OptionalLong.empty();
  }

  /** Whether what was typed for a strand is what was measured. */
  public static boolean agrees(Snapshot now, SureCount count) {
    return count.determined() && typed(now, count).equals(OptionalLong.of(count.links()));
  }

  private static boolean differs(Snapshot now, SureCount count) {
    return typed(now, count).isPresent() && !agrees(now, count);
  }

  /** What was measured, and of what is typed on the card Count all that agrees with it. */
  public static Optional<Survey> withCounts(Snapshot now) {
    return now.survey()
        .map(survey -> survey.withCounted(counted(now, survey)))
        .filter(survey -> !survey.isEmpty());
  }

  private static List<CountedLinks> counted(Snapshot now, Survey survey) {
    List<CountedLinks> counted = new ArrayList<>(survey.counted());
    for (SureCount c : now.measured().map(Adjustment::counts).orElse(List.of())) {
      if (c.counted().isEmpty() && agrees(now, c)) {
        var strand = c.strand();
        counted.add(new CountedLinks(strand.chain(), strand.from(), strand.to(), c.links()));
      }
    }
    return counted;
  }
}
