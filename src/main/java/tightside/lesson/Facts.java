package tightside.lesson;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import tightside.drive.Chain;
import tightside.drive.Sprocket;
import tightside.engine.Clearance;
import tightside.engine.TimedEngine;
import tightside.timing.ChainSolution;
import tightside.timing.Lag;
import tightside.timing.Seat;
import tightside.timing.ShaftTiming;
import tightside.timing.Strand;
import tightside.timing.TensionerReading;
import tightside.words.Numbers;
import tightside.words.Sentences;

/** The figures of an explanation, each from the solver's own numbers. */
record Facts(Setting setting, Truth truth) {

  Map<String, String> all() {
    Map<String, String> facts = new HashMap<>();
    ChainSolution chain = wrongChain();
    facts.put("chain", chain.chain().name());
    facts.put("links", Integer.toString(chain.chain().links()));
    turning(facts, chain.chain());
    facts.put("realign", chain.realignCrankTurns().toString());
    facts.put("way", truth.right().way().words());
    shaft(facts);
    truth.state().reseats().forEach((seat, teeth) -> tooth(facts, seat, teeth));
    truth.state().stretchPercent().forEach((name, percent) -> worn(facts, name, percent));
    if (truth.quantity() == Quantity.COMPRESSION) {
      compression(facts);
    }
    return facts;
  }

  /** The chain on which something is wrong, or the first. */
  private ChainSolution wrongChain() {
    return truth.state().reseats().keySet().stream()
        .map(Seat::chain)
        .findFirst()
        .or(() -> truth.state().stretchPercent().keySet().stream().findFirst())
        .flatMap(truth.solution()::chain)
        .orElse(truth.solution().chains().get(0));
  }

  /** What passes in two turns of the crankshaft. */
  private void turning(Map<String, String> facts, Chain chain) {
    double perTurn =
        setting.drive().gearing().perCrankTurn(chain.driver().shaft()).doubleValue()
            * chain.driver().teeth();
    facts.put("perturn", Numbers.plain(perTurn));
    facts.put("passed", Numbers.plain(2 * perTurn));
    facts.put("onward", Numbers.plain((2 * perTurn) % chain.links()));
    List<String> teeth =
        chain.sprockets().stream().map(s -> Integer.toString(s.teeth())).distinct().toList();
    facts.put("allteeth", Sentences.list(teeth, "and"));
  }

  private void shaft(Map<String, String> facts) {
    truth
        .solution()
        .shaft(truth.right().shaft())
        .ifPresent(
            timing -> {
              facts.put("shaft", timing.shaft());
              facts.put("shaftdeg", Numbers.degrees(timing.shaftDegrees()));
              facts.put("crankdeg", Numbers.degrees(timing.crankDegrees()));
              double turns =
                  1 / setting.drive().gearing().perCrankTurn(timing.shaft()).doubleValue();
              String shown = Numbers.plain(Math.abs(Math.round(turns * 1e6) / 1e6));
              facts.put("turns", shown.equals("1") ? "1 turn" : shown + " turns");
            });
  }

  private void tooth(Map<String, String> facts, Seat seat, int teeth) {
    Chain chain = setting.drive().chain(seat.chain()).orElseThrow();
    int z = chain.sprocketOn(seat.shaft()).map(Sprocket::teeth).orElseThrow();
    facts.put("teeth", Integer.toString(z));
    facts.put("pertooth", Numbers.degrees(360.0 / z));
    facts.put("ahead", teeth > 0 ? "ahead" : "behind");
    int size = Math.abs(teeth);
    facts.put("teethoff", size == 1 ? "1 tooth" : size + " teeth");
    List<Strand> now = truth.solution().chain(seat.chain()).orElseThrow().strands();
    List<Strand> right = truth.ifRight().chain(seat.chain()).orElseThrow().strands();
    for (int i = 0; i < now.size(); i++) {
      if (now.get(i).to().equals(seat.shaft())) {
        strand(facts, "in", now.get(i), right.get(i));
      }
      if (now.get(i).from().equals(seat.shaft())) {
        strand(facts, "out", now.get(i), right.get(i));
      }
    }
    facts.put("further", teeth > 0 ? "further on" : "less far on");
  }

