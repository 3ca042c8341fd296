package tightside.sheet;

import java.util.List;
import java.util.Optional;
import tightside.drive.Seen;
import tightside.timing.LooseStrand;
import tightside.timing.Reseating;
import tightside.timing.SlackByExtension;

/** The tensioner let out again, every shaft still locked. */
final class LetOutPart {

  private LetOutPart() {}

  static Section of(Facts facts) {
    StepList steps = new StepList(Part.LET_OUT);
    steps.lead("The locking tools stay in. Nothing is turned yet.");
    facts.camshaftChains().forEach(c -> letOut(facts, steps, c));
    return steps.section();
  }

  private static void letOut(Facts facts, StepList steps, ChainFacts chain) {
    if (chain.chain().countedOnly()) {
      steps.tick(
          "free/" + chain.name(),
          "Let the tensioner of chain %s, where it has one, out slowly against the chain; the holding tool or pin is out and counted."
              .formatted(chain.name()));
    }
    if (chain.chain().tensioner().isPresent()) {
      String name = chain.chain().tensioner().get().name();
      steps.tick(
          "free/" + chain.name(),
          "Let the plunger of %s out slowly against the chain; the holding tool or pin is out and counted."
              .formatted(name));
      if (chain.plungerSeen(facts.cover())) {
        steps.add(
            "plunger/" + chain.name(),
            "Measure how far the plunger of %s has come out.".formatted(name),
            letGo(facts, chain));
      }
    }
  }

  private static Field letGo(Facts facts, ChainFacts chain) {
    Optional<SlackByExtension> slack =
        chain.hold().flatMap(hold -> SlackByExtension.of(facts.drive(), chain.chain(), 0));
    return slack
        .map(
            s ->
                PlungerTable.of(facts, chain)
                    .letGo(s.extensionLetGo(Reseating.right(chain.name()))))
        .orElse(new Field.Reading(Field.Unit.MM, "", List.of(), Facts.NO_GEOMETRY));
  }

  /** Every tight run that a thumb reaches. */
  static void sag(Facts facts, StepList steps, ChainFacts chain) {
    if (chain.hold().isEmpty()) {
      chain.countable(facts.cover()).stream()
          .filter(s -> s.taut() && s.seen() != Seen.BORESCOPE)
          .forEach(
              s ->
                  steps.yesNo(
                      id(chain, s.from(), s.to()),
                      "Is the run from %s to %s tight under a thumb?".formatted(s.from(), s.to()),
                      "Tight, as a pulled run is.",
                      "A pulled run that sags has a link too many, or a shaft is out of its place: count before anything turns.",
                      "How many mm it may give is not known here: that takes the shafts' places."));
      return;
    }
    for (LooseStrand loose : chain.hold().get().strands()) {
      Seen seen = loose.strand().seen();
      if (loose.strand().taut() && seen != Seen.BORESCOPE && ChainFacts.sees(facts.cover(), seen)) {
        steps.add(
            id(chain, loose.strand().from(), loose.strand().to()),
            "Press the run from %s to %s with a thumb: how far does its middle give?"
                .formatted(loose.strand().from(), loose.strand().to()),
            SagField.of(loose, chain.hold().get().pitchMm()));
      }
    }
  }

  private static String id(ChainFacts chain, String from, String to) {
    return "thumb/%s/%s/%s".formatted(chain.name(), from, to);
  }
}
