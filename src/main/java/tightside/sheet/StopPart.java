package tightside.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tightside.timing.SlackByExtension;
import tightside.words.Numbers;
import tightside.words.Sentences;

/** What to do when it goes wrong: one card each. */
final class StopPart {

  private StopPart() {}

  static Section of(Facts facts) {
    StepList steps = new StepList(Part.STOP);
    steps.lead("Read these before you begin. When one of them happens: hands off, then the card.");
    steps.add(
        "hold-back",
        "STOP: the hold-back slipped, the plunger is out.",
        new Field.Note(),
        slipped(facts));
    steps.add(
        "dropped",
        "STOP: the chain dropped or went slack below.",
        new Field.Note(),
        dropped(facts));
    steps.add("resistance", "STOP: resistance while turning.", new Field.Note(), resistance());
    return steps.section();
  }

  private static List<String> slipped(Facts facts) {
    List<String> lines = new ArrayList<>();
    lines.add(
        "Do not force the sprocket, and do not lever the chain or the arm: the slack is not there.");
    lines.add(
        "A ratchet may not let the plunger return: pushing on it breaks it. It goes back only by the maker's reset.");
    facts.chains().forEach(chain -> missing(facts, chain).ifPresent(lines::add));
    lines.add(
        "Keep both runs hanging tight and every shaft locked while you reset it; then count every run again, from the first.");
    lines.add(
        "Written down: the maker's reset, how far the plunger came out, what was off, what moved:");
    return lines;
  }

  private static Optional<String> missing(Facts facts, ChainFacts chain) {
    if (chain.chain().tensioner().isEmpty()) {
      return Optional.empty();
    }
    String name = chain.chain().tensioner().get().name();
    if (chain.hold().isEmpty()) {
      return Optional.of("How much slack is missing at %s: %s".formatted(name, Facts.NO_GEOMETRY));
    }
    double travel = chain.chain().tensioner().get().plunger().travelMm();
    double all =
        SlackByExtension.of(facts.drive(), chain.chain(), 0)
            .map(s -> s.loopMm(travel))
            .orElse(Double.NaN);
    String lost =
        "%s: all of the %s of slack that held back it has is gone once the plunger stands free"
            .formatted(name, Numbers.mm(Math.max(0, chain.hold().get().slackMm())));
    return Optional.of(
        all < 0
            ? lost
                + "; run out to its full %s, %s of chain is missing."
                    .formatted(Numbers.mm(travel), Numbers.mm(-all))
            : lost
                + "; with a sprocket off it can run out to its full %s."
                    .formatted(Numbers.mm(travel)));
  }

  private static List<String> dropped(Facts facts) {
    String crank = facts.crank();
    return List.of(
        "The lay on %s is unproved from here on: no paint above proves what happened below."
            .formatted(crank),
        "Do not pull the chain up and hope: it may hang one tooth over at %s, or beside a guide."
            .formatted(crank),
        "Only a count of the runs that meet at %s proves it (%s), with the cover off where they can't be seen."
            .formatted(crank, crankRuns(facts)),
        "If you can't count them, the front cover comes off. There is no third way.",
        "Written down: when it dropped, how far, what was locked:");
  }

  private static String crankRuns(Facts facts) {
    List<String> runs =
        facts.chains().stream()
            .filter(c -> c.driver().equals(facts.crank()))
            .flatMap(c -> c.strands().stream())
            .filter(s -> s.from().equals(facts.crank()) || s.to().equals(facts.crank()))
            .map(s -> "%s to %s %d links".formatted(s.from(), s.to(), s.links()))
            .toList();
    return runs.isEmpty() ? "what belongs there is not known here" : Sentences.list(runs, "and");
  }

  private static List<String> resistance() {
    return List.of(
        "Take your hand off the wrench. Do not push past it, do not turn back, do not use the starter.",
        "Look first: a locking tool still in, a cloth or hook in the chain, a plug still in, compression.",
        "If nothing of that: a valve may be on a piston. Mark the crankshaft where it stands.",
        "The engine goes back only by the maker's procedure. Then every count from the beginning, before another try.",
        "Written down: crank angle, what was felt, what was found:");
  }
}
