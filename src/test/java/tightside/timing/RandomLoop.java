package tightside.timing;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import tightside.drive.Chain;
import tightside.drive.ChainKind;
import tightside.drive.Contact;
import tightside.drive.Drive;
import tightside.drive.Plunger;
import tightside.drive.Role;
import tightside.drive.RouteEntry;
import tightside.drive.Shaft;
import tightside.drive.Sprocket;
import tightside.drive.Tensioner;
import tightside.geometry.Bearing;
import tightside.geometry.Rotation;
import tightside.second.Fit;
import tightside.second.Line;
import tightside.second.Run;
import tightside.second.SecondSolver;

/** One chain of a {@linkplain RandomDrives random drive}, drawn step by step. */
final class RandomLoop {

  /** A chain that fits, and the shafts that it drives, the leading one first. */
  record Drawn(Chain chain, List<Shaft> driven) {}

  private static final double LEAST_WRAP_DEGREES = 8;

  private final Random random;
  private final String name;
  private final Rotation travel;
  private final double pitchMm;
  private final double plateMm;
  private final List<Shaft> shafts = new ArrayList<>();

  RandomLoop(Random random, String name, Rotation travel, double pitchMm) {
    this.random = random;
    this.name = name;
    this.travel = travel;
    this.pitchMm = pitchMm;
    plateMm = pitchMm * (0.8 + 0.2 * random.nextDouble());
  }

  private double between(double low, double high) {
    return low + (high - low) * random.nextDouble();
  }

  /**
   * Draws once; nothing where it does not fit.
   *
   * @param driver its sprocket stands at the foot of the loop
   * @param leadTeeth of the leading shaft, and of every other that is for the same
   */
  Optional<Drawn> draw(Shaft driver, int driverTeeth, Role lead, int leadTeeth) {
    shafts.add(driver);
    List<Sprocket> inside = new ArrayList<>(List.of(bare(driver.name(), driverTeeth)));
    inside.addAll(oval(driver, lead, leadTeeth));
    try {
      return line(chain(List.copyOf(inside), 100), 0)
          .map(line -> chain(dressed(inside, line), 100))
          .flatMap(this::linked)
          .flatMap(this::marked)
          .map(chain -> new Drawn(chain, driven(lead)));
    } catch (IllegalArgumentException refused) {
      return Optional.empty();
    }
  }

  private List<Shaft> driven(Role lead) {
    List<Shaft> driven = new ArrayList<>(shafts.subList(1, shafts.size()));
    driven.sort((a, b) -> Boolean.compare(b.role() == lead, a.role() == lead));
    return driven;
  }

  private static Sprocket bare(String shaft, int teeth) {
    return Sprocket.inside(shaft, teeth, new Bearing(0)).withMark(Optional.empty());
  }

  private Shaft newShaft(Role role, Vector2D at) {
    String what = role.name().toLowerCase(Locale.ROOT);
    Shaft shaft = new Shaft(name + "-" + what + "-" + shafts.size(), role, at);
    shafts.add(shaft);
    return shaft;
  }

  /** Sprockets on an oval that stands on the driving one, in the order in which the chain runs. */
  private List<Sprocket> oval(Shaft driver, Role lead, int leadTeeth) {
    double wide = between(60, 160);
    double high = between(100, 220);
    int count = 1 + random.nextInt(4);
    int leading = random.nextInt(count);
    List<Sprocket> sprockets = new ArrayList<>();
    for (double turn : random.doubles(count, 50, 310).sorted().toArray()) {
      Vector2D spoke = new Bearing(180).plus(turn, travel).direction();
      Vector2D at = driver.at().add(Vector2D.of(wide * spoke.getX(), high * (1 + spoke.getY())));
      boolean leads = sprockets.size() == leading || random.nextInt(3) == 0;
      Shaft shaft = newShaft(leads ? lead : Role.PUMP, at);
      sprockets.add(bare(shaft.name(), leads ? leadTeeth : 12 + random.nextInt(30)));
    }
    return sprockets;
  }

  /** The route with faces and outside sprockets set along its straight runs. */
  private List<RouteEntry> dressed(List<Sprocket> inside, Line line) {
    int tensioned = random.nextInt(10);
    int strand = tensioned < 6 ? 0 : tensioned < 9 ? random.nextInt(inside.size()) : -1;
    List<RouteEntry> route = new ArrayList<>();
    for (int i = 0; i < inside.size(); i++) {
      route.add(inside.get(i));
      Run run = line.runFrom(i);
      Vector2D from = Vector2D.of(run.from().x(), run.from().y());
      Vector2D to = Vector2D.of(run.to().x(), run.to().y());
      Vector2D outward = from.directionTo(to).orthogonal().multiply(travel.sign());
      route.addAll(strand(new RandomFaces(random, from, to, outward, plateMm), i, i == strand));
    }
    return route;
  }

