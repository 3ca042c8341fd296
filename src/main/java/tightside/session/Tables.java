package tightside.session;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import tightside.drive.Drive;
import tightside.timing.ChainSolution;
import tightside.timing.ShaftTiming;
import tightside.timing.Solution;
import tightside.timing.Strand;
import tightside.timing.TensionerReading;
import tightside.words.Numbers;

/** What the drawing shows, as rows of text. */
final class Tables {

  private Tables() {}

  static List<StrandRow> strands(Snapshot snapshot, ChainSolution chain) {
    return chain.strands().stream().map(s -> row(snapshot, chain, s)).toList();
  }

  private static StrandRow row(Snapshot snapshot, ChainSolution chain, Strand strand) {
    StrandId id = StrandId.of(chain.chain().name(), strand);
    Count count = snapshot.counts().get(id);
    return new StrandRow(
        id,
        strand.from(),
        strand.to(),
        Long.toString(strand.links()),
        Long.toString(strand.between()),
        misfit(strand.misfit()),
        state(chain, strand),
        Words.seen(strand.seen()),
        count == null ? "" : count.text().strip() + " " + way(count.way()));
  }

  private static String misfit(OptionalDouble misfit) {
    return misfit.isPresent() ? Numbers.signedHundredths(misfit.getAsDouble()) : "\u2013";
  }

  private static String way(CountingWay way) {
    return way == CountingWay.BETWEEN ? "between" : "from mark to mark";
  }

  private static String state(ChainSolution chain, Strand strand) {
    if (strand.taut()) {
      return "taut";
    }
    if (chain.chain().countedOnly()) {
      return "slack side";
    }
    return chain.tensioner().filter(TensionerReading::taut).isPresent()
        ? "slack side, held tight by the tensioner"
        : "slack side, loose";
  }

  static List<ShaftRow> shafts(Solution solution) {
    return Stream.concat(
            solution.shafts().stream().map(s -> row(solution.drive(), s)),
            solution.untimed().stream().map(name -> untimed(solution.drive(), name)))
        .toList();
  }

  private static ShaftRow untimed(Drive drive, String shaft) {
    return row(drive, new ShaftTiming(shaft, 0, 0)).unknown("not known: a measurement is missing");
  }

  private static ShaftRow row(Drive drive, ShaftTiming shaft) {
    return new ShaftRow(
        shaft.shaft(),
        Words.role(drive.shaft(shaft.shaft()).orElseThrow().role()),
        Numbers.signedHundredths(shaft.shaftDegrees()),
        Numbers.signedHundredths(shaft.crankDegrees()),
        Words.lag(shaft.lag()));
  }
}
