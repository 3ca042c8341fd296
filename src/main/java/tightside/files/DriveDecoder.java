package tightside.files;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import tightside.drive.Chain;
import tightside.drive.ChainKind;
import tightside.drive.ChainSize;
import tightside.drive.Limits;
import tightside.drive.Role;
import tightside.drive.RouteEntry;
import tightside.drive.Shaft;
import tightside.engine.Phaser;
import tightside.geometry.Rotation;

/** Reads shafts and chains. */
final class DriveDecoder {

  /**
   * The parts of a drive, before it is known whether they hang together.
   *
   * @param shafts nothing if not all of them could be read
   * @param phasers by the shaft that carries one
   * @param chains those that could be read
   */
  record Parts(
      Optional<String> name,
      String about,
      Optional<Rotation> rotation,
      Optional<List<Shaft>> shafts,
      Map<String, Phaser> phasers,
      List<Chain> chains) {}

  private DriveDecoder() {}

  static Parts parts(SectionReader root) {
    Optional<String> name = Words.title(root.need("name"));
    Optional<String> about = Words.prose(root.may("about"));
    Optional<Rotation> rotation = Words.choice(root.need("rotation"), Rotation.values());
    List<Shaft> shafts = new ArrayList<>();
    Map<String, Phaser> phasers = new LinkedHashMap<>();
    int before = root.errors();
    boolean placed = false;
    for (SectionReader s : SectionReader.named(root.need("shafts"), "shaft", Limits.SHAFTS)) {
      placed |= s.keys().contains("at");
      shaft(s, shafts, phasers);
    }
    boolean allShafts = root.errors() == before;
    List<Chain> chains = new ArrayList<>();
    List<SectionReader> sections = SectionReader.named(root.need("chains"), "chain", Limits.CHAINS);
    boolean counted = !placed || sections.stream().anyMatch(s -> s.keys().contains("counts"));
    for (SectionReader s : sections) {
      chain(s, counted, chains);
    }
    return new Parts(
        name,
        about.orElse(""),
        rotation,
        allShafts ? Optional.of(shafts) : Optional.empty(),
        phasers,
        chains);
  }

  private static void shaft(SectionReader s, List<Shaft> shafts, Map<String, Phaser> phasers) {
    Optional<Role> role = Words.choice(s.need("role"), Role.values());
    Optional<Vector2D> at = Lists.point(s.may("at"));
    Optional<Value> carried = s.may("phaser");
    if (carried.isPresent() && role.isPresent() && role.get() != Role.CAMSHAFT) {
      Map<String, Object> facts = Map.of("shaft", s.name(), "role", Terms.of(role.get()));
      carried.get().complainOfKey(Fault.PHASER_ASTRAY, facts);
    }
    Optional<Phaser> phaser = phaser(carried);
    if (s.sound()) {
      shafts.add(new Shaft(s.name(), role.get(), at));
      if (phaser.isPresent()) {
        phasers.put(s.name(), phaser.get());
      }
    }
  }

  private static Optional<Phaser> phaser(Optional<Value> value) {
    Optional<SectionReader> section = SectionReader.of(value);
    if (section.isEmpty()) {
      return Optional.empty();
    }
    SectionReader s = section.get();
    Optional<Double> travel = Numbers.number(s.need("travel"), Limits.PHASER_TRAVEL_DEGREES);
    Optional<Phaser.Rest> rest = Words.choice(s.need("rest"), Phaser.Rest.values());
    return s.sound() ? Optional.of(new Phaser(travel.get(), rest.get())) : Optional.empty();
  }

  /**
   * @param counted whether the drive says that it is counted only, or says no places; otherwise the
   *     chain needs all that a path needs
   */
  private static void chain(SectionReader s, boolean counted, List<Chain> chains) {
    ChainSize size = size(s, !counted);
    Optional<Integer> links = Numbers.count(s.need("links"), Limits.LINKS);
    Optional<Value> given = s.may("counts");
    List<Integer> counts = Lists.counts(given, Limits.COUNT, Limits.ROUTE);
    List<SectionReader> entries = Lists.sections(s.need("route"), Limits.ROUTE);
    boolean bearings = entries.stream().anyMatch(RouteDecoder::givesBearing);
    RouteDecoder decoder = new RouteDecoder(!counted, counted && !bearings);
    List<RouteEntry> route = new ArrayList<>();
    for (SectionReader entry : entries) {
      Optional<RouteEntry> read = decoder.entry(entry);
      if (read.isPresent()) {
        route.add(read.get());
      }
    }
    if (s.sound()) {
      chains.add(
          new Chain(
              s.name(),
              size,
              links.get(),
              route,
              given.isPresent() ? Optional.of(counts) : Optional.empty()));
    }
  }

  /**
   * @param whole whether all of it must be given
   */
  private static ChainSize size(SectionReader s, boolean whole) {
    BiFunction<SectionReader, String, Optional<Value>> key =
        whole ? SectionReader::need : SectionReader::may;
    return new ChainSize(
        Words.choice(key.apply(s, "kind"), ChainKind.values()),
        Numbers.primitive(Numbers.number(key.apply(s, "pitch"), Limits.PITCH_MM)),
        Numbers.primitive(Numbers.number(key.apply(s, "plate-height"), Limits.PLATE_HEIGHT_MM)),
        Numbers.primitive(
            Numbers.number(key.apply(s, "roller-diameter"), Limits.ROLLER_DIAMETER_MM)));
  }
}