  private static void strand(Map<String, String> facts, String way, Strand now, Strand right) {
    facts.put(way + "-strand", now.from() + " to " + now.to());
    facts.put(way + "-now", Long.toString(now.links()));
    facts.put(way + "-between", Long.toString(now.between()));
    facts.put(way + "-right", Long.toString(right.links()));
    facts.put(way + "-plain", Long.toString(right.between()));
  }

  private void worn(Map<String, String> facts, String name, double percent) {
    facts.put("percent", Numbers.fixed(percent, 2));
    facts.put(
        "list",
        Sentences.list(
            truth.solution().shafts().stream()
                .filter(t -> t.lag() != Lag.RIGHT)
                .map(t -> t.shaft() + " " + Numbers.degrees(t.crankDegrees()) + " crank degrees")
                .toList(),
            "and"));
    facts.put(
        "shaft-list",
        Sentences.list(
            truth.solution().shafts().stream()
                .filter(t -> t.lag() != Lag.RIGHT)
                .map(
                    t ->
                        "%s by %s degrees of its own (%s of the crankshaft)"
                            .formatted(
                                t.shaft(),
                                Numbers.degrees(t.shaftDegrees()),
                                Numbers.degrees(t.crankDegrees())))
                .toList(),
            "and"));
    Optional<TensionerReading> now = truth.solution().chain(name).orElseThrow().tensioner();
    Optional<TensionerReading> fresh = truth.ifRight().chain(name).orElseThrow().tensioner();
    if (now.isPresent() && fresh.isPresent()) {
      facts.put("extension", Numbers.fixed(shown(now.get()), 1));
      facts.put("longer", Numbers.fixed(shown(now.get()) - shown(fresh.get()), 1));
    }
  }

  private void compression(Map<String, String> facts) {
    TimedEngine now = Truth.timed(setting, truth.solution());
    TimedEngine fresh = Truth.timed(setting, truth.ifRight());
    facts.put("compression", Numbers.fixed(now.squeeze().closed().orElseThrow(), 1));
    facts.put("compression-right", Numbers.fixed(fresh.squeeze().closed().orElseThrow(), 1));
    facts.put("closes", Numbers.fixed(closes(now), 1));
    facts.put("closes-right", Numbers.fixed(closes(fresh), 1));
    facts.put("nominal", Numbers.plain(now.engine().compressionRatio()));
    double drop = now.engine().crankGear().dropMm(closes(now));
    double dropRight = now.engine().crankGear().dropMm(closes(fresh));
    facts.put("stroke-left", percentOfStroke(now, drop));
    facts.put("stroke-right", percentOfStroke(now, dropRight));
  }

  private static String percentOfStroke(TimedEngine timed, double dropMm) {
    return Numbers.fixed(100 * dropMm / timed.engine().strokeMm(), 0) + " %";
  }

  private static double closes(TimedEngine timed) {
    return timed.clearances().stream()
        .filter(c -> c.valve().intake())
        .mapToDouble(Clearance::closesDegrees)
        .max()
        .orElseThrow();
  }

  /** Whether a locking tool goes in, for every camshaft, by the play that it has. */
  List<String> tools(double playDegrees) {
    return truth.solution().shafts().stream()
        .filter(t -> !t.shaft().equals(setting.drive().crankshaft().name()))
        .map(t -> tool(t, playDegrees))
        .collect(Collectors.toList());
  }

  private static String tool(ShaftTiming timing, double playDegrees) {
    boolean in = Math.abs(timing.shaftDegrees()) <= playDegrees;
    return "The locking tool of %s %s."
        .formatted(timing.shaft(), in ? "goes in" : "does not go in");
  }

  /** To a tenth, so that a difference is that of the figures that are shown. */
  private static double shown(TensionerReading reading) {
    return Math.round(10 * reading.extensionMm()) / 10.0;
  }
}
