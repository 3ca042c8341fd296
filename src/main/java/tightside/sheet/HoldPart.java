package tightside.sheet;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import tightside.drive.Chain;
import tightside.drive.Sprocket;
import tightside.engine.AtReference;
import tightside.engine.Engine;
import tightside.timing.HoldBack;
import tightside.timing.Kick;
import tightside.timing.PressBack;
import tightside.timing.SlackByExtension;
import tightside.words.HoldBackWords;
import tightside.words.Numbers;
import tightside.words.TakingOffWords;

/** Locking, plugging and holding back. */
final class HoldPart {

  /** Of the crankshaft for one turn of a camshaft. */
  private static final double CRANK_TURNS_OF_A_CAMSHAFT = 2;

  private HoldPart() {}

  static Section lock(Facts facts) {
    StepList steps = new StepList(Part.LOCK);
    steps.lead(
        "A locking tool holds a place; it is no wrench. Never tighten or loosen a bolt against it unless the maker says so.");
    lock(steps, facts.crank(), List.of());
    facts.camshafts().forEach(s -> lock(steps, s, List.of(TakingOffWords.kick(s, kick(facts, s)))));
    OptionalDouble play = facts.work().play();
    steps.know(
        "play",
        play.isPresent()
            ? "Locked camshafts can still turn %s degrees either way in these tools: your own figure."
                .formatted(Numbers.plain(play.getAsDouble()))
            : "How far a locked camshaft can still turn in its tool is not known here; feel it and note it.");
    if (play.isEmpty()) {
      steps.note("play-found", "Play felt in the tools, camshaft degrees:");
    }
    return steps.section();
  }

  private static void lock(StepList steps, String shaft, List<String> notes) {
    steps.add(
        "tool/" + shaft,
        "Does the locking tool of %s go in by hand, without force?".formatted(shaft),
        new Field.YesNo(
            Judgement.right("Locked in its place."),
            Judgement.wrong(
                "It is not in its place now. Take all tools out, turn two more turns forward, try again; if it still does not go in, the drive is wrong or worn: stop.")),
        notes);
  }

  private static Kick kick(Facts facts, String shaft) {
    Optional<Engine> engine = facts.work().engine();
    return engine.isPresent()
        ? AtReference.kick(engine.get(), shaft, CRANK_TURNS_OF_A_CAMSHAFT)
        : new Kick.Unknown();
  }

  static Section compare(Facts facts) {
    StepList steps = new StepList(Part.COMPARE);
    steps.lead(
        "At the bench as far as the old part lets you, the rest when it is off; before the new one goes on.");
    facts.camshaftChains().forEach(c -> c.camshafts().forEach(s -> compare(facts, steps, c, s)));
    steps.maker(
        "faces",
        "Friction faces of sprocket, phaser and camshaft:",
        "clean, dry, oiled or with a friction disc, as the maker says",
        "");
    return steps.section();
  }

  private static void compare(Facts facts, StepList steps, ChainFacts chain, String shaft) {
    Sprocket sprocket = chain.chain().sprocketOn(shaft).orElseThrow();
    double teeth = sprocket.teeth();
    steps.add(
        "teeth/" + shaft,
        "Count the teeth of the new sprocket of %s.".formatted(shaft),
        new Field.Reading(
            Field.Unit.TEETH,
            "right: " + sprocket.teeth(),
            List.of(
                new Band(
                    0,
                    teeth - 1,
                    Judgement.wrong(
                        "Another sprocket: %s has %d teeth.".formatted(shaft, sprocket.teeth()))),
                new Band(teeth, teeth, Judgement.right("As the old one.")),
                new Band(
                    teeth + 1,
                    1_000,
                    Judgement.wrong(
                        "Another sprocket: %s has %d teeth.".formatted(shaft, sprocket.teeth())))),
            "Teeth are whole: count again."));
    steps.yesNo(
        "alike/" + shaft,
        "Laid on the old one of %s, tooth on tooth: do %s, timing mark and thickness agree?"
            .formatted(shaft, meets(sprocket)),
        "Alike where it matters.",
        "A mark on another tooth puts the camshaft off with every link right. Do not fit it before you know why.");
    steps.yesNo(
        "rest/" + shaft,
        "If %s has a phaser: are old and new at rest, locked by their own pin at the same end?"
            .formatted(shaft),
        "At rest, or there is no phaser.",
        "A phaser that is not at rest goes on with every link right and the camshaft wrong. Bring it to rest as its maker says.",
        phaser(facts, shaft));
  }

