package tightside.files;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import tightside.drive.Arm;
import tightside.drive.Chain;
import tightside.drive.ChainFit;
import tightside.drive.ChainKind;
import tightside.drive.Contact;
import tightside.drive.Drive;
import tightside.drive.Guide;
import tightside.drive.Joint;
import tightside.drive.Plunger;
import tightside.drive.Role;
import tightside.drive.RouteEntry;
import tightside.drive.Seen;
import tightside.drive.Shaft;
import tightside.drive.Shoe;
import tightside.drive.Sprocket;
import tightside.drive.TautPath;
import tightside.engine.Engine;
import tightside.engine.LiftLaw;
import tightside.engine.Phaser;
import tightside.engine.Spring;
import tightside.engine.Valve;
import tightside.geometry.Bearing;
import tightside.geometry.FaceCurve;
import tightside.geometry.Rotation;
import tightside.job.Adapter;
import tightside.job.Bolt;
import tightside.job.Job;
import tightside.job.Tightening;
import tightside.job.Torque;
import tightside.job.TorqueUnit;
import tightside.timing.Solver;
import tightside.timing.State;

/** Makes models of every shape that the format knows, with numbers of all digits. */
final class ModelMaker {

  private static final String[] NAMES = {
    "a",
    "Crank 2",
    "no",
    "null",
    "12",
    "Nocke-links",
    "распредвал",
    "0x1F",
    "e_1",
    "Ω",
    "true",
    "x  "
  };
  private static final String[] TEXTS = {
    "",
    "Invented.",
    "two\nlines",
    "quote \" and \\ and 'these'",
    "# no comment: none",
    "  spaces ",
    "ünïcode ☃ 𝄞",
    "- dash",
    "yes",
    "8.0",
    "{ braces }, [brackets]",
    "%&*!|>@`",
    "\u00a0"
  };

  private final Random random;

  ModelMaker(long seed) {
    random = new Random(seed);
  }

  /** A model that has no error. */
  Model next() {
    while (true) {
      Optional<Drive> drive = drive();
      if (drive.isPresent()) {
        return model(drive.get());
      }
    }
  }

  private double about(double middle, double spread) {
    double value = middle + spread * (2 * random.nextDouble() - 1);
    return random.nextBoolean() ? value : Math.round(value * 100) / 100.0;
  }

  private <E> E one(E[] values) {
    return values[random.nextInt(values.length)];
  }

  private Optional<Drive> drive() {
    List<String> names = new ArrayList<>(List.of(NAMES));
    Collections.shuffle(names, random);
    int z = 16 + random.nextInt(8);
    double gap = about(62, 3);
    List<Shaft> shafts =
        List.of(
            new Shaft(names.get(0), Role.CRANKSHAFT, Vector2D.of(about(0, 1), about(0, 1))),
            new Shaft(names.get(1), Role.CAMSHAFT, Vector2D.of(-gap, about(301, 3))),
            new Shaft(names.get(2), Role.CAMSHAFT, Vector2D.of(gap, about(301, 3))),
            new Shaft(names.get(3), one(new Role[] {Role.PUMP, Role.BALANCER}), pump()));
    List<RouteEntry> route = new ArrayList<>();
    route.add(sprocket(names.get(0), z));
    if (random.nextInt(3) > 0) {
      route.add(tensioner(names.get(4)));
    }
    route.add(sprocket(names.get(1), 2 * z));
    route.add(sprocket(names.get(2), 2 * z));
    if (random.nextBoolean()) {
      route.add(new Guide(names.get(5), Contact.OUTSIDE, guide(), one(Seen.values())));
    }
    Chain main = chain(names.get(6), about(7, 0.4), route);
    Chain side =
        chain(names.get(7), 8, List.of(sprocket(names.get(0), 20), sprocket(names.get(3), 13)));
    String title = one(TEXTS);
    Drive drive =
        new Drive(
            title.isBlank() || title.contains("\n") ? "x" : title,
            one(TEXTS),
            Rotation.CLOCKWISE,
            shafts,
            List.of(main, side));
    return marked(linked(drive));
  }

  private Vector2D pump() {
    return Vector2D.of(about(5, 4), about(-130, 20));
  }

  private Sprocket sprocket(String shaft, int teeth) {
    return new Sprocket(
        shaft,
        teeth,
        Optional.empty(),
        Contact.INSIDE,
        one(Joint.values()),
        one(Seen.values()),
        one(Seen.values()));
  }

  private RouteEntry tensioner(String name) {
    FaceCurve face = face(-44, 70, -61, 150, -86, 235);
    OptionalDouble step =
        random.nextBoolean() ? OptionalDouble.of(about(1, 0.5)) : OptionalDouble.empty();
    Plunger plunger = new Plunger(new Bearing(about(90, 5)), about(28, 3), step);
    return random.nextBoolean()
        ? new Shoe(name, Contact.OUTSIDE, face, plunger, one(Seen.values()))
        : new Arm(
            name,
            Contact.OUTSIDE,
            Vector2D.of(about(-90, 2), about(240, 2)),
            face,
            Vector2D.of(about(-58, 1), about(85, 1)),
            plunger,
            one(Seen.values()));
  }

  private FaceCurve guide() {
    return face(92, 235, 66, 150, 50, 70);
  }

