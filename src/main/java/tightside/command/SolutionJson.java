package tightside.command;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import tightside.timing.ChainSolution;
import tightside.timing.ShaftTiming;
import tightside.timing.Solution;
import tightside.timing.Strand;
import tightside.timing.TensionerReading;
import tightside.words.UnknownWords;

/** A solution as the command line's JSON has it. */
final class SolutionJson {

  private SolutionJson() {}

  static List<Map<String, Object>> chains(Solution solution) {
    return solution.chains().stream().map(SolutionJson::chain).toList();
  }

  private static Map<String, Object> chain(ChainSolution chain) {
    return Json.object(
        "chain", chain.chain().name(),
        "links", chain.chain().links(),
        "tensioner", chain.tensioner().map(SolutionJson::tensioner).orElse(null),
        "strands", chain.strands().stream().map(s -> strand(chain, s)).toList(),
        "realign", Json.object("crankTurns", chain.realignCrankTurns()));
  }

  private static Map<String, Object> tensioner(TensionerReading reading) {
    return Json.object(
        "name", reading.name(),
        "extension", reading.extensionMm(),
        "travel", reading.travelMm(),
        "steps", reading.steps().isPresent() ? reading.steps().getAsLong() : null,
        "taut", reading.taut(),
        "slackLeft", reading.slackLeftMm());
  }

  private static Map<String, Object> strand(ChainSolution chain, Strand strand) {
    return Json.object(
        "from", strand.from(),
        "to", strand.to(),
        "pitches", strand.pitches(),
        "links", strand.links(),
        "between", strand.between(),
        "misfit", strand.misfit().isPresent() ? strand.misfit().getAsDouble() : null,
        "taut", strand.taut(),
        "trusted", strand.taut() ? strand.trusted() : chain.countsTrusted(),
        "seen", word(strand.seen()));
  }

  static List<Map<String, Object>> shafts(Solution solution) {
    return solution.shafts().stream().map(SolutionJson::shaft).toList();
  }

  private static Map<String, Object> shaft(ShaftTiming shaft) {
    return Json.object(
        "shaft", shaft.shaft(),
        "shaftDegrees", shaft.shaftDegrees(),
        "crankDegrees", shaft.crankDegrees(),
        "state", word(shaft.lag()));
  }

  static List<String> unknown(Solution solution) {
    return solution.unknowns().stream().map(UnknownWords::of).toList();
  }

  /** How a name of the model format, or a state, is written. */
  private static String word(Enum<?> value) {
    return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
