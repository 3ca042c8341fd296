package tightside.session;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import tightside.drive.ChainFit;
import tightside.session.Sentence.Topic;
import tightside.timing.ChainSolution;
import tightside.timing.MarkOff;
import tightside.timing.TensionerReading;
import tightside.timing.Unknown;
import tightside.words.Numbers;
import tightside.words.UnknownWords;

/**
 * The words for how a chain lies, how its tensioner stands and where its paint is.
 *
 * @param held whether its plunger is held
 * @param runsOutPercent the stretch at which its tensioner runs out
 */
record ChainWords(ChainSolution solution, boolean held, OptionalDouble runsOutPercent) {

  private String name() {
    return solution.chain().name();
  }

  List<Sentence> fit() {
    List<Sentence> sentences = new ArrayList<>();
    misfit().ifPresent(text -> sentences.add(new Sentence(Topic.CAUTION, text)));
    for (MarkOff mark : solution.marksOff()) {
      sentences.add(
          new Sentence(
              Topic.CAUTION,
              "The mark of %s does not lie under the new chain %s at the reference position."
                  .formatted(mark.shaft(), name())));
    }
    if (!solution.countsTrusted()) {
      sentences.add(
          new Sentence(
              Topic.CAUTION,
              ("The links of %s are not sure, for a taut strand misses a whole number by more than "
                      + "a quarter of a pitch.")
                  .formatted(name())));
    }
    return sentences;
  }

  private Optional<String> misfit() {
    ChainFit fit = solution.fit();
    if (fit instanceof ChainFit.TooShort tooShort) {
      return Optional.of(
          "Chain %s is %s mm too short.".formatted(name(), Numbers.fixed(tooShort.byMm(), 1)));
    }
    if (fit instanceof ChainFit.SprocketMissed missed) {
      return Optional.of(
          "Chain %s runs clear of the %s sprocket.".formatted(name(), shaftAt(missed.place())));
    }
    return fit instanceof ChainFit.NoRoom room
        ? Optional.of(
            "Chain %s finds no way from %s to %s."
                .formatted(name(), shaftAt(room.from()), shaftAt(room.to())))
        : Optional.empty();
  }

  private String shaftAt(int place) {
    return solution.chain().sprocketAt(place).shaft();
  }

  Optional<Sentence> tensioner() {
    if (solution.chain().countedOnly()) {
      return Optional.of(
          new Sentence(
              Topic.TENSIONER,
              UnknownWords.of(new Unknown(Unknown.Kind.COUNTED_ONLY, name(), List.of()))));
    }
    return solution.tensioner().map(this::tensioner);
  }

  private Sentence tensioner(TensionerReading reading) {
    String out = Numbers.fixed(reading.extensionMm(), 1);
    String over = Numbers.fixed(reading.slackLeftMm(), 1);
    if (held) {
      return new Sentence(
          Topic.TENSIONER,
          ("The plunger of %s is held at %s mm with %s mm of chain left over, so no angle holds until "
                  + "it is let go.")
              .formatted(name(), out, over));
    }
    if (!reading.taut()) {
      return new Sentence(
          Topic.CAUTION,
          ("The tensioner of %s has run out: at its full travel of %s mm, %s mm of chain is "
                  + "left over and nothing holds it%s, and a chain as loose as this can jump teeth.")
              .formatted(name(), out, over, runsOut("ran")));
    }
    String steps =
        reading.steps().isPresent()
            ? ", " + Words.number(reading.steps().getAsLong(), "step", "steps")
            : "";
    return new Sentence(
        Topic.TENSIONER,
        "The plunger of %s is %s mm out%s, with %s mm of travel left%s."
            .formatted(
                name(),
                out,
                steps,
                Numbers.fixed(reading.travelMm() - reading.extensionMm(), 1),
                runsOut("runs")));
  }

  /**
   * @param verb whether it still has some way to go
   */
  private String runsOut(String verb) {
    return runsOutPercent.isPresent()
        ? "; it %s out at %s %% stretch"
            .formatted(verb, Numbers.fixed(runsOutPercent.getAsDouble(), 2))
        : "";
  }

  /**
   * Where the paint is after whole cycles of two turns.
   *
   * @param turns of the crank since the reference position
   */
  static Sentence paint(List<ChainWords> chains, long turns) {
    if (chains.size() == 1) {
      return chains.get(0).paint(turns);
    }
    List<String> moved =
        chains.stream()
            .map(c -> "%s of %d on %s".formatted(links(c.on()), c.links(), c.name()))
            .toList();
    List<String> again =
        chains.stream().map(c -> c.solution.realignCrankTurns().toString()).toList();
    return new Sentence(
        Topic.PAINT,
        "After %s the painted links stand %s further on, and meet the marks again after %s turns."
            .formatted(turned(turns), Words.list(moved, "and"), Words.list(again, "and")));
  }

  private int links() {
    return solution.chain().links();
  }

  /** Links by which the chain has moved on, less whole rounds. */
  private double on() {
    return solution.advancePitches() - links() * Math.floor(solution.advancePitches() / links());
  }

  private Sentence paint(long turns) {
    int links = links();
    BigInteger again = solution.realignCrankTurns();
    double on = on();
    if (BigInteger.valueOf(turns).mod(again).signum() == 0) {
      return new Sentence(
          Topic.PAINT,
          "After %s the painted links of %s meet the marks again."
              .formatted(turned(turns), name()));
    }
    return new Sentence(
        Topic.PAINT,
        ("After %s the painted links of %s stand %s of its %d links further on, and meet "
                + "the marks again %s turns after the reference position.")
            .formatted(turned(turns), name(), links(on), links, again));
  }

  private static String turned(long turns) {
    return turns < 0 ? -turns + " turns back" : turns + " turns";
  }

  private static String links(double on) {
    boolean whole = Math.abs(on - Math.rint(on)) < 1e-6;
    return whole ? Long.toString(Math.round(on)) : Numbers.fixed(on, 1);
  }
}
