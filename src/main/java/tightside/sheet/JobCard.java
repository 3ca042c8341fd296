package tightside.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tightside.drive.Joint;
import tightside.drive.Seen;
import tightside.drive.Sprocket;
import tightside.drive.Tensioner;
import tightside.timing.DowelRule;
import tightside.timing.Realign;
import tightside.timing.Strand;
import tightside.words.Numbers;
import tightside.words.Sentences;

/**
 * The job on one page: what can be counted, what must be locked, three ways in which it goes wrong
 * here, and room to write. A drive that is known by its counts alone has one too.
 *
 * @param counts every run from mark to mark, chain by chain in the direction of travel
 * @param locks what must be locked or held before a bolt is loosened
 * @param ways three, the worst first
 * @param blanks what is to be written in
 */
public record JobCard(
    String drive,
    String about,
    Seen cover,
    List<Run> counts,
    List<String> locks,
    List<String> ways,
    List<String> blanks) {

  /**
   * A run of chain.
   *
   * @param countable whether it can be counted with the cover as it is
   */
  public record Run(String chain, Strand strand, boolean countable) {}

  public JobCard {
    counts = List.copyOf(counts);
    locks = List.copyOf(locks);
    ways = List.copyOf(ways);
    blanks = List.copyOf(blanks);
  }

  public static JobCard of(Work work) {
    Facts facts = Facts.of(work);
    return new JobCard(
        facts.drive().name(),
        facts.drive().about(),
        facts.cover(),
        facts.chains().stream()
            .flatMap(c -> c.strands().stream().map(s -> run(facts, c, s)))
            .toList(),
        locks(facts),
        WaysWrong.of(facts),
        blanks(facts));
  }

  private static Run run(Facts facts, ChainFacts chain, Strand strand) {
    return new Run(chain.name(), strand, chain.countable(facts.cover()).contains(strand));
  }

  private static List<String> locks(Facts facts) {
    List<String> locks = new ArrayList<>();
    List<String> shafts = new ArrayList<>(List.of(facts.crank()));
    shafts.addAll(facts.camshafts());
    locks.add(
        "Locked in their places, tools in by hand: %s.".formatted(Sentences.list(shafts, "and")));
    List<String> plungers =
        facts.chains().stream()
            .flatMap(c -> c.chain().tensioner().map(t -> held(c, t)).stream())
            .toList();
    if (!plungers.isEmpty()) {
      locks.add("Held back by a tool: %s.".formatted(Sentences.list(plungers, "and")));
    }
    locks.add(
        "Both runs hanging tight from the first bolt to the last; the timing well plugged; every phaser at rest.");
    locks.addAll(dowels(facts));
    facts.chains().stream()
        .map(
            c ->
                "Paint is no timing mark once the engine has turned: the same links meet the marks of chain %s again after %s crank turns."
                    .formatted(c.name(), Realign.crankTurns(c.chain(), facts.drive().gearing())))
        .limit(1)
        .forEach(locks::add);
    return locks;
  }

  private static String held(ChainFacts chain, Tensioner tensioner) {
    return tensioner.name()
        + chain
            .hold()
            .map(h -> " (fully back: %s of slack)".formatted(Numbers.mm(Math.max(0, h.slackMm()))))
            .orElse("");
  }

  /** How far is too far to meet a dowel, one line for all camshafts with the same limit. */
  private static List<String> dowels(Facts facts) {
    Map<String, List<String>> byLimit = new LinkedHashMap<>();
    facts
        .camshaftChains()
        .forEach(
            c ->
                c.camshafts()
                    .forEach(
                        s ->
                            limit(c, s)
                                .ifPresent(
                                    mm ->
                                        byLimit
                                            .computeIfAbsent(mm, x -> new ArrayList<>())
                                            .add(s))));
    return byLimit.entrySet().stream()
        .map(
            e ->
                "Turned more than %s of its degrees to meet dowel or key: wrong tooth, off again (%s)."
                    .formatted(e.getKey(), Sentences.list(e.getValue(), "and")))
        .toList();
  }

  private static Optional<String> limit(ChainFacts chain, String shaft) {
    Sprocket sprocket = chain.chain().sprocketOn(shaft).orElseThrow();
    if (sprocket.joint() == Joint.FRICTION) {
      return Optional.empty();
    }
    double limit =
        chain
            .hold()
            .map(h -> DowelRule.of(h, shaft).limitDegrees())
            .orElse(180.0 / sprocket.teeth());
    return Optional.of(Numbers.fixed(limit, 1));
  }

  private static List<String> blanks(Facts facts) {
    List<String> blanks = new ArrayList<>(List.of("Engine, date, name", "Maker's procedure"));
    List<String> plungers =
        facts.chains().stream()
            .flatMap(c -> c.chain().tensioner().map(Tensioner::name).stream())
            .toList();
    if (!plungers.isEmpty()) {
      blanks.add("Plunger before / after, mm: " + String.join(", ", plungers));
    }
    blanks.add("Tools and bolts in / out");
    blanks.add("Torque and angle, from the maker's procedure");
    blanks.add("Two turns by hand, free all the way; locking tools in again");
    return blanks;
  }
}
