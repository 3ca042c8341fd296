package tightside.timing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import tightside.drive.Chain;
import tightside.drive.ChainFit;
import tightside.drive.ChainKind;
import tightside.drive.Contact;
import tightside.drive.Drive;
import tightside.drive.Fitting;
import tightside.drive.Plunger;
import tightside.drive.Role;
import tightside.drive.RouteEntry;
import tightside.drive.Seen;
import tightside.drive.Shaft;
import tightside.drive.Shoe;
import tightside.drive.Sprocket;
import tightside.drive.TautPath;
import tightside.geometry.Bearing;
import tightside.geometry.Rotation;

/** Drives whose chains have more slack than a maker would leave, for questions about slack. */
public final class LooseDrives {

  private LooseDrives() {}

  /**
   * Three sprockets and no tensioner, the chain so many pitches longer than its path or a little
   * more, every tight strand a whole number of links.
   */
  public static Drive random(Random random, int spareLinks) {
    List<Shaft> shafts =
        List.of(
            new Shaft("crank", Role.CRANKSHAFT, Vector2D.of(0, 0)),
            new Shaft(
                "left", Role.CAMSHAFT, Vector2D.of(-60 - 20 * random.nextDouble(), high(random))),
            new Shaft(
                "right", Role.CAMSHAFT, Vector2D.of(60 + 20 * random.nextDouble(), high(random))));
    return counted(shafts, 20, spareLinks);
  }

  private static double high(Random random) {
    return 250 + 60 * random.nextDouble();
  }

  private static Drive counted(List<Shaft> shafts, int crankTeeth, int spareLinks) {
    List<RouteEntry> route = new ArrayList<>();
    for (Shaft shaft : shafts) {
      int teeth = shaft.role() == Role.CRANKSHAFT ? crankTeeth : 2 * crankTeeth;
      route.add(Sprocket.inside(shaft.name(), teeth, new Bearing(0)));
    }
    Drive longer = drive(shafts, route, 300);
    ChainFit fit = Fitting.fit(longer.inPlace(longer.chains().get(0)), 8, OptionalDouble.empty());
    TautPath path = fit.path().orElseThrow();
    double before = path.pitches() + path.wrap(0).degrees() * crankTeeth / 720;
    Bearing crank = path.arrivesAt(0).plus(path.wrap(0).degrees() / 2);
    route.set(0, Sprocket.inside("crank", crankTeeth, crank));
    for (int place = shafts.size() - 1; place > 0; place--) {
      int teeth = 2 * crankTeeth;
      double middle = path.pitchesTo(place) + path.wrap(place).degrees() * teeth / 720;
      before -= Math.round(before - middle);
      Bearing mark = path.arrivesAt(place).plus((before - path.pitchesTo(place)) * 360 / teeth);
      route.set(place, Sprocket.inside(shafts.get(place).name(), teeth, mark));
    }
    return drive(shafts, route, (int) Math.ceil(path.pitches()) + spareLinks);
  }

  private static Drive drive(List<Shaft> shafts, List<RouteEntry> route, int links) {
    return new Drive(
        "loose",
        "Invented for a test.",
        Rotation.CLOCKWISE,
        shafts,
        List.of(new Chain("main", ChainKind.BUSH, 8, links, 7.2, 5, route)));
  }

  /** The answered example with a shoe in place of its arm, pushed square to the chain. */
  public static Drive withShoe() {
    return withTensioner(
        new Shoe(
            "tensioner",
            Contact.OUTSIDE,
            Drives.face(-38, 70, -55, 150, -80, 235),
            new Plunger(new Bearing(100), 30, OptionalDouble.empty()),
            Seen.COVER_OFF),
        118);
  }

  /** The answered example with another tensioner and number of links. */
  public static Drive withTensioner(RouteEntry tensioner, int links) {
    Drive answered = Drives.answered();
    Chain chain = Drives.chain(answered);
    List<RouteEntry> route = new ArrayList<>(chain.route());
    route.set(chain.tensionerPlace().orElseThrow(), tensioner);
    return new Drive(
        "with another tensioner",
        "Invented for a test.",
        answered.rotation(),
        answered.shafts(),
        List.of(chain.withRoute(route).withLinks(links)));
  }

  /** Where the new chain stands with its plunger free. */
  static Optional<TensionerReading> free(Drive drive) {
    return Solver.solve(drive, State.reference()).chains().get(0).tensioner();
  }
}
