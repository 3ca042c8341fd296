package tightside.survey;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import tightside.drive.Arm;
import tightside.drive.Chain;
import tightside.drive.Drive;
import tightside.drive.Face;
import tightside.drive.Gearing;
import tightside.drive.Guide;
import tightside.drive.Limits;
import tightside.drive.Plunger;
import tightside.drive.Role;
import tightside.drive.RouteEntry;
import tightside.drive.Shaft;
import tightside.drive.Shoe;
import tightside.drive.Sprocket;
import tightside.geometry.Bearing;
import tightside.geometry.FaceCurve;
import tightside.geometry.Outline;
import tightside.geometry.TautString;

/**
 * What is unknown of a drive, and the site that values for it make.
 *
 * <p>The crankshaft stays where it is drawn and the first camshaft on its bearing from there, so
 * that the drive can neither wander nor turn; which of two mirror images is meant the drawing says.
 * The middle of a face is unknown only across its chord: along the chord it may be anywhere.
 */
final class Unknowns {

  private final Drive drive;
  private final Gearing gearing;
  private final String datum;
  private final List<Unknown> all = new ArrayList<>();
  private final Map<String, Integer> places = new HashMap<>();
  private final Map<String, int[]> bearing = new HashMap<>();
  private final Map<String, Memo<List<Double>, Laid>> laid = new HashMap<>();
  private final Map<String, Memo<List<Outline>, Optional<TautString>>> strings = new HashMap<>();
  private final List<String> keys = new ArrayList<>();

  /** A chain and its path for the values that bear on it; most steps leave most chains alone. */
  private record Laid(Chain chain, Optional<SiteChain> path) {}

  Unknowns(Drive drive) {
    this.drive = drive;
    gearing = drive.gearing();
    datum = datum(drive);
    drive.shafts().forEach(this::shaft);
    drive.chains().forEach(this::chain);
    drive.chains().forEach(c -> bearing.put(c.name(), bearing(c)));
  }

  private int[] bearing(Chain chain) {
    return places.entrySet().stream()
        .filter(e -> bears(e.getKey(), chain))
        .mapToInt(Map.Entry::getValue)
        .toArray();
  }

  private static boolean bears(String key, Chain chain) {
    return key.contains("/")
        ? key.startsWith(chain.name() + "/")
        : chain.sprocketOn(key.replaceFirst(" [xy]$", "")).isPresent()
            || chain.sprocketOn(key).isPresent();
  }

  /** The shaft whose bearing from the crankshaft is kept: the first camshaft. */
  static String datum(Drive drive) {
    return drive.shafts().stream()
        .filter(s -> s.role() == Role.CAMSHAFT)
        .findFirst()
        .or(() -> drive.shafts().stream().filter(s -> s.role() != Role.CRANKSHAFT).findFirst())
        .orElse(drive.crankshaft())
        .name();
  }

  List<Unknown> all() {
    return all;
  }

  private void add(String key, Unknown unknown) {
    places.put(key, all.size());
    keys.add(key);
    all.add(unknown);
  }

  private void point(String key, String name, Vector2D at) {
    add(key + " x", Unknown.length(name + ", x", at.getX()));
    add(key + " y", Unknown.length(name + ", y", at.getY()));
  }

  private void shaft(Shaft shaft) {
    if (shaft.name().equals(drive.crankshaft().name())) {
      return;
    }
    if (shaft.name().equals(datum)) {
      double apart = drive.crankshaft().at().distance(shaft.at());
      add(shaft.name(), Unknown.length("distance of " + shaft.name(), apart));
    } else {
      point(shaft.name(), shaft.name(), shaft.at());
    }
  }

  private void chain(Chain chain) {
    String of = chain.name() + "/";
    add(of + "pitch", Unknown.bounded("pitch of " + chain.name(), chain.pitchMm()));
    chain
        .tensioner()
        .ifPresent(
            t ->
                add(
                    of + "extension",
                    Unknown.bounded("extension of " + t.name(), t.plunger().travelMm() / 2)));
    for (RouteEntry entry : chain.route()) {
      if (entry instanceof Sprocket s) {
        s.mark()
            .ifPresent(
                m -> add(of + s.shaft(), Unknown.angle("mark of " + s.shaft(), m.degrees())));
      } else {
        face(of, (Face) entry);
      }
    }
  }

  private void face(String of, Face face) {
    String key = of + face.name();
    point(key + ".start", face.name() + ".start", face.curve().start());
    point(key + ".end", face.name() + ".end", face.curve().end());
    add(key + ".bulge", Unknown.length("bulge of " + face.name(), face.curve().bulgeMm()));
    if (face instanceof Arm arm) {
      point(key + ".pivot", face.name() + ".pivot", arm.pivot());
      point(key + ".pad", face.name() + ".pad", arm.pad());
    }
  }

