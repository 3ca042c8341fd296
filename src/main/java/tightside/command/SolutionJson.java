package tightside.command;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import tightside.drive.Chain;
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
        "countedOnly", chain.chain().countedOnly(),
        "tensioner", tensioner(chain),
        "strands", chain.strands().stream().map(s -> strand(chain, s)).toList(),
        "realign", Json.object("crankTurns", chain.realignCrankTurns()));
  }

  /** Null where there is none; in a drive that is counted only, a name and what is not known. */
  private static Map<String, Object> tensioner(ChainSolution chain) {
    return chain
        .tensioner()
        .map(SolutionJson::tensioner)
        .or(() -> chain.chain().countedOnly() ? notKnown(chain.chain()) : Optional.empty())
        .orElse(null);
  }

  private static Optional<Map<String, Object>> notKnown(Chain chain) {
    return chain
        .tensionerName()
        .map(
            name ->
                Json.object(
                    "name", name, "extension", null, "travel", null, "steps", null, "taut", null));
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
        "pitches", number(strand.measured()),
        "links", strand.links(),
        "between", strand.between(),
        "misfit", number(strand.misfit()),
        "taut", strand.taut(),
        "trusted", strand.taut() ? strand.trusted() : chain.countsTrusted(),
        "seen", word(strand.seen()));
  }

  private static Object number(OptionalDouble number) {
    return number.isPresent() ? number.getAsDouble() : null;
  }

  static List<Map<String, Object>> shafts(Solution solution) {
    return Stream.concat(
            solution.shafts().stream().map(SolutionJson::shaft),
            solution.untimed().stream().map(SolutionJson::untimed))
        .toList();
  }

  private static Map<String, Object> untimed(String shaft) {
    return Json.object("shaft", shaft, "shaftDegrees", null, "crankDegrees", null, "state", null);
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
