package tightside.sheet;

import java.util.ArrayList;
import java.util.List;
import tightside.words.Numbers;
import tightside.words.Sentences;
import tightside.words.SlackWords;

/** What comes before anything is taken apart. */
final class BeforePart {

  private BeforePart() {}

  static Section cautions() {
    return new StepList(Part.CAUTIONS)
        .know(
            "who",
            "The maker's procedure and a qualified hand decide. This sheet is for practice and cross-checking; where the two differ, the maker is right.")
        .know(
            "cranking",
            "Ignition and injection off, battery disconnected, so that nobody can crank the engine. Turn it by hand only, by the crankshaft bolt, plugs out.")
        .know("fingers", SlackWords.caution())
        .know(
            "eyes",
            "Eye protection on: plungers, clips and locking pins are spring-loaded. Let a hot engine cool.")
        .note("engine", "Engine and number, date, who does the work:")
        .maker("procedure", "The maker's procedure that is followed:", "title and edition", "")
        .section();
  }

  static Section before(Facts facts) {
    StepList steps = new StepList(Part.BEFORE);
    steps.lead(
        "Paint copies whatever is there, right or wrong. If the drive is not right now, stop: put it right by the maker's procedure first.");
    steps.tick(
        "reference",
        "Turn the engine by hand, forward only, to the reference position; if you pass it, go two more turns, never back.");
    for (ChainFacts chain : facts.chains()) {
      for (String shaft : chain.marked()) {
        if (chain.markSeen(shaft, facts.cover())) {
          mark(facts, steps, chain, shaft);
        }
      }
    }
    Counting.add(facts, steps);
    facts.chains().stream()
        .filter(c -> c.chain().tensioner().isPresent())
        .forEach(c -> plunger(facts, steps, c));
    facts.chains().stream()
        .filter(c -> c.chain().countedOnly())
        .forEach(
            c ->
                steps.note(
                    "plunger/" + c.name(),
                    "Is the chain worth keeping? How far the plunger of chain %s stands out, mm:"
                        .formatted(c.name()),
                    "What that means is not known here: it takes the shafts' places and the faces. The maker's limit decides."));
    steps.yesNo(
        "looks",
        "Are chain, guides and tensioner sound: no grooves, cracks, loose pieces, rattle or metal in the oil?",
        "Nothing against going on.",
        "Do not fit new phasers to a drive that is worn out: judge it by the maker's limits first.");
    steps.note("found", "What was found:");
    return steps.section();
  }

  private static void mark(Facts facts, StepList steps, ChainFacts chain, String shaft) {
    steps.yesNo(
        "mark/" + chain.name() + "/" + shaft,
        "Does the mark of %s%s stand where the maker's picture has it?"
            .formatted(shaft, Counting.of(facts, chain)),
        "It stands right.",
        "It is off now. Turn two more turns forward and look again; if it stays off, the drive is wrong before you begin: do not copy it.");
  }

  private static void plunger(Facts facts, StepList steps, ChainFacts chain) {
    String name = chain.chain().tensioner().orElseThrow().name();
    String id = "plunger/" + chain.name();
    if (!chain.plungerSeen(facts.cover())) {
      steps.know(
          id,
          "The plunger of %s can't be seen %s: whether the chain is worth keeping is not known until it can."
              .formatted(name, facts.withCover()));
      return;
    }
    PlungerTable table = PlungerTable.of(facts, chain);
    List<String> notes =
        new ArrayList<>(
            List.of(
                "Read it as an interval about %s either way: ratchet step, backlash, leak-down and oil pressure move it."
                    .formatted(Numbers.mm(table.bandMm())),
                "It sees chain, faces, sprockets and centre distance together, and can't tell them apart."));
    table.furtherOut().ifPresent(notes::add);
    steps.add(
        id,
        "Is the chain worth keeping? Measure how far the plunger of %s stands out.".formatted(name),
        table.standing(),
        notes);
  }

  static Section paint(Facts facts) {
    StepList steps = new StepList(Part.PAINT);
    facts.chains().stream()
        .map(c -> Sentences.realign(c.solution()))
        .distinct()
        .limit(1)
        .forEach(steps::lead);
    steps.lead("Clean the spots with brake cleaner first; use paint that oil does not lift.");
    for (ChainFacts chain : facts.chains()) {
      for (String shaft : chain.marked()) {
        if (chain.markSeen(shaft, facts.cover())) {
          steps.tick(
              "link/" + chain.name() + "/" + shaft,
              "Paint the link at the mark of %s%s, and the tooth in it, with one stroke."
                  .formatted(shaft, Counting.of(facts, chain)));
        } else {
          steps.know(
              "hidden/" + chain.name() + "/" + shaft,
              "The mark of %s%s can't be seen %s, so it can't be painted: nothing will show if the chain moves there."
                  .formatted(shaft, Counting.of(facts, chain), facts.withCover()));
        }
      }
    }
    steps.tick(
        "photo", "Photograph every painted mark straight from the front, before anything moves.");
    return steps.section();
  }
}