  String key(int unknown) {
    return keys.get(unknown);
  }

  /** The place of an unknown that bears this key; negative if there is none. */
  int place(String key) {
    return places.getOrDefault(key, -1);
  }

  /** The site for some values. */
  Site at(double[] values) {
    Map<String, Double> extension = new HashMap<>();
    for (Chain chain : drive.chains()) {
      int place = place(chain.name() + "/extension");
      if (place >= 0) {
        extension.put(chain.name(), values[place]);
      }
    }
    List<Shaft> shafts = new ArrayList<>();
    drive.shafts().forEach(s -> shafts.add(shaft(values, s)));
    Site bare = new Site(shafts, List.of(), gearing, extension, Map.of());
    List<Chain> chains = new ArrayList<>();
    Map<String, Optional<SiteChain>> paths = new HashMap<>();
    for (Chain chain : drive.chains()) {
      Laid found = laid(bare, chain, values);
      chains.add(found.chain());
      paths.put(chain.name(), found.path());
    }
    return new Site(shafts, chains, gearing, extension, paths);
  }

  private Laid laid(Site bare, Chain chain, double[] values) {
    List<Double> bear = new ArrayList<>();
    for (int place : bearing.get(chain.name())) {
      bear.add(values[place]);
    }
    return laid.computeIfAbsent(chain.name(), name -> new Memo<>())
        .of(
            bear,
            asked -> {
              Chain made = chain(values, chain);
              return new Laid(made, bare.laid(made, this::string));
            });
  }

  /** The string from one outline to another; most steps leave most of a chain's as they are. */
  private Optional<TautString> string(String run, List<Outline> met) {
    int last = met.size() - 1;
    return strings
        .computeIfAbsent(run, r -> new Memo<>())
        .of(met, m -> TautString.between(m.get(0), m.get(last), m.subList(1, last)));
  }

  private Chain chain(double[] values, Chain chain) {
    String of = chain.name() + "/";
    List<RouteEntry> route = new ArrayList<>();
    chain.route().forEach(entry -> route.add(entry(values, of, entry)));
    double pitch =
        Math.max(
            Limits.PITCH_MM.least(), Math.min(Limits.PITCH_MM.most(), value(values, of + "pitch")));
    return new Chain(
        chain.name(),
        chain.kind(),
        pitch,
        chain.links(),
        chain.plateHeightMm(),
        chain.rollerDiameterMm(),
        route);
  }

  private double value(double[] values, String key) {
    return values[places.get(key)];
  }

  private Vector2D point(double[] values, String key) {
    return Vector2D.of(value(values, key + " x"), value(values, key + " y"));
  }

  private Shaft shaft(double[] values, Shaft shaft) {
    if (shaft.name().equals(drive.crankshaft().name())) {
      return shaft;
    }
    Vector2D crank = drive.crankshaft().at();
    Vector2D at =
        shaft.name().equals(datum)
            ? crank.add(crank.directionTo(shaft.at()).multiply(value(values, shaft.name())))
            : point(values, shaft.name());
    return new Shaft(shaft.name(), shaft.role(), at);
  }

  private RouteEntry entry(double[] values, String of, RouteEntry entry) {
    if (entry instanceof Sprocket s) {
      return s.mark().isEmpty()
          ? s
          : s.withMark(Optional.of(new Bearing(value(values, of + s.shaft()))));
    }
    Face face = (Face) entry;
    FaceCurve curve = curve(values, of + face.name(), face.curve());
    if (face instanceof Guide g) {
      return new Guide(g.name(), g.contact(), curve, g.seen());
    }
    if (face instanceof Shoe s) {
      return new Shoe(s.name(), s.contact(), curve, s.plunger(), s.seen());
    }
    Arm arm = (Arm) face;
    Vector2D pivot = point(values, of + arm.name() + ".pivot");
    Vector2D pad = point(values, of + arm.name() + ".pad");
    Plunger plunger = arm.plunger();
    return new Arm(arm.name(), arm.contact(), pivot, curve, pad, plunger, arm.seen());
  }

  /** The face with its middle as far along the chord as it is drawn. */
  private FaceCurve curve(double[] values, String key, FaceCurve drawn) {
    Vector2D start = point(values, key + ".start");
    Vector2D end = point(values, key + ".end");
    Vector2D was = drawn.start().vectorTo(drawn.end());
    double along = drawn.start().vectorTo(drawn.middle()).dot(was) / was.normSq();
    Vector2D chord = start.vectorTo(end);
    Vector2D left = Vector2D.of(-chord.getY(), chord.getX()).normalize();
    double bulge = value(values, key + ".bulge");
    Vector2D middle = start.add(chord.multiply(along)).add(left.multiply(bulge));
    return new FaceCurve(start, middle, end);
  }
}
