package tightside.drive;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import tightside.drive.Finding.Id;

/** Why chains or shafts are not driven from the crankshaft: one finding for each root cause. */
final class StageAudit {

  private final Gearing gearing;
  private final List<Chain> idle;
  private final List<Finding> findings = new ArrayList<>();

  /** Shafts that stand still for a reason already told, or told of another shaft. */
  private final Set<String> explained = new HashSet<>();

  private StageAudit(Gearing gearing, List<Chain> idle) {
    this.gearing = gearing;
    this.idle = idle;
  }

  static List<Finding> of(String crank, Gearing gearing, List<Shaft> shafts, List<Chain> chains) {
    List<Chain> idle =
        chains.stream().filter(c -> !gearing.travel().containsKey(c.name())).toList();
    StageAudit audit = new StageAudit(gearing, idle);
    for (Chain chain : idle) {
      audit.follow(chain, crank);
    }
    shafts.forEach(audit::look);
    return audit.findings;
  }

  private void follow(Chain chain, String crank) {
    String driver = chain.driver().shaft();
    chain.sprockets().stream().skip(1).map(Sprocket::shaft).forEach(explained::add);
    if (chain.sprocketOn(crank).isPresent()) {
      explained.add(driver);
      findings.add(
          new Finding(
              Id.CRANK_NOT_DRIVING,
              Part.route(chain.name(), placeOf(chain, crank)),
              Map.of("shaft", crank, "chain", chain.name())));
    } else if (drivesItself(chain)) {
      findings.add(
          new Finding(
              Id.STAGE_LOOP,
              Part.route(chain.name(), 0).at("sprocket"),
              Map.of("chain", chain.name(), "shaft", driver)));
    }
  }

  private static int placeOf(Chain chain, String shaft) {
    return IntStream.range(0, chain.route().size())
        .filter(i -> chain.route().get(i) instanceof Sprocket s && s.shaft().equals(shaft))
        .findFirst()
        .orElseThrow();
  }

  /** Whether following the chains back from driver to driver leads to the same chain again. */
  private boolean drivesItself(Chain start) {
    Set<Chain> met = new HashSet<>();
    Deque<Chain> ahead = new ArrayDeque<>(driving(start));
    while (!ahead.isEmpty()) {
      Chain chain = ahead.pop();
      if (chain.equals(start)) {
        return true;
      }
      if (met.add(chain)) {
        ahead.addAll(driving(chain));
      }
    }
    return false;
  }

  /** The idle chains that would drive the driver of a chain. */
  private List<Chain> driving(Chain chain) {
    String driver = chain.driver().shaft();
    return idle.stream()
        .filter(c -> !c.driver().shaft().equals(driver) && c.sprocketOn(driver).isPresent())
        .toList();
  }

  private void look(Shaft shaft) {
    if (!gearing.turns().containsKey(shaft.name()) && !explained.contains(shaft.name())) {
      findings.add(
          new Finding(Id.SHAFT_UNREACHED, Part.shaft(shaft.name()), Map.of("shaft", shaft.name())));
    }
  }
}
