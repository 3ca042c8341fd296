package tightside.drive;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;
import tightside.drive.Finding.Id;
import tightside.geometry.Rotation;

/** Whether shafts and chains make a drive at all: what has to hold before a chain can be laid. */
public final class Audit {

  private Audit() {}

  /**
   * All that is wrong with the way the parts hang together; empty if they make a drive.
   *
   * <p>Later questions are asked only where the earlier ones leave them a meaning.
   */
  public static List<Finding> of(Rotation rotation, List<Shaft> shafts, List<Chain> chains) {
    List<Finding> findings = new ArrayList<>(names(shafts, chains));
    for (Chain chain : chains) {
      findings.addAll(chain(chain));
      findings.addAll(route(chain, shafts));
    }
    findings.addAll(CountAudit.of(shafts, chains));
    if (findings.isEmpty()) {
      findings.addAll(gearing(rotation, shafts, chains));
    }
    boolean counted = chains.stream().anyMatch(Chain::countedOnly);
    if (!counted && findings.stream().noneMatch(f -> f.id() != Id.CAMSHAFT_SPEED)) {
      findings.addAll(FaceAudit.of(rotation, shafts, chains));
    }
    return findings;
  }

  private static List<Finding> names(List<Shaft> shafts, List<Chain> chains) {
    List<Finding> findings = new ArrayList<>();
    List<Shaft> cranks = shafts.stream().filter(s -> s.role() == Role.CRANKSHAFT).toList();
    if (cranks.isEmpty()) {
      findings.add(new Finding(Id.NO_CRANKSHAFT, new Part(List.of("shafts")), Map.of()));
    }
    for (Shaft second : cranks.stream().skip(1).toList()) {
      findings.add(
          new Finding(
              Id.SEVERAL_CRANKSHAFTS,
              Part.shaft(second.name()),
              Map.of("shaft", second.name(), "first", cranks.get(0).name())));
    }
    if (chains.isEmpty()) {
      findings.add(new Finding(Id.NO_CHAIN, new Part(List.of("chains")), Map.of()));
    }
    Set<String> met = new HashSet<>();
    Stream.concat(
            shafts.stream().map(s -> Part.shaft(s.name())),
            chains.stream().map(c -> Part.chain(c.name())))
        .filter(part -> !met.add(part.toString()))
        .map(part -> new Finding(Id.SAME_NAME, part, Map.of("name", part.steps().get(1))))
        .forEach(findings::add);
    return findings;
  }

  private static List<Finding> route(Chain chain, List<Shaft> shafts) {
    List<Finding> findings = new ArrayList<>();
    Set<String> known = new LinkedHashSet<>(shafts.stream().map(Shaft::name).toList());
    Set<String> met = new HashSet<>();
    Set<String> faces = new HashSet<>();
    int tensioners = 0;
    for (int place = 0; place < chain.route().size(); place++) {
      Part part = Part.route(chain.name(), place);
      RouteEntry entry = chain.route().get(place);
      if (entry instanceof Sprocket sprocket) {
        if (!known.contains(sprocket.shaft())) {
          findings.add(
              new Finding(
                  Id.UNKNOWN_SHAFT,
                  part.at("sprocket"),
                  Map.of("shaft", sprocket.shaft(), "known", List.copyOf(known))));
        } else if (!met.add(sprocket.shaft())) {
          findings.add(
              new Finding(
                  Id.SHAFT_TWICE_ON_CHAIN,
                  part.at("sprocket"),
                  Map.of("shaft", sprocket.shaft(), "chain", chain.name())));
        }
      } else if (entry.tensions() && ++tensioners == 2) {
        findings.add(new Finding(Id.TWO_TENSIONERS, part, Map.of("chain", chain.name())));
      }
      Optional<String> name = faceName(entry);
      if (name.isPresent() && !faces.add(name.get())) {
        findings.add(new Finding(Id.SAME_NAME, part.at(step(entry)), Map.of("name", name.get())));
      }
    }
    if (chain.route().isEmpty() || !(chain.route().get(0) instanceof Sprocket)) {
      findings.add(
          new Finding(
              Id.ROUTE_STARTS_WITHOUT_SPROCKET,
              Part.chain(chain.name()).at("route"),
              Map.of("chain", chain.name())));
    }
    if (chain.sprocketPlaces().size() < 2) {
      findings.add(
          new Finding(
              Id.TOO_FEW_SPROCKETS,
              Part.chain(chain.name()).at("route"),
              Map.of("chain", chain.name(), "count", chain.sprocketPlaces().size())));
    }
    return findings;
  }

  /** The word under which a face's name stands. */
  private static String step(RouteEntry face) {
    if (face instanceof Listed listed) {
      return listed.kind().name().toLowerCase(Locale.ROOT);
    }
    return face instanceof Guide ? "guide" : face instanceof Arm ? "arm" : "shoe";
  }

  private static Optional<String> faceName(RouteEntry entry) {
    if (entry instanceof Listed listed) {
      return Optional.of(listed.name());
    }
    return entry instanceof Face face ? Optional.of(face.name()) : Optional.empty();
  }

  private static List<Finding> chain(Chain chain) {
    ChainSize size = chain.size();
    if (size.pitchMm().isEmpty() || size.rollerDiameterMm().isEmpty()) {
      return List.of();
    }
    return chain.rollerDiameterMm() < chain.pitchMm()
        ? List.of()
        : List.of(
            new Finding(
                Id.ROLLERS_TOUCH,
                Part.chain(chain.name()).at("roller-diameter"),
                Map.of("diameter", chain.rollerDiameterMm(), "pitch", chain.pitchMm())));
  }

  private static List<Finding> gearing(Rotation rotation, List<Shaft> shafts, List<Chain> chains) {
    List<Finding> findings = new ArrayList<>();
    String crank =
        shafts.stream().filter(s -> s.role() == Role.CRANKSHAFT).findFirst().orElseThrow().name();
    Gearing gearing = Gearing.from(crank, rotation, chains);
    for (Gearing.Dispute dispute : gearing.disputes()) {
      Part part = Part.route(dispute.chain(), dispute.place());
      findings.add(
          dispute
              .first()
              .map(
                  first ->
                      new Finding(
                          Id.SHAFT_DRIVEN_TWICE,
                          part,
                          Map.of(
                              "shaft", dispute.shaft(), "first", first, "chain", dispute.chain())))
              .orElseGet(
                  () ->
                      new Finding(
                          Id.CRANK_NOT_DRIVING,
                          part,
                          Map.of("shaft", dispute.shaft(), "chain", dispute.chain()))));
    }
    findings.addAll(StageAudit.of(crank, gearing, shafts, chains));
    BigFraction half = BigFraction.of(1, 2);
    for (Shaft shaft : shafts) {
      Gearing.Turning turning = gearing.turns().get(shaft.name());
      if (shaft.role() == Role.CAMSHAFT
          && turning != null
          && !turning.perCrankTurn().equals(half)) {
        findings.add(
            new Finding(
                Id.CAMSHAFT_SPEED,
                Part.shaft(shaft.name()),
                Map.of("shaft", shaft.name(), "turns", turning.perCrankTurn().toString())));
      }
    }
    return findings;
  }
}
