package tightside.timing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.api.Test;
import tightside.drive.Chain;
import tightside.drive.ChainFit;
import tightside.drive.ChainKind;
import tightside.drive.Contact;
import tightside.drive.Drive;
import tightside.drive.Guide;
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

/** Paths that were once refused, or granted, wrongly. */
class AwkwardPathsTest {

  private static final double PITCH = 8;
  private static final int TEETH = 20;
  private static final double RADIUS = PITCH / (2 * Math.sin(Math.PI / TEETH));
  private static final double STAND_OFF = 3.5;
  private static final double EDGE = RADIUS + STAND_OFF;

  private static Sprocket bare(String shaft, int teeth) {
    return Sprocket.inside(shaft, teeth, new Bearing(0)).withMark(Optional.empty());
  }

  private static Drive drive(int links, List<Shaft> shafts, List<RouteEntry> route) {
    Chain chain = new Chain("main", ChainKind.ROLLER, PITCH, links, 2 * STAND_OFF, 5, route);
    return new Drive("awkward", "", Rotation.CLOCKWISE, shafts, List.of(chain));
  }

  private static ChainFit fit(Drive drive) {
    return Solver.solve(drive, State.reference()).chains().get(0).fit();
  }

  /**
   * Two equal sprockets, and a shoe on the right strand from 20 to 80 mm above the lower one's
   * centre: once it has come 8.97 mm closer its end overlaps the sprocket, and only past it, where
   * no plunger comes, is there room again.
   */
  private static Drive barred(double high) {
    double x = EDGE + 1;
    Shoe shoe =
        new Shoe(
            "shoe",
            Contact.OUTSIDE,
            Drives.face(x, 80, x, 50, x, 20),
            new Plunger(new Bearing(270), 60, OptionalDouble.empty()),
            Seen.COVER_OFF);
    return drive(
        96,
        List.of(
            new Shaft("crank", Role.CRANKSHAFT, Vector2D.ZERO),
            new Shaft("pump", Role.PUMP, Vector2D.of(0, high))),
        List.of(bare("crank", TEETH), bare("pump", TEETH), shoe));
  }

  /** By hand: crossed tangents to the round ends of the shoe, and the straight along it. */
  private static double pitchesAt(double extension, double high) {
    double x = EDGE + 1 - extension;
    double above = Math.hypot(x, high - 80);
    double below = Math.hypot(x, 20);
    double lean =
        Math.asin(EDGE / above)
            - Math.atan2(x, high - 80)
            + Math.asin(EDGE / below)
            - Math.atan2(x, 20);
    double straight =
        high + 60 + Math.sqrt(above * above - EDGE * EDGE) + Math.sqrt(below * below - EDGE * EDGE);
    return TEETH * (1 + lean / (2 * Math.PI)) + (straight + STAND_OFF * lean) / PITCH;
  }

  @Test
  void aPlungerStopsWhereTheChainClosesThoughItsWayIsBarredFartherOut() {
    ChainFit.Solved solved = (ChainFit.Solved) fit(barred(303));
    double extension = solved.extensionMm().orElseThrow();
    assertThat(extension).isBetween(8.5, 8.97);
    assertThat(pitchesAt(extension, 303)).isCloseTo(96, within(1e-9));
  }

  @Test
  void aPlungerCannotPassWhereThereIsNoRoom() {
    assertThat(pitchesAt(8.97, 301)).isLessThan(96);
    assertThat(fit(barred(301))).isEqualTo(new ChainFit.NoRoom(1, 0));
  }

  /** The lower sprocket stands beside the line through the two upper ones, not on it. */
  @Test
  void aSprocketMayBeWrappedByMoreThanHalfWhereAFacePressesTheChainRoundIt() {
    Guide guide =
        new Guide("guide", Contact.OUTSIDE, Drives.face(-2, 42, 6, 61, 14, 80), Seen.COVER_OFF);
    Drive drive =
        drive(
            100,
            List.of(
                new Shaft("crank", Role.CRANKSHAFT, Vector2D.ZERO),
                new Shaft("first", Role.PUMP, Vector2D.of(107, 275)),
                new Shaft("second", Role.PUMP, Vector2D.of(110, 206))),
            List.of(bare("crank", TEETH), guide, bare("first", 14), bare("second", 40)));
    TautPath path = fit(drive).path().orElseThrow();
    assertThat(path.wrap(0).degrees()).isGreaterThan(180);
    SecondOpinion.compare(drive);
  }

  /** One missed from inside and one from outside: their turns past a whole one cancel. */
  @Test
  void twoSprocketsMissedAreNotTakenForTwoWrapped() {
    Drive drive =
        drive(
            200,
            List.of(
                new Shaft("crank", Role.CRANKSHAFT, Vector2D.ZERO),
                new Shaft("left", Role.PUMP, Vector2D.of(60, 150)),
                new Shaft("top", Role.PUMP, Vector2D.of(60, 300)),
                new Shaft("right", Role.PUMP, Vector2D.of(200, 150))),
            List.of(
                bare("crank", TEETH),
                bare("left", 10),
                bare("top", TEETH),
                bare("right", TEETH).withContact(Contact.OUTSIDE)));
    assertThat(fit(drive)).isInstanceOf(ChainFit.SprocketMissed.class);
  }
}
