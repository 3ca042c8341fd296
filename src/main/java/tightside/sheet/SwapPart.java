package tightside.sheet;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import tightside.drive.Joint;
import tightside.drive.Sprocket;
import tightside.readings.JointMistake;
import tightside.timing.Climb;
import tightside.timing.DowelRule;
import tightside.timing.FreeTeeth;
import tightside.timing.HoldBack;
import tightside.timing.SlideOff;
import tightside.words.HoldBackWords;
import tightside.words.Numbers;
import tightside.words.SlackWords;
import tightside.words.TakingOffWords;

/** The chain kept hanging while sprockets come off and go back on. */
final class SwapPart {

  /** How far a sprocket sits on its nose where nobody has measured, mm; from memory. */
  private static final double USUAL_ENGAGEMENT_MM = 8;

  private SwapPart() {}

  static Section hang(Facts facts) {
    StepList steps = new StepList(Part.HANG);
    steps.lead(
        "From the first bolt to the last, both runs to the crankshaft hang under tension: a chain that goes slack below can lift off the crankshaft's teeth, where nobody sees it.");
    facts.camshaftChains().forEach(c -> hang(facts, steps, c));
    return steps.section();
  }

  private static void hang(Facts facts, StepList steps, ChainFacts chain) {
    steps.tick(
        "runs/" + chain.name(),
        "Hang both runs of the chain%s up by hook, strap or tie, each pulled tight by itself, before the first bolt is loosened."
            .formatted(name(facts, chain)),
        climb(chain));
    steps.tick(
        "stay/" + chain.name(),
        "They stayed tight until the last bolt was tight.",
        "Tick this last, before the hooks come off.");
  }

  private static String name(Facts facts, ChainFacts chain) {
    return facts.chains().size() == 1 ? "" : " " + chain.name();
  }

  private static String climb(ChainFacts chain) {
    return chain
        .hold()
        .flatMap(hold -> Climb.of(hold, chain.driver()))
        .map(TakingOffWords::climb)
        .orElse(
            "Whether the chain can climb a tooth at %s is not known here: take it that it can."
                .formatted(chain.driver()));
  }

  static Section off(Facts facts) {
    StepList steps = new StepList(Part.OFF);
    steps.lead(
        "Break each bolt loose with its camshaft held by the flats or the maker's tool; nothing goes through chain, guides, tensioner or locking tool.");
    steps.lead(
        "What is said of slack below is reckoned for sprockets that sit %s on their noses: measure yours; deeper ones need more."
            .formatted(Numbers.mm(USUAL_ENGAGEMENT_MM)));
    facts.camshaftChains().forEach(c -> c.camshafts().forEach(s -> off(facts, steps, c, s)));
    facts.camshaftChains().forEach(c -> offTogether(steps, c));
    steps.tick("still", "Nothing moved: every painted link and tooth stands as on the photograph.");
    return steps.section();
  }

  /** What it takes where one alone does not go. */
  private static void offTogether(StepList steps, ChainFacts chain) {
    if (chain.hold().isPresent() && chain.camshafts().size() > 1) {
      SlideOff slide =
          SlideOff.of(chain.hold().get(), Set.copyOf(chain.camshafts()), USUAL_ENGAGEMENT_MM);
      steps.know(
          "together/" + chain.name(),
          "Where one alone does not go, both together: " + TakingOffWords.slideOff(slide));
    }
  }

  private static void off(Facts facts, StepList steps, ChainFacts chain, String shaft) {
    if (!chain.markSeen(shaft, facts.cover())) {
      steps.know("hidden/" + shaft, hidden(facts, shaft));
    }
    steps.tick(
        "sprocket/" + shaft,
        "Take the sprocket of %s off, the chain hanging in its place.".formatted(shaft),
        takingOff(chain, shaft));
  }

  private static String hidden(Facts facts, String shaft) {
    return "The mark of %s can't be seen %s: nobody could say on which tooth its sprocket goes back. Uncover it before it comes off."
        .formatted(shaft, facts.withCover());
  }

  private static String takingOff(ChainFacts chain, String shaft) {
    if (chain.hold().isEmpty()) {
      return "Whether the slack is enough: " + Facts.NO_GEOMETRY;
    }
    HoldBack hold = chain.hold().get();
    SlideOff slide = SlideOff.of(hold, Set.of(shaft), USUAL_ENGAGEMENT_MM);
    Optional<FreeTeeth> free = FreeTeeth.of(hold, shaft, slide, Optional.empty());
    return TakingOffWords.slideOff(slide) + " " + TakingOffWords.freeTeeth(chain.driver(), free);
  }

  static Section on(Facts facts) {
    StepList steps = new StepList(Part.ON);
    steps.lead(
        "The painted tooth goes back into the painted link. Then the paint is a copy, and the count is the proof.");
    facts.camshaftChains().forEach(c -> c.camshafts().forEach(s -> on(facts, steps, c, s)));
    return steps.section();
  }

  private static void on(Facts facts, StepList steps, ChainFacts chain, String shaft) {
    Sprocket sprocket = chain.chain().sprocketOn(shaft).orElseThrow();
    steps.tick(
        "link/" + shaft,
        "Put the sprocket of %s into the chain: painted tooth, or the new part's mark, into the painted link; phaser at rest."
            .formatted(shaft));
    if (sprocket.joint() == Joint.FRICTION) {
      steps.tick(
          "slack/" + shaft,
          "%s is held by clamp alone: take every bit of slack out of its tight run, by hand in running direction, before its bolt is tightened."
              .formatted(shaft),
          friction(chain, shaft));
    } else {
      steps.add(
          "dowel/" + shaft,
          "How far did %s have to be turned by its flats to meet its %s?"
              .formatted(shaft, sprocket.joint() == Joint.KEY ? "key" : "dowel"),
          dowel(chain, sprocket),
          rule(chain, sprocket));
    }
    steps.tick(
        "bolt/" + shaft,
        "Bolt of %s in by hand until it seats; it turns freely all the way.".formatted(shaft),
        facts.work().job().bolts().stream().anyMatch(b -> b.mustBeNew())
            ? "New bolts where section 11 says so."
            : "A new bolt, where the maker wants one.");
  }

  private static String friction(ChainFacts chain, String shaft) {
    return chain.hold().stream()
        .flatMap(hold -> JointMistake.on(hold, List.of()).stream())
        .filter(m -> m.shaft().equals(shaft))
        .map(SlackWords::joint)
        .findFirst()
        .orElse("No count of links shows a mistake there.");
  }

  private static Field dowel(ChainFacts chain, Sprocket sprocket) {
    return DowelField.of(chain.hold().map(hold -> DowelRule.of(hold, sprocket.shaft())), sprocket);
  }

  private static List<String> rule(ChainFacts chain, Sprocket sprocket) {
    return List.of(
        chain.hold().isPresent()
            ? HoldBackWords.rule(DowelRule.of(chain.hold().get(), sprocket.shaft()))
            : "More than half a tooth is wrong. How much slack can excuse is not known here: that takes the shafts' places.");
  }
}
