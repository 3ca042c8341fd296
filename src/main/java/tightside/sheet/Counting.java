package tightside.sheet;

import java.util.List;
import tightside.timing.Strand;
import tightside.words.Sentences;

/** The steps that count links. */
final class Counting {

  private Counting() {}

  /** Every strand that can be counted. */
  static void add(Facts facts, StepList steps) {
    for (ChainFacts chain : facts.chains()) {
      if (chain.strands().isEmpty()) {
        steps.know(
            "count/" + chain.name(),
            "Chain %s can't be counted against the model: its counts are not known."
                .formatted(chain.name()));
      }
      for (Strand strand : chain.countable(facts.cover())) {
        steps.add(
            id(chain, strand), text(facts, chain, strand), field(chain, strand), notes(strand));
      }
      if (!chain.hidden(facts.cover()).isEmpty()) {
        steps.know("hidden/" + chain.name(), hidden(facts, chain));
      }
    }
  }

  static String id(ChainFacts chain, Strand strand) {
    return "count/%s/%s/%s".formatted(chain.name(), strand.from(), strand.to());
  }

  private static String text(Facts facts, ChainFacts chain, Strand strand) {
    return "Count the links from the %s mark to the %s mark%s%s."
        .formatted(
            strand.from(),
            strand.to(),
            of(facts, chain),
            strand.taut() ? "" : ", the slack side: press the chain tight against its faces");
  }

  /** The name of a chain, where there is more than one. */
  static String of(Facts facts, ChainFacts chain) {
    return facts.chains().size() == 1 ? "" : " on chain " + chain.name();
  }

  private static Field field(ChainFacts chain, Strand strand) {
    return new Field.Links(
        chain.name(), strand.from(), strand.to(), strand.links(), chain.chain().links());
  }

  private static List<String> notes(Strand strand) {
    return strand.trusted() ? List.of() : List.of(Sentences.notTrusted(strand));
  }

  private static String hidden(Facts facts, ChainFacts chain) {
    List<String> runs =
        chain.hidden(facts.cover()).stream()
            .map(s -> "from %s to %s".formatted(s.from(), s.to()))
            .toList();
    return "Not to be counted %s%s: the run%s %s. Do not guess; it stays unproved."
        .formatted(
            facts.withCover(),
            of(facts, chain),
            runs.size() == 1 ? "" : "s",
            Sentences.list(runs, "and"));
  }
}
