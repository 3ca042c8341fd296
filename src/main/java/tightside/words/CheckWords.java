package tightside.words;

import tightside.drive.Seen;
import tightside.reasoning.NextCheck;

/** Checks that could be made next, in words. */
public final class CheckWords {

  /** A check that is expected to lessen the doubt by less is not worth its time, bits. */
  public static final double WORTH_BITS = 0.02;

  private CheckWords() {}

  /** Where nothing is worth it. */
  public static String nothingWorth() {
    return "No further check here is expected to change this answer by much.";
  }

  /** What to do, as an instruction. */
  public static String doIt(NextCheck check) {
    return switch (check.kind()) {
      case OIL -> "Look at the oil: its level, its age, the right kind";
      case WIRING -> "Look at plugs and wiring of sensors and phaser valves";
      case RESET -> "Clear the learned values and read " + check.shaft().orElseThrow() + " again";
      case UNPLUG ->
          "Unplug the phaser valve of " + check.shaft().orElseThrow() + " and read its angle again";
      case EDGES ->
          "Look at every edge of the cam wheel of "
              + check.shaft().orElseThrow()
              + " beside the crank's";
      case PLUNGER ->
          "Read how far the plunger of chain " + check.chain().orElseThrow() + " stands out";
      case LOCKING_TOOL ->
          "Try the locking tool of " + check.shaft().orElseThrow() + ", the crankshaft locked";
      case COUNT ->
          "Count the links from the %s mark to the %s mark on chain %s"
              .formatted(
                  check.shaft().orElseThrow(),
                  check.to().orElseThrow(),
                  check.chain().orElseThrow());
      case TURN_BY_HAND ->
          "Turn the engine two turns by hand and look at the mark of "
              + check.shaft().orElseThrow();
      case CALLIPER ->
          "Measure chain " + check.chain().orElseThrow() + " with a calliper over ten pitches";
      case COMPRESSION -> "Test the compression of all cylinders";
      case VALVE_ANGLE ->
          "See in a cylinder's pressure when the valves on "
              + check.shaft().orElseThrow()
              + " open and close";
    };
  }

  /** What it costs: minutes, and what has to be opened first. */
  public static String cost(NextCheck check) {
    String minutes = "about " + Numbers.plain(check.minutes()) + " min";
    return check.openingMinutes() > 0
        ? minutes
            + ", and "
            + Numbers.plain(check.openingMinutes())
            + " min to get there ("
            + opened(check.access())
            + ")"
        : minutes;
  }

  private static String opened(Seen access) {
    return switch (access) {
      case COVER_OFF -> "front cover off";
      case BORESCOPE -> "borescope";
      case COVER_ON -> "nothing to open";
      case NEVER -> "cannot be seen";
    };
  }

  /** What to expect under one explanation. */
  public static String expect(NextCheck.Expect expect) {
    return "if " + ExplainWords.brief(expect.what()) + ": " + outcome(expect);
  }

  /** The outcome alone. */
  public static String outcome(NextCheck.Expect expect) {
    double low = expect.low().orElse(0);
    double high = expect.high().orElse(0);
    return switch (expect.outcome()) {
      case MM ->
          Numbers.fixed(Math.max(0, low), 1)
              + " to "
              + Numbers.fixed(Math.max(0, high), 1)
              + " mm out";
      case CRANK_DEGREES ->
          ExplainWords.signed(low) + " to " + ExplainWords.signed(high) + " crank degrees";
      case PERCENT ->
          Numbers.fixed(Math.max(0, low), low > 5 ? 0 : 2)
              + " to "
              + Numbers.fixed(high, high > 5 ? 0 : 2)
              + " %";
      case LINKS -> Numbers.fixed(low, 0) + " links" + chance(expect.probability().orElse(1));
      case GOES_IN -> yes(expect, "it goes in", "it does not go in");
      case FAULT_FOUND -> yes(expect, "something is wrong", "nothing is found");
      case UNEVEN -> yes(expect, "edges stand unevenly", "edges stand evenly");
    };
  }

  private static String yes(NextCheck.Expect expect, String yes, String no) {
    double chance = expect.probability().orElse(0);
    return chance >= 0.5 ? yes + chance(chance) : no + chance(1 - chance);
  }

  private static String chance(double chance) {
    return " (" + ExplainWords.percent(chance) + ")";
  }
}
