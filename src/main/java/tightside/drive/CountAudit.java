package tightside.drive;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tightside.drive.Finding.Id;

/**
 * Whether a drive says where everything stands, or how many links lie between its marks: one of the
 * two, and whole.
 */
final class CountAudit {

  private CountAudit() {}

  static List<Finding> of(List<Shaft> shafts, List<Chain> chains) {
    boolean counted = chains.stream().anyMatch(Chain::countedOnly);
    Optional<Shaft> placed = shafts.stream().filter(s -> s.place().isPresent()).findFirst();
    List<Shaft> unplaced = shafts.stream().filter(s -> s.place().isEmpty()).toList();
    if (placed.isPresent() && !unplaced.isEmpty()) {
      return unplaced.stream().map(shaft -> placeMissing(shaft, placed.get())).toList();
    }
    if (placed.isEmpty() && !counted && !shafts.isEmpty()) {
      return List.of(new Finding(Id.PLACES_MISSING, new Part(List.of("shafts")), Map.of()));
    }
    return chains.stream()
        .flatMap(chain -> (placed.isPresent() ? placed(chain) : counted(chain)).stream())
        .toList();
  }

  private static Finding placeMissing(Shaft shaft, Shaft placed) {
    return new Finding(
        Id.SHAFT_WITHOUT_PLACE,
        Part.shaft(shaft.name()),
        Map.of("shaft", shaft.name(), "placed", placed.name()));
  }

  /** What a chain of a drive with geometry has to be without, and what it needs. */
  private static List<Finding> placed(Chain chain) {
    List<Finding> findings = new ArrayList<>();
    Part part = Part.chain(chain.name());
    Map<String, Object> named = Map.of("chain", chain.name());
    if (chain.countedOnly()) {
      findings.add(new Finding(Id.COUNTS_BESIDE_PLACES, part.at("counts"), named));
    }
    for (int place = 0; place < chain.route().size(); place++) {
      Part entry = Part.route(chain.name(), place);
      if (chain.route().get(place) instanceof Sprocket sprocket) {
        Map<String, Object> facts = Map.of("shaft", sprocket.shaft());
        if (sprocket.marked() && sprocket.mark().isEmpty()) {
          findings.add(new Finding(Id.MARK_WITHOUT_BEARING, entry.at("mark"), facts));
        }
        if (sprocket.straightMm().isPresent()) {
          findings.add(new Finding(Id.STRAIGHT_BESIDE_PLACES, entry.at("straight"), facts));
        }
      }
    }
    return findings;
  }

  private static List<Finding> counted(Chain chain) {
    Part part = Part.chain(chain.name());
    if (chain.counts().isEmpty()) {
      return List.of(new Finding(Id.COUNTS_MISSING, part, Map.of("chain", chain.name())));
    }
    List<Integer> counts = chain.counts().get();
    long marked = chain.sprockets().stream().filter(Sprocket::marked).count();
    if (counts.size() != marked || marked == 0) {
      return List.of(
          new Finding(
              Id.COUNTS_NUMBER,
              part.at("counts"),
              Map.of("chain", chain.name(), "count", counts.size(), "marked", marked)));
    }
    long sum = counts.stream().mapToLong(Integer::longValue).sum();
    return sum == chain.links()
        ? List.of()
        : List.of(
            new Finding(
                Id.COUNTS_SUM,
                part.at("counts"),
                Map.of("chain", chain.name(), "sum", sum, "links", chain.links())));
  }
}
