package tightside.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import tightside.drive.Joint;
import tightside.drive.Sprocket;
import tightside.readings.LayRow;
import tightside.timing.CountJudge;
import tightside.timing.Strand;
import tightside.timing.Unproved;
import tightside.words.LayWords;
import tightside.words.Sentences;

/** Three ways in which the work on a drive goes wrong, the worst first. */
final class WaysWrong {

  private static final int WAYS = 3;

  private WaysWrong() {}

  static List<String> of(Facts facts) {
    List<String> ways = new ArrayList<>();
    facts.camshaftChains().forEach(c -> friction(c, ways));
    facts.chains().forEach(c -> together(facts, c, ways));
    facts.camshaftChains().forEach(c -> lay(c, ways));
    List<String> cams = facts.camshafts();
    if (!cams.isEmpty()) {
      ways.add(
          Math.min(ways.size(), WAYS - 1),
          "A phaser on %s is not at rest when it goes on: every link is right and the camshaft stands off. Only the locking tool after two turns shows it."
              .formatted(Sentences.list(cams, "or")));
    }
    ways.add(
        "The plain links between two marks are taken for the links: one too few everywhere. From mark to mark there is always one more.");
    ways.add(
        "The engine is turned back to meet a mark: the pulled side moves and no mark holds. Past it, two more turns forward.");
    return ways.subList(0, WAYS);
  }

  private static void friction(ChainFacts chain, List<String> ways) {
    List<String> clamped =
        chain.camshafts().stream()
            .filter(
                s ->
                    chain.chain().sprocketOn(s).map(Sprocket::joint).orElseThrow()
                        == Joint.FRICTION)
            .toList();
    if (!clamped.isEmpty()) {
      ways.add(
          "Slack is left in the tight run while the bolt of %s is tightened: it is held by clamp alone, so the camshaft stands off with every link right."
              .formatted(Sentences.list(clamped, "or")));
    }
  }

  /** Sprockets that no count tells apart from the right place. */
  private static void together(Facts facts, ChainFacts chain, List<String> ways) {
    if (chain.strands().isEmpty()) {
      return;
    }
    Map<String, Long> all = new LinkedHashMap<>();
    chain.countable(facts.cover()).forEach(s -> all.put(s.from(), s.links()));
    Unproved open =
        CountJudge.of(facts.solver(), chain.name()).judge(all, facts.cover()).unproved();
    if (!open.together().isEmpty() && !open.uncounted().isEmpty()) {
      ways.add(
          "The chain moves a tooth at %s while it hangs slack: %s can't be counted %s, so every count you can make still fits."
              .formatted(
                  chain.driver(),
                  Sentences.list(open.uncounted().stream().map(WaysWrong::run).toList(), "and"),
                  facts.withCover()));
    }
  }

  private static String run(Strand strand) {
    return strand.from() + " to " + strand.to();
  }

  private static void lay(ChainFacts chain, List<String> ways) {
    if (chain.table().isEmpty() || chain.table().get().rows().isEmpty()) {
      return;
    }
    LayRow worst = chain.table().get().rows().get(0);
    ways.add(
        "%s: %s. Then %s. Soonest shown: %s."
            .formatted(
                LayWords.name(chain.table().get().hold(), worst),
                LayWords.reason(worst),
                LayWords.consequence(worst),
                LayWords.soonest(worst)));
  }
}