  private List<RouteEntry> strand(RandomFaces faces, int i, boolean tensioned) {
    int choice = random.nextInt(5);
    String number = Integer.toString(i);
    if (choice < 2) {
      return tensioned
          ? List.of(faces.tensioner("tensioner", RandomFaces.Slot.WHOLE))
          : choice == 0
              ? List.of()
              : List.of(faces.guide("guide" + number, RandomFaces.Slot.WHOLE));
    }
    RouteEntry early =
        tensioned
            ? faces.tensioner("tensioner", RandomFaces.Slot.EARLY)
            : faces.guide("early" + number, RandomFaces.Slot.EARLY);
    RouteEntry late =
        choice == 2 ? outside(faces) : faces.guide("late" + number, RandomFaces.Slot.LATE);
    return List.of(early, late);
  }

  /** A sprocket pressed into the run from outside. */
  private Sprocket outside(RandomFaces faces) {
    int teeth = 12 + random.nextInt(12);
    double radius = pitchMm / (2 * Math.sin(Math.PI / teeth));
    Vector2D on = faces.from().lerp(faces.to(), between(0.65, 0.8));
    Shaft shaft = newShaft(Role.IDLER, on.add(faces.outward().multiply(radius - between(4, 14))));
    return bare(shaft.name(), teeth).withContact(Contact.OUTSIDE);
  }

  private Chain chain(List<RouteEntry> route, int links) {
    return new Chain(name, ChainKind.BUSH, pitchMm, links, plateMm, 0.6 * pitchMm, route);
  }

  private SecondSolver solver(Chain chain) {
    List<Shaft> alone = new ArrayList<>();
    for (Shaft shaft : shafts) {
      alone.add(new Shaft(shaft.name(), alone.isEmpty() ? Role.CRANKSHAFT : Role.PUMP, shaft.at()));
    }
    return new SecondSolver(Plans.of(new Drive(name, "", travel, alone, List.of(chain))));
  }

  private Optional<Line> line(Chain chain, double extensionMm) {
    return solver(chain).line(name, extensionMm);
  }

  /** With links enough for the plunger to stand within its travel. */
  private Optional<Chain> linked(Chain chain) {
    double travelMm = chain.tensioner().map(Tensioner::plunger).map(Plunger::travelMm).orElse(0.0);
    Optional<Line> shortest = line(chain, 0);
    Optional<Line> longest = line(chain, travelMm);
    if (shortest.isEmpty() || longest.isEmpty()) {
      return Optional.empty();
    }
    int least = (int) Math.ceil(shortest.get().pitches());
    int most = (int) Math.floor(longest.get().pitches());
    if (chain.tensioner().isEmpty()) {
      return Optional.of(chain.withLinks(least));
    }
    return least > most
        ? Optional.empty()
        : Optional.of(chain.withLinks(least + random.nextInt(most - least + 1)));
  }

  /** With marks under the chain, most of them whole links apart, and a few sprockets without. */
  private Optional<Chain> marked(Chain chain) {
    Fit fit = solver(chain).solve(Map.of(), Map.of()).loops().get(name).whenNew();
    if (fit.how() != Fit.How.FITS) {
      return Optional.empty();
    }
    Line line = fit.line().orElseThrow();
    List<RouteEntry> route = new ArrayList<>();
    double origin = line.pitchesTo(0, line.bearingAt(0, 0.5));
    for (int place = 0; place < chain.route().size(); place++) {
      RouteEntry entry = chain.route().get(place);
      if (entry instanceof Sprocket sprocket) {
        if (line.wrapDegrees(place) < LEAST_WRAP_DEGREES) {
          return Optional.empty();
        }
        boolean blank = mayBeBlank(sprocket, route) && random.nextInt(6) == 0;
        entry = blank ? sprocket : sprocket.withMark(mark(line, place, sprocket, origin));
      }
      route.add(entry);
    }
    return Optional.of(chain.withRoute(route));
  }

  /** An idler outside, the driving sprocket, or one that comes after a marked one. */
  private static boolean mayBeBlank(Sprocket sprocket, List<RouteEntry> before) {
    return before.isEmpty()
        || sprocket.contact() == Contact.OUTSIDE
        || before.stream().anyMatch(e -> e instanceof Sprocket s && s.mark().isPresent());
  }

  private Optional<Bearing> mark(Line line, int place, Sprocket sprocket, double origin) {
    double part = place == 0 ? 0.5 : between(0.1, 0.9);
    double off = line.pitchesTo(place, line.bearingAt(place, part)) - origin;
    double wrapped = line.wrapDegrees(place) * sprocket.teeth() / 360;
    double whole = part + (Math.rint(off) + between(-0.1, 0.1) - off) / wrapped;
    boolean tidy = whole > 0.02 && whole < 0.98 && random.nextInt(4) > 0;
    return Optional.of(new Bearing(line.bearingAt(place, tidy ? whole : part)));
  }
}
