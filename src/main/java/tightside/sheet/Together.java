package tightside.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import tightside.drive.Drive;
import tightside.drive.Seen;
import tightside.timing.CountJudge;
import tightside.timing.CountVerdict;
import tightside.timing.Lay;
import tightside.timing.Solver;
import tightside.words.Numbers;
import tightside.words.Sentences;

/** What the counts of one part say together, which each alone can't. */
public final class Together {

  private final Map<String, CountJudge> judges;
  private final Seen cover;

  private Together(Map<String, CountJudge> judges, Seen cover) {
    this.judges = judges;
    this.cover = cover;
  }

  public static Together of(Drive drive, Seen cover) {
    Solver solver = Solver.of(drive);
    Map<String, CountJudge> judges = new LinkedHashMap<>();
    drive.chains().forEach(c -> judges.put(c.name(), CountJudge.of(solver, c.name())));
    return new Together(judges, cover);
  }

  /**
   * A judgement for every chain of which a count was entered in this part.
   *
   * @param entries by the id of their step; those of other steps are left out
   */
  public List<Judgement> judge(Section section, Map<String, Entry> entries) {
    Map<String, Map<String, Long>> counted = new LinkedHashMap<>();
    for (Step step : section.steps()) {
      if (step.field() instanceof Field.Links links
          && entries.get(step.id()) instanceof Entry.Number number
          && Fields.countable(links, number.value())) {
        counted
            .computeIfAbsent(links.chain(), c -> new LinkedHashMap<>())
            .put(links.from(), (long) number.value());
      }
    }
    List<Judgement> judgements = new ArrayList<>();
    counted.forEach(
        (chain, links) -> judgements.add(judge(chain, judges.get(chain).judge(links, cover))));
    return judgements;
  }

  private static Judgement judge(String chain, CountVerdict verdict) {
    if (verdict instanceof CountVerdict.Fits fits) {
      return fits.unproved().together().isEmpty()
          ? Judgement.right(
              "Together the counts of chain %s prove every sprocket on its tooth.".formatted(chain))
          : Judgement.open("The counts of chain %s fit, but %s.".formatted(chain, open(fits)));
    }
    if (verdict instanceof CountVerdict.Misplaced misplaced) {
      return Judgement.wrong(
          "Together the counts of chain %s say: %s."
              .formatted(chain, lay(misplaced.simplest().get(0))));
    }
    if (verdict instanceof CountVerdict.SumWrong sum) {
      return Judgement.wrong(
          "The counts of chain %s add up to %s too %s for the chain: one of them is miscounted, so count again."
              .formatted(
                  chain,
                  Numbers.count(Math.abs(sum.tooMany()), "link"),
                  sum.tooMany() > 0 ? "many" : "few"));
    }
    return verdict instanceof CountVerdict.TooFar
        ? Judgement.wrong(
            "The counts of chain %s would put a sprocket further off than one is put back by mistake: count again."
                .formatted(chain))
        : Judgement.open("Nothing of chain %s is counted.".formatted(chain));
  }

  private static String open(CountVerdict.Fits fits) {
    return fits.unproved().together().stream()
        .map(
            group ->
                Sentences.list(group, "and")
                    + " could still sit off"
                    + (group.size() > 1 ? " together" : ""))
        .collect(Collectors.joining("; "));
  }

  private static String lay(Lay lay) {
    return Sentences.list(
        lay.moved().stream()
            .map(
                m ->
                    "%s sits %s %s"
                        .formatted(m.shaft(), teeth(m.teeth()), m.teeth() > 0 ? "ahead" : "behind"))
            .toList(),
        "and");
  }

  private static String teeth(int k) {
    return Math.abs(k) + (Math.abs(k) == 1 ? " tooth" : " teeth");
  }
}
