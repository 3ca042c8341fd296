package tightside.words;

import java.util.List;
import java.util.Optional;
import tightside.timing.Climb;
import tightside.timing.FreeTeeth;
import tightside.timing.Kick;
import tightside.timing.Lag;
import tightside.timing.PressBack;
import tightside.timing.SlideOff;
import tightside.timing.SlideOff.Bowed;

/** How a sprocket comes off, what the chain can climb, and what moves by itself, in sentences. */
public final class TakingOffWords {

  private TakingOffWords() {}

  /** The first stage: sideways, off its nose. */
  public static String slideOff(SlideOff slide) {
    String who = Sentences.list(slide.shafts().stream().sorted().toList(), "and");
    String what = "%s, %s off its nose: ".formatted(who, Numbers.mm(slide.engagementMm()));
    List<String> needs =
        slide.strands().stream().filter(s -> s.neededMm() > 0).map(TakingOffWords::need).toList();
    return what
        + (needs.isEmpty() ? "no run bows" : "takes " + Sentences.list(needs, "and"))
        + "; "
        + has(slide)
        + ".";
  }

  private static String need(Bowed bowed) {
    return Numbers.fixed(bowed.neededMm(), 2) + " mm of chain " + run(bowed);
  }

  private static String run(Bowed bowed) {
    return "from " + bowed.strand().from() + " to " + bowed.strand().to();
  }

  private static String has(SlideOff slide) {
    List<String> missing =
        slide.strands().stream()
            .filter(s -> !s.enough())
            .map(s -> run(s) + " only " + Numbers.fixed(Math.max(0, s.hasMm()), 2) + " mm is there")
            .toList();
    if (missing.isEmpty()) {
      return "this drive has it";
    }
    return Sentences.list(missing, "and")
        + (slide.enoughTurning()
            ? ", so its shaft has to turn with it"
            : ", so it does not go, turned or not");
  }

  /**
   * The second stage: toward the driving sprocket.
   *
   * @param free nothing where the teeth are not known
   */
  public static String freeTeeth(String driver, Optional<FreeTeeth> free) {
    if (free.isEmpty()) {
      return "When its teeth are free is not said: those of a toothed chain are not known here.";
    }
    if (free.get().keeper().isPresent()) {
      return kept(free.get().keeper().get());
    }
    double move = free.get().moveMm().orElse(0);
    return move == 0
        ? "Its teeth are then free without moving it."
        : "Its teeth are free once it has moved %s toward %s.".formatted(Numbers.mm(move), driver);
  }

  private static String kept(FreeTeeth.Keeper keeper) {
    return switch (keeper.cause()) {
      case NEIGHBOUR ->
          "It can't come alone: the sprocket of %s stands in its way.".formatted(keeper.name());
      case FACE -> "It can't come while %s is in place: take that off.".formatted(keeper.name());
      case SLACK -> "It can't come out of the chain alone: too little chain is over.";
    };
  }

  /** Whether the chain rides over a tooth of a sprocket that stays. */
  public static String climb(Climb climb) {
    String takes =
        "it takes %s of slack, and %s is there"
            .formatted(Numbers.mm(climb.neededMm()), Numbers.mm(Math.max(0, climb.hasMm())));
    return climb.possible()
        ? "The chain CAN climb a tooth at %s: %s. Hold the chain on its sprocket."
            .formatted(climb.shaft(), takes)
        : "The chain can't climb a tooth at %s: %s.".formatted(climb.shaft(), takes);
  }

  /** The tensioner pressed back by a camshaft. */
  public static String pressBack(PressBack press) {
    return "Turn %s %s: %s cam degrees for the first mm, %s in all, and the plunger goes from %s to %s. %s"
        .formatted(
            press.shaft(),
            press.way() == Lag.ADVANCED ? "ahead" : "back",
            Numbers.fixed(press.degreesPerMm(), 2),
            Numbers.fixed(press.turnDegrees(), 1),
            Numbers.mm(press.fromMm()),
            Numbers.mm(press.toMm()),
            press
                .nearest()
                .map(TakingOffWords::nearest)
                .orElse("Whether valves meet pistons on the way is not known here."));
  }

  private static String nearest(PressBack.Nearest nearest) {
    return nearest.touches()
        ? "VALVES MEET PISTONS on the way."
        : "Valves come no nearer to pistons than " + Numbers.mm(nearest.clearanceMm()) + ".";
  }

  /** Which way a camshaft springs. */
  public static String kick(String shaft, Kick kick) {
    if (kick instanceof Kick.Known known && known.way() != Lag.RIGHT) {
      return "%s springs %s once nothing holds it: hold it first."
          .formatted(shaft, known.way() == Lag.ADVANCED ? "ahead" : "back");
    }
    return kick instanceof Kick.Known
        ? "The springs of %s are in balance here; hold it all the same.".formatted(shaft)
        : "Which way %s springs is unknown: hold it both ways.".formatted(shaft);
  }
}