  private static String meets(Sprocket sprocket) {
    return switch (sprocket.joint()) {
      case DOWEL -> "dowel hole";
      case KEY -> "keyway";
      case FRICTION -> "clamping face";
    };
  }

  private static String phaser(Facts facts, String shaft) {
    return Optional.ofNullable(facts.work().phasers().get(shaft))
        .map(
            p ->
                "The model has it resting %s, with %s camshaft degrees of travel."
                    .formatted(
                        switch (p.rest()) {
                          case RETARDED -> "fully retarded";
                          case ADVANCED -> "fully advanced";
                          case MIDDLE -> "in the middle";
                        },
                        Numbers.plain(p.travelDegrees())))
        .orElse("The model does not say whether it has one.");
  }

  static Section plug() {
    return new StepList(Part.PLUG)
        .tick(
            "well",
            "Plug the timing well and every hole below with lint-free cloth on a string.",
            "What drops in with the cover on is not got out with the cover on.")
        .note("in", "Tools, bolts, washers and cloths in, counted:")
        .tick(
            "tray",
            "Lay everything that comes off in one tray, in the order in which it comes off.")
        .section();
  }

  static Section holdBack(Facts facts) {
    StepList steps = new StepList(Part.HOLD_BACK);
    steps.lead(
        "Push slowly: oil has to leave the plunger. Hold it with the maker's tool or pin, never with a hand.");
    facts.chains().stream()
        .filter(c -> c.chain().tensioner().isPresent() || !c.camshafts().isEmpty())
        .forEach(c -> holdBack(facts, steps, c));
    return steps.section();
  }

  private static void holdBack(Facts facts, StepList steps, ChainFacts chain) {
    Chain drive = chain.chain();
    String[] slack = slack(chain).toArray(String[]::new);
    if (drive.countedOnly()) {
      steps.tick(
          "held/" + chain.name(),
          "Push the tensioner of chain %s back, where it has one, and hold it there; tie the tool so that it can't slip."
              .formatted(chain.name()),
          slack);
      steps.note("at/" + chain.name(), "How far its plunger is still out, mm:");
      return;
    }
    if (drive.tensioner().isEmpty()) {
      steps.know(
          "none/" + chain.name(),
          "Chain %s has no tensioner: nothing is held back, and nothing takes up slack."
              .formatted(chain.name()),
          slack);
      return;
    }
    String name = drive.tensioner().get().name();
    steps.tick(
        "held/" + chain.name(),
        "Push the plunger of %s back and hold it there; tie the tool so that it can't slip."
            .formatted(name),
        slack);
    Field field =
        SlackByExtension.of(facts.drive(), drive, 0)
            .map(s -> PlungerTable.of(facts, chain).held(s))
            .orElse(new Field.Reading(Field.Unit.MM, "", List.of(), Facts.NO_GEOMETRY));
    if (chain.plungerSeen(facts.cover())) {
      steps.add(
          "at/" + chain.name(),
          "Measure how far the plunger of %s is still out.".formatted(name),
          field);
    }
    press(facts, chain)
        .forEach(
            words ->
                steps.know(
                    "press/" + chain.name() + "/" + words.shaft(),
                    "Where only the chain can push it back, a camshaft does it, held by its flats: "
                        + TakingOffWords.pressBack(words)));
  }

  private static Stream<String> slack(ChainFacts chain) {
    if (chain.hold().isEmpty()) {
      return Stream.of("How much slack that gives: " + Facts.NO_GEOMETRY);
    }
    HoldBack hold = chain.hold().get();
    return Stream.concat(
        Stream.of(HoldBackWords.slack(hold)),
        hold.strands().stream().map(s -> "Slack " + HoldBackWords.strand(s) + "."));
  }

  private static List<PressBack> press(Facts facts, ChainFacts chain) {
    return chain.hold().isEmpty()
        ? List.of()
        : chain.camshafts().stream()
            .flatMap(
                s ->
                    PressBack.of(
                        facts.drive(),
                        chain.chain(),
                        s,
                        0,
                        facts
                            .work()
                            .engine()
                            .flatMap(e -> AtReference.clearance(e, s, CRANK_TURNS_OF_A_CAMSHAFT)))
                        .stream())
            .toList();
  }
}
