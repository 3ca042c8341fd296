package tightside.files;

import java.util.ArrayList;
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
    for (SectionReader s : SectionReader.named(root.need("shafts"), "shaft", Limits.SHAFTS)) {
      shaft(s, shafts, phasers);
    }
    boolean allShafts = root.errors() == before;
    List<Chain> chains = new ArrayList<>();
    for (SectionReader s : SectionReader.named(root.need("chains"), "chain", Limits.CHAINS)) {
      chain(s, chains);
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
    Optional<Value> place = s.may("at");
    if (place.isEmpty()) {
      s.complain(Fault.SHAFT_WITHOUT_PLACE, Map.of("shaft", s.name()));
    }
    Optional<Vector2D> at = Lists.point(place);
    Optional<Value> carried = s.may("phaser");
    if (carried.isPresent() && role.isPresent() && role.get() != Role.CAMSHAFT) {
      Map<String, Object> facts = Map.of("shaft", s.name(), "role", Terms.of(role.get()));
      carried.get().complainOfKey(Fault.PHASER_ASTRAY, facts);
    }
    Optional<Phaser> phaser = phaser(carried);
    if (s.sound()) {
      shafts.add(new Shaft(s.name(), role.get(), at.get()));
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

  private static void chain(SectionReader s, List<Chain> chains) {
    Optional<ChainKind> kind = Words.choice(s.need("kind"), ChainKind.values());
    Optional<Double> pitch = Numbers.number(s.need("pitch"), Limits.PITCH_MM);
    Optional<Integer> links = Numbers.count(s.need("links"), Limits.LINKS);
    Optional<Double> plate = Numbers.number(s.need("plate-height"), Limits.PLATE_HEIGHT_MM);
    Optional<Double> roller = Numbers.number(s.need("roller-diameter"), Limits.ROLLER_DIAMETER_MM);
    List<RouteEntry> route = new ArrayList<>();
    for (SectionReader entry : Lists.sections(s.need("route"), Limits.ROUTE)) {
      Optional<RouteEntry> read = RouteDecoder.entry(entry);
      if (read.isPresent()) {
        route.add(read.get());
      }
    }
    if (s.keys().contains("counts")) {
      s.may("counts").get().complainOfKey(Fault.COUNTS_WITHOUT_PLACE, Map.of());
    }
    if (s.sound()) {
      chains.add(
          new Chain(
              s.name(), kind.get(), pitch.get(), links.get(), plate.get(), roller.get(), route));
    }
  }
}
