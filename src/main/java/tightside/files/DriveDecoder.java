package tightside.files;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import tightside.drive.Chain;
import tightside.drive.ChainKind;
import tightside.drive.Limits;
import tightside.drive.Role;
import tightside.drive.RouteEntry;
import tightside.drive.Shaft;
import tightside.engine.Phaser;
import tightside.geometry.Rotation;

/** Reads shafts and chains. */
final class DriveDecoder {

  /** The parts of a drive, before it is known whether they hang together. */
  record Parts(
      String name,
      String about,
      Rotation rotation,
      List<Shaft> shafts,
      Map<String, Phaser> phasers,
      List<Chain> chains) {}

  private record ShaftEntry(Shaft shaft, Optional<Phaser> phaser) {}

  private DriveDecoder() {}

  /** The parts, if all of them could be read. */
  static Optional<Parts> parts(SectionReader root) {
    Optional<String> name = root.need("name", Words.title());
    Optional<String> about = root.may("about", Words.prose());
    Optional<Rotation> rotation = root.need("rotation", Words.choice(Rotation.values()));
    Optional<List<ShaftEntry>> shafts = root.need("shafts", SectionReader.named("shaft", shaft()));
    Optional<List<Chain>> chains = root.need("chains", SectionReader.named("chain", chain()));
    if (name.isEmpty() || rotation.isEmpty() || shafts.isEmpty() || chains.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new Parts(
            name.get(),
            about.orElse(""),
            rotation.get(),
            shafts.get().stream().map(ShaftEntry::shaft).toList(),
            phasers(shafts.get()),
            chains.get()));
  }

  private static Map<String, Phaser> phasers(List<ShaftEntry> shafts) {
    Map<String, Phaser> phasers = new LinkedHashMap<>();
    for (ShaftEntry entry : shafts) {
      entry.phaser().ifPresent(phaser -> phasers.put(entry.shaft().name(), phaser));
    }
    return phasers;
  }

  private static Decoder<ShaftEntry> shaft() {
    return SectionReader.section(
        s -> {
          Optional<Role> role = s.need("role", Words.choice(Role.values()));
          if (!s.has("at")) {
            s.complain(Fault.SHAFT_WITHOUT_PLACE, Map.of("shaft", s.what()));
          }
          Optional<Vector2D> at = s.may("at", Lists.point());
          Optional<Phaser> phaser = s.may("phaser", phaser());
          if (s.has("phaser") && role.isPresent() && role.get() != Role.CAMSHAFT) {
            s.complainAt(
                "phaser",
                Fault.PHASER_ASTRAY,
                Map.of("shaft", s.what(), "role", Terms.of(role.get())));
          }
          return s.built(() -> new ShaftEntry(new Shaft(s.what(), role.get(), at.get()), phaser));
        });
  }

  private static Decoder<Phaser> phaser() {
    return SectionReader.section(
        s -> {
          Optional<Double> travel = s.need("travel", Numbers.number(Limits.PHASER_TRAVEL_DEGREES));
          Optional<Phaser.Rest> rest = s.need("rest", Words.choice(Phaser.Rest.values()));
          return s.built(() -> new Phaser(travel.get(), rest.get()));
        });
  }

  private static Decoder<Chain> chain() {
    return SectionReader.section(
        s -> {
          Optional<ChainKind> kind = s.need("kind", Words.choice(ChainKind.values()));
          Optional<Double> pitch = s.need("pitch", Numbers.number(Limits.PITCH_MM));
          Optional<Integer> links = s.need("links", Numbers.count(Limits.LINKS));
          Optional<Double> plate = s.need("plate-height", Numbers.number(Limits.PLATE_HEIGHT_MM));
          Optional<Double> roller =
              s.need("roller-diameter", Numbers.number(Limits.ROLLER_DIAMETER_MM));
          Optional<List<RouteEntry>> route = s.need("route", Lists.some(RouteDecoder.entry()));
          if (s.has("counts")) {
            s.complainAt("counts", Fault.COUNTS_WITHOUT_PLACE, Map.of());
          }
          return s.built(
              () ->
                  new Chain(
                      s.what(),
                      kind.get(),
                      pitch.get(),
                      links.get(),
                      plate.get(),
                      roller.get(),
                      route.get()));
        });
  }
}
