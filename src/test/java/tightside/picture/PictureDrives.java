package tightside.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
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
import tightside.geometry.Bearing;
import tightside.geometry.Rotation;
import tightside.timing.Drives;
import tightside.timing.Solver;
import tightside.timing.State;

/** Invented drives of many kinds, for pictures. Their marks are laid on whole links. */
public final class PictureDrives {

  private PictureDrives() {}

  /** Runs the other way round, its chain led over an idler from outside, tensioned by a shoe. */
  public static Drive counterclockwise() {
    return marked(
        new Drive(
            "Counterclockwise, idler outside, shoe",
            "Invented for practice.",
            Rotation.COUNTERCLOCKWISE,
            List.of(
                new Shaft("crank", Role.CRANKSHAFT, Vector2D.of(0, 0)),
                new Shaft("cam", Role.CAMSHAFT, Vector2D.of(10, 230)),
                new Shaft("water pump", Role.PUMP, Vector2D.of(96, 120))),
            List.of(
                new Chain(
                    "main",
                    ChainKind.ROLLER,
                    9.525,
                    78,
                    8.2,
                    6.35,
                    List.of(
                        Sprocket.inside("crank", 20, new Bearing(180)),
                        Sprocket.inside("water pump", 18, new Bearing(90))
                            .withMark(Optional.empty()),
                        Sprocket.inside("cam", 40, new Bearing(0)),
                        new Shoe(
                            "slipper",
                            Contact.OUTSIDE,
                            Drives.face(-54, 165, -45, 120, -41, 75),
                            new Plunger(new Bearing(95), 18, OptionalDouble.of(2)),
                            Seen.COVER_OFF))))));
  }

  /** The same with its idler touched from outside the loop. */
  public static Drive outsideIdler() {
    return marked(
        new Drive(
            "An idler outside the loop",
            "Invented for practice.",
            Rotation.COUNTERCLOCKWISE,
            List.of(
                new Shaft("crank", Role.CRANKSHAFT, Vector2D.of(0, 0)),
                new Shaft("left cam", Role.CAMSHAFT, Vector2D.of(-90, 250)),
                new Shaft("right cam", Role.CAMSHAFT, Vector2D.of(90, 250)),
                new Shaft("idler", Role.IDLER, Vector2D.of(0, 268))),
            List.of(
                new Chain(
                    "main",
                    ChainKind.ROLLER,
                    9.525,
                    104,
                    8.2,
                    6.35,
                    List.of(
                        Sprocket.inside("crank", 20, new Bearing(180)),
                        new Guide(
                            "right guide",
                            Contact.OUTSIDE,
                            Drives.face(58, 50, 75, 100, 105, 165),
                            Seen.COVER_OFF),
                        Sprocket.inside("right cam", 40, new Bearing(45)),
                        new Sprocket(
                            "idler",
                            16,
                            Optional.empty(),
                            Contact.OUTSIDE,
                            Joint.KEY,
                            Seen.COVER_OFF,
                            Seen.COVER_OFF),
                        Sprocket.inside("left cam", 40, new Bearing(315)),
                        new Shoe(
                            "slipper",
                            Contact.OUTSIDE,
                            Drives.face(-103, 165, -73, 100, -56, 50),
                            new Plunger(new Bearing(70), 22, OptionalDouble.of(2)),
                            Seen.COVER_OFF))))));
  }

  /** A first stage to an idler shaft, and from there two second ones, one for each bank. */
  public static Drive threeChains() {
    return marked(
        new Drive(
            "Two banks, three chains",
            "Invented for practice.",
            Rotation.CLOCKWISE,
            List.of(
                new Shaft("crank", Role.CRANKSHAFT, Vector2D.of(0, 0)),
                new Shaft("left idler", Role.IDLER, Vector2D.of(-75, 150)),
                new Shaft("right idler", Role.IDLER, Vector2D.of(75, 150)),
                new Shaft("left intake", Role.CAMSHAFT, Vector2D.of(-190, 330)),
                new Shaft("left exhaust", Role.CAMSHAFT, Vector2D.of(-280, 260)),
                new Shaft("right intake", Role.CAMSHAFT, Vector2D.of(190, 330)),
                new Shaft("right exhaust", Role.CAMSHAFT, Vector2D.of(280, 260))),
            List.of(
                new Chain(
                    "primary",
                    ChainKind.ROLLER,
                    9.525,
                    90,
                    8.2,
                    6.35,
                    List.of(
                        Sprocket.inside("crank", 24, new Bearing(180)),
                        new Arm(
                            "primary tensioner",
                            Contact.OUTSIDE,
                            Vector2D.of(-115, 102),
                            Drives.face(-58, 24, -78, 61.5, -104, 94),
                            Vector2D.of(-72, 32),
                            new Plunger(new Bearing(60), 24, OptionalDouble.of(1.5)),
                            Seen.COVER_OFF),
                        Sprocket.inside("left idler", 32, new Bearing(315)),
                        Sprocket.inside("right idler", 32, new Bearing(45)))),
                second("left", -1),
                second("right", 1))));
  }

