package tightside.sheet;

/** Proof that nothing moved, with the paint and without it. */
final class ProvePart {

  private ProvePart() {}

  static Section prove(Facts facts) {
    StepList steps = new StepList(Part.PROVE);
    steps.lead("Still locked, before anything turns:");
    Counting.add(facts, steps);
    facts.camshaftChains().forEach(c -> LetOutPart.sag(facts, steps, c));
    steps.add(
        "out",
        "Tools, bolts, washers and cloths out, counted:",
        new Field.Note(),
        "The same as went in, the plug of the timing well among them. One short: find it before anything turns.");
    steps.yesNo(
        "out-agrees",
        "Is everything that went in out again?",
        "All is out.",
        "Find it before the crankshaft moves: a washer in the chain ends the engine.");
    steps.tick("tools", "All locking tools, hooks and holding tools are out.");
    turns(facts, steps);
    return steps.section();
  }

  private static void turns(Facts facts, StepList steps) {
    steps.yesNo(
        "turns",
        "Two full turns by the crankshaft bolt, in running direction, spark plugs out: free all the way?",
        "Nothing in the way.",
        "STOP at the first resistance. Do not push past it and do not turn back: see the stop card.",
        "Past the mark? Two more turns forward, never back: turning back moves the pulled side.");
    for (ChainFacts chain : facts.chains()) {
      for (String shaft : chain.marked()) {
        if (chain.markSeen(shaft, facts.cover())) {
          steps.yesNo(
              "mark/" + chain.name() + "/" + shaft,
              "Does the mark of %s%s stand where the maker's picture has it?"
                  .formatted(shaft, Counting.of(facts, chain)),
              "It stands right.",
              "Two more turns forward and look again. If it stays off, a sprocket is on the wrong tooth or a phaser was not at rest: do not start the engine.");
        }
      }
    }
    tool(steps, facts.crank());
    facts.camshafts().forEach(s -> tool(steps, s));
    facts.chains().stream()
        .filter(c -> c.plungerSeen(facts.cover()))
        .forEach(
            c ->
                steps.add(
                    "plunger/" + c.name(),
                    "Measure the plunger of %s again; compare with what it was before."
                        .formatted(c.chain().tensioner().orElseThrow().name()),
                    PlungerTable.of(facts, c).standing(),
                    "A wrong tooth does not show here once the shafts are free: the plunger proves the tension, not the timing."));
  }

  private static void tool(StepList steps, String shaft) {
    steps.yesNo(
        "tool/" + shaft,
        "Does the locking tool of %s go in again by hand? Take it out again.".formatted(shaft),
        "%s stands in its place.".formatted(shaft),
        "It is off. Do not force it; two more turns forward and try again; if it stays so, do not start the engine.");
  }

  static Section again(Facts facts) {
    StepList steps = new StepList(Part.AGAIN);
    steps.lead(
        "Why: paint proves only that the same links are where they were painted. It says nothing of whether they belonged there, it is blind where a painted link was mistaken, and after a turn of the engine it stands somewhere else. Bare marks and a fresh count do not depend on it.");
    steps.tick(
        "wipe", "Wipe the paint off every link and tooth; from the marks alone from here on.");
    steps.tick("turn", "Two more turns forward by hand, to the reference position.");
    Counting.add(facts, steps);
    steps.tick(
        "second",
        "Someone else counted too, without seeing these numbers.",
        "Alone: count once forward and once backward.");
    return steps.section();
  }
}
