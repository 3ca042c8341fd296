package tightside.sheet;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import tightside.readings.LayTable;
import tightside.timing.CountJudge;
import tightside.timing.Strand;
import tightside.timing.Unproved;
import tightside.words.LayWords;
import tightside.words.Sentences;
import tightside.words.UnknownWords;

/** What no step of this sheet proves with the access at hand. */
final class UnprovedPart {

  private UnprovedPart() {}

  static Section of(Facts facts) {
    StepList steps = new StepList(Part.UNPROVED);
    steps.lead(
        "Even if every box above is ticked and every number right, this is not proved %s:"
            .formatted(facts.withCover()));
    for (ChainFacts chain : facts.chains()) {
      counts(facts, steps, chain);
      chain.table().ifPresent(table -> lays(steps, chain, table));
      if (chain.table().isEmpty()) {
        steps.know(
            "lays/" + chain.name(),
            "Which wrong teeth are possible on chain %s while it is held back is not known. "
                    .formatted(chain.name())
                + Facts.NO_GEOMETRY);
      }
    }
    int i = 0;
    for (String sentence :
        facts.solution().unknowns().stream().map(UnknownWords::of).distinct().toList()) {
      i++;
      steps.know("unknown-" + i, sentence);
    }
    facts
        .camshafts()
        .forEach(
            s ->
                steps.know(
                    "phaser/" + s,
                    "That the phaser of %s, if it has one, was at rest when it was fitted: no link shows it; the locking tool after two turns does."
                        .formatted(s)));
    steps.know("loads", "How the drive stands hot, under load and oil pressure.");
    return steps.section();
  }

  private static void lays(StepList steps, ChainFacts chain, LayTable table) {
    if (table.neverShown().isEmpty()) {
      steps.lead(
          "On chain %s the locking tools and the other checks of this sheet, all of them made, show every wrong lay of one or two sprockets."
              .formatted(chain.name()));
    } else {
      steps.know("lays/" + chain.name(), LayWords.never(table));
    }
  }

  private static void counts(Facts facts, StepList steps, ChainFacts chain) {
    if (chain.strands().isEmpty()) {
      return;
    }
    Map<String, Long> all = new LinkedHashMap<>();
    chain.countable(facts.cover()).forEach(s -> all.put(s.from(), s.links()));
    Unproved open =
        CountJudge.of(facts.solver(), chain.name()).judge(all, facts.cover()).unproved();
    if (open.uncounted().isEmpty()) {
      return;
    }
    String runs = runs(open.uncounted());
    steps.know(
        "counts/" + chain.name(),
        open.together().isEmpty()
            ? "Nobody counted the run %s; it follows from the others only if chain %s really has %d links."
                .formatted(runs, chain.name(), chain.chain().links())
            : "Nobody can count the run%s %s, so by counting alone %s; the locking tools have to show it."
                .formatted(open.uncounted().size() == 1 ? "" : "s", runs, together(open)));
  }

  private static String runs(List<Strand> uncounted) {
    return Sentences.list(
        uncounted.stream().map(s -> "from %s to %s".formatted(s.from(), s.to())).toList(), "and");
  }

  private static String together(Unproved open) {
    return Sentences.list(
        open.together().stream()
            .map(
                group ->
                    group.size() == 1
                        ? "the sprocket of %s could sit off".formatted(group.get(0))
                        : "the sprockets of %s could sit off together by the same teeth"
                            .formatted(Sentences.list(group, "and")))
            .toList(),
        "and");
  }
}