  private FaceCurve face(double... xy) {
    for (int i = 0; i < xy.length; i++) {
      xy[i] = about(xy[i], 0.5);
    }
    return new FaceCurve(
        Vector2D.of(xy[0], xy[1]), Vector2D.of(xy[2], xy[3]), Vector2D.of(xy[4], xy[5]));
  }

  private Chain chain(String name, double pitch, List<RouteEntry> route) {
    return new Chain(
        name, one(ChainKind.values()), pitch, 600, about(7, 0.3), about(4.5, 0.3), route);
  }

  /** The drive with as many links on each chain as fit; nothing if no number of links does. */
  private Optional<Drive> linked(Drive drive) {
    List<Chain> chains = new ArrayList<>();
    for (Chain chain : drive.chains()) {
      boolean pushed = chain.tensioner().isPresent();
      State back = pushed ? State.reference().held(chain.name(), 0) : State.reference();
      Optional<TautPath> path =
          Solver.of(drive).solve(back).chain(chain.name()).orElseThrow().fit().path();
      if (path.isEmpty()) {
        return Optional.empty();
      }
      chains.add(chain.withLinks((int) Math.ceil(path.get().pitches())));
    }
    return Optional.of(
        new Drive(drive.name(), drive.about(), drive.rotation(), drive.shafts(), chains));
  }

  /** The drive with marks in the middle of what the chain wraps. */
  private Optional<Drive> marked(Optional<Drive> drive) {
    List<Chain> chains = new ArrayList<>();
    for (Chain chain : drive.map(Drive::chains).orElse(List.of())) {
      ChainFit fit =
          Solver.of(drive.get()).solve(State.reference()).chain(chain.name()).orElseThrow().fit();
      if (!(fit instanceof ChainFit.Solved solved)) {
        return Optional.empty();
      }
      List<RouteEntry> route = new ArrayList<>(chain.route());
      for (int place : chain.sprocketPlaces()) {
        if (random.nextInt(4) > 0) {
          double half = solved.taut().wrap(place).degrees() / 2;
          Bearing mark = solved.taut().arrivesAt(place).plus(half);
          route.set(place, chain.sprocketAt(place).withMark(Optional.of(mark)));
        }
      }
      chains.add(chain.withRoute(route));
    }
    return drive.map(d -> new Drive(d.name(), d.about(), d.rotation(), d.shafts(), chains));
  }

  private Model model(Drive drive) {
    List<String> cams =
        drive.shafts().stream().filter(s -> s.role() == Role.CAMSHAFT).map(Shaft::name).toList();
    Map<String, Phaser> phasers = new HashMap<>();
    if (random.nextBoolean()) {
      phasers.put(cams.get(0), new Phaser(about(25, 5), one(Phaser.Rest.values())));
    }
    return new Model(
        drive,
        random.nextBoolean() ? Optional.of(engine(cams)) : Optional.empty(),
        phasers,
        random.nextBoolean() ? Optional.of(job()) : Optional.empty());
  }

  private Engine engine(List<String> cams) {
    List<Valve> valves = new ArrayList<>();
    for (int i = 0; i <= random.nextInt(3); i++) {
      valves.add(
          new Valve(
              cams.get(i % cams.size()),
              about(9, 1),
              about(230, 20),
              about(0, 120),
              one(LiftLaw.values()),
              about(0, 30),
              about(6, 1),
              random.nextBoolean()
                  ? Optional.of(new Spring(about(300, 90), about(30, 9)))
                  : Optional.empty()));
    }
    return new Engine(
        about(78, 9),
        about(73, 9),
        about(128, 9),
        about(10, 1),
        valves,
        random.nextBoolean() ? Engine.ONE_CYLINDER : List.of(0.0, about(500, 40), about(180, 20)),
        random.nextBoolean() ? OptionalDouble.of(about(0, 360)) : OptionalDouble.empty());
  }

  private Job job() {
    OptionalDouble play =
        random.nextBoolean()
            ? OptionalDouble.of(random.nextDouble() * 1e-9)
            : OptionalDouble.empty();
    return new Job(
        play,
        random.nextBoolean() ? Optional.of(one(TEXTS)) : Optional.empty(),
        random.nextBoolean() ? Optional.of("Practice: \"only\" #1") : Optional.empty(),
        random.nextBoolean() ? Job.Order.STEP_BY_STEP : Job.Order.BOLT_BY_BOLT,
        random.nextBoolean() ? List.of(bolt("Ω: 1"), bolt("распредвал - 'two'")) : List.of());
  }

  private Bolt bolt(String name) {
    return new Bolt(
        name,
        random.nextBoolean() ? Bolt.Thread.LEFT : Bolt.Thread.RIGHT,
        random.nextBoolean(),
        random.nextBoolean() ? Optional.of("yes") : Optional.empty(),
        random.nextBoolean()
            ? Optional.of(new Adapter(about(300, 50), about(60, 20), random.nextInt(3) * 90.0))
            : Optional.empty(),
        random.nextBoolean() ? steps() : List.of());
  }

  private List<Tightening> steps() {
    TorqueUnit[] units = TorqueUnit.values();
    return List.of(
        new Tightening.To(new Torque(about(30, 9), units[random.nextInt(units.length)])),
        new Tightening.Loosen(about(360, 9)),
        new Tightening.Further(about(100, 50)));
  }
}