  private static Chain second(String bank, int side) {
    List<RouteEntry> route = new ArrayList<>();
    route.add(Sprocket.inside(bank + " idler", 24, new Bearing(side > 0 ? 200 : 160)));
    if (side > 0) {
      route.add(Sprocket.inside("right intake", 36, new Bearing(340)));
      route.add(Sprocket.inside("right exhaust", 36, new Bearing(100)));
    } else {
      route.add(Sprocket.inside("left exhaust", 36, new Bearing(260)));
      route.add(Sprocket.inside("left intake", 36, new Bearing(20)));
    }
    return new Chain(bank + " bank", ChainKind.BUSH, 8, 120, 7.2, 5, List.copyOf(route));
  }

  /** One camshaft, an odd number of links, nothing to tension it. */
  public static Drive odd() {
    return marked(
        new Drive(
            "An odd chain",
            "Invented for practice.",
            Rotation.CLOCKWISE,
            List.of(
                new Shaft("crank", Role.CRANKSHAFT, Vector2D.of(0, 0)),
                new Shaft("cam", Role.CAMSHAFT, Vector2D.of(0, 140.5))),
            List.of(
                new Chain(
                    "main",
                    ChainKind.ROLLER,
                    9.525,
                    61,
                    8.2,
                    6.35,
                    List.of(
                        Sprocket.inside("crank", 20, new Bearing(180)),
                        Sprocket.inside("cam", 40, new Bearing(0)))))));
  }

  /** The answered example with a toothed chain. */
  public static Drive toothed() {
    Drive drive = Drives.answered();
    Chain chain = Drives.chain(drive);
    return new Drive(
        "A toothed chain",
        drive.about(),
        drive.rotation(),
        drive.shafts(),
        List.of(
            new Chain(
                chain.name(),
                ChainKind.TOOTHED,
                chain.pitchMm(),
                chain.links(),
                chain.plateHeightMm(),
                chain.rollerDiameterMm(),
                chain.route())));
  }

  /** The drive with as many links as it takes, and each mark brought onto the nearest link. */
  private static Drive marked(Drive drive) {
    List<Chain> chains = new ArrayList<>();
    for (Chain chain : drive.chains()) {
      TautPath path = path(with(drive, chain.withLinks(2000)), chain.name());
      double pitches = path.pitches();
      boolean tensioned = chain.tensionerPlace().isPresent();
      int links = (int) (tensioned ? Math.floor(pitches) : Math.ceil(pitches));
      chains.add(chain.withLinks(links));
    }
    Drive fitted = with(drive, chains);
    List<Chain> laid = new ArrayList<>();
    for (Chain chain : chains) {
      TautPath path = path(fitted, chain.name());
      List<RouteEntry> route = new ArrayList<>();
      double first = Double.NaN;
      double over = path.pitches() - chain.links();
      for (int place = 0; place < chain.route().size(); place++) {
        RouteEntry entry = chain.route().get(place);
        if (entry instanceof Sprocket s && s.mark().isPresent()) {
          Rotation sense = path.wrap(place).circle().sense();
          double into = path.arrivesAt(place).turnTo(s.mark().get(), sense) * s.teeth() / 360;
          double at = path.pitchesTo(place) + into;
          first = place == 0 ? at : first;
          double from = place == 0 ? first : first + over;
          double moved = from + Math.rint(at - from) - at;
          route.add(s.withMark(s.mark().map(m -> m.plus(moved * 360 / s.teeth(), sense))));
        } else {
          route.add(entry);
        }
      }
      laid.add(chain.withRoute(route));
    }
    return with(fitted, laid);
  }

  private static TautPath path(Drive drive, String chain) {
    ChainFit fit = Solver.solve(drive, State.reference()).chain(chain).orElseThrow().whenNew();
    return fit.path().orElseThrow(() -> new IllegalStateException(chain + ": " + fit));
  }

  private static Drive with(Drive drive, List<Chain> chains) {
    return new Drive(drive.name(), drive.about(), drive.rotation(), drive.shafts(), chains);
  }

  private static Drive with(Drive drive, Chain instead) {
    List<Chain> chains = new ArrayList<>();
    for (Chain chain : drive.chains()) {
      chains.add(chain.name().equals(instead.name()) ? instead : chain);
    }
    return with(drive, chains);
  }
}
