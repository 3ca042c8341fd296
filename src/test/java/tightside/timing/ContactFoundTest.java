package tightside.timing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.api.Test;
import tightside.drive.Chain;
import tightside.drive.ChainFit;
import tightside.drive.ChainKind;
import tightside.drive.Contact;
import tightside.drive.Drive;
import tightside.drive.Face;
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
import tightside.geometry.FaceCurve;
import tightside.geometry.Rotation;
import tightside.geometry.StringPiece;
import tightside.geometry.StringPiece.Spot;

/**
 * What the chain touches is found, not assumed: worked by hand on two equal sprockets, one right
 * above the other, whose bare path is z + 2 x centre distance / pitch.
 */
class ContactFoundTest {

  private static final double PITCH = 8;
  private static final int TEETH = 20;
  private static final double RADIUS = PITCH / (2 * Math.sin(Math.PI / TEETH));
  private static final double STAND_OFF = 3.5;
  private static final double HIGH = 300;
  private static final int LINKS = 95;

  /** Where a face must stand for its pitch line to lie just on the right strand. */
  private static final double EDGE = RADIUS + STAND_OFF;

  /** Pitches; the reckoning is exact. */
  private static final double EXACT = 1e-9;

  private static Drive drive(int links, Face... onTheRight) {
    return drive(links, List.of(), List.of(onTheRight));
  }

  /** With a sprocket at mid-height, so far to the right. */
  private static Drive drive(int links, double right, Contact contact) {
    return drive(
        links,
        List.of(new Shaft("idler", Role.IDLER, Vector2D.of(right, HIGH / 2))),
        List.of(Sprocket.inside("idler", TEETH, new Bearing(270)).withContact(contact)));
  }

  private static Drive drive(int links, List<Shaft> more, List<? extends RouteEntry> onTheRight) {
    List<Shaft> shafts =
        new ArrayList<>(
            List.of(
                new Shaft("crank", Role.CRANKSHAFT, Vector2D.ZERO),
                new Shaft("pump", Role.PUMP, Vector2D.of(0, HIGH))));
    shafts.addAll(more);
    List<RouteEntry> route =
        new ArrayList<>(
            List.of(
                Sprocket.inside("crank", TEETH, new Bearing(180)),
                Sprocket.inside("pump", TEETH, new Bearing(0))));
    route.addAll(onTheRight);
    Chain chain = new Chain("main", ChainKind.ROLLER, PITCH, links, 2 * STAND_OFF, 5, route);
    return new Drive("two sprockets", "", Rotation.CLOCKWISE, shafts, List.of(chain));
  }

  private static Guide guide(double... xy) {
    return new Guide("guide", Contact.OUTSIDE, Drives.face(xy), Seen.COVER_OFF);
  }

  private static ChainFit fit(Drive drive) {
    SecondOpinion.compare(drive);
    return Solver.solve(drive, State.reference()).chains().get(0).fit();
  }

  private static TautPath path(Drive drive) {
    return fit(drive).path().orElseThrow();
  }

  private static List<Spot> touched(TautPath path, int place) {
    return path.legs().stream()
        .filter(leg -> leg.place() == place)
        .map(leg -> ((StringPiece.Turn) leg.piece()).spot())
        .toList();
  }

  /**
   * A run from the right of a sprocket to the left of a round thing: its length and how far it
   * leans to the left of straight down.
   */
  private record Lean(double length, double angle) {

    static Lean to(double right, double down, double radius) {
      double apart = Math.hypot(right, down);
      return new Lean(
          Math.sqrt(apart * apart - Math.pow(RADIUS + radius, 2)),
          Math.asin((RADIUS + radius) / apart) - Math.atan2(right, down));
    }
  }

  /** The path over something round or two such things, that turns the chain by both leans. */
  private static double pitches(Lean above, Lean below, double between, double pitchesRound) {
    double lean = above.angle() + below.angle();
    return TEETH * (1 + lean / (2 * Math.PI))
        + (HIGH + above.length() + between + below.length()) / PITCH
        + pitchesRound;
  }

  @Test
  void aFaceThatTheChainDoesNotReachDropsOut() {
    double x = EDGE + 0.5;
    TautPath path = path(drive(LINKS, guide(x + 4, 200, x, 150, x + 4, 100)));
    assertThat(path.touches(2)).isFalse();
    assertThat(path.lengthGradient(2)).isEqualTo(Vector2D.ZERO);
    assertThat(path.pitches()).isCloseTo(LINKS, within(EXACT));
  }

  @Test
  void aFaceThatTheChainGrazesIsTouchedAtItsEndOnly() {
    double x = EDGE - 1;
    TautPath path = path(drive(LINKS + 1, guide(x, 200, x + 3, 150, x + 6, 100)));
    assertThat(touched(path, 2)).containsExactly(Spot.FACE_END);
    Lean above = Lean.to(x, HIGH - 200, STAND_OFF);
    Lean below = Lean.to(x, 200, STAND_OFF);
    double round = STAND_OFF * (above.angle() + below.angle()) / PITCH;
    assertThat(path.pitches()).isCloseTo(pitches(above, below, 0, round), within(EXACT));
  }

  @Test
  void aStraightFaceIsTouchedAlongItsWholeLengthAndAtBothEnds() {
    double x = EDGE - 2;
    TautPath path = path(drive(LINKS + 1, guide(x, 200, x, 150, x, 100)));
    assertThat(touched(path, 2)).containsExactly(Spot.FACE_END, Spot.FACE_END);
    Lean either = Lean.to(x, 100, STAND_OFF);
    double round = 2 * STAND_OFF * either.angle() / PITCH;
    assertThat(path.pitches()).isCloseTo(pitches(either, either, 100, round), within(EXACT));
  }

  /** Its middle within 0.01 mm of the chord: then it is as good as straight, and no more. */
  @Test
  void aFaceIsStraightUpToAHundredthOfAMillimetre() {
    double x = EDGE - 2;
    TautPath straight = path(drive(LINKS + 1, guide(x, 200, x - 0.0099, 150, x, 100)));
    assertThat(touched(straight, 2)).doesNotContain(Spot.FACE_ARC);
    TautPath round = path(drive(LINKS + 1, guide(x, 200, x - 0.0101, 150, x, 100)));
    assertThat(touched(round, 2)).containsExactly(Spot.FACE_END, Spot.FACE_ARC, Spot.FACE_END);
  }

  @Test
  void aRoundFaceIsTouchedOnItsArcOnlyWhereTheChainLeavesBeforeItsEnds() {
    double radius = 200;
    double centre = EDGE - 2 + radius;
    double x = centre - radius * Math.cos(Math.toRadians(20));
    double half = radius * Math.sin(Math.toRadians(20));
    TautPath path =
        path(drive(LINKS + 1, guide(x, 150 + half, centre - radius, 150, x, 150 - half)));
    assertThat(touched(path, 2)).containsExactly(Spot.FACE_ARC);
    Lean either = Lean.to(centre, 150, radius + STAND_OFF);
    double step = 2 * Math.asin(PITCH / 2 / (radius + STAND_OFF));
    assertThat(path.pitches())
        .isCloseTo(pitches(either, either, 0, 2 * either.angle() / step), within(EXACT));
  }

  @Test
  void anIdlerTouchedFromOutsideTurnsTheOtherWay() {
    double x = 2 * RADIUS - 6;
    Drive drive = drive(LINKS + 1, x, Contact.OUTSIDE);
    Lean either = Lean.to(x, HIGH / 2, RADIUS);
    double teeth = TEETH * 2 * either.angle() / (2 * Math.PI);
    assertThat(path(drive).pitches()).isCloseTo(pitches(either, either, 0, teeth), within(EXACT));
    assertThat(drive.gearing().rotationOf("idler")).isEqualTo(Rotation.COUNTERCLOCKWISE);
    State ahead = State.reference().reseated(new Seat("main", "idler"), 1);
    assertThat(Solver.solve(drive, ahead).shaft("idler").orElseThrow().shaftDegrees())
        .isCloseTo(360.0 / TEETH, within(EXACT));
  }

  @Test
  void aSprocketThatTheChainRunsClearOfIsMissed() {
    assertThat(fit(drive(LINKS, -20, Contact.INSIDE))).isEqualTo(new ChainFit.SprocketMissed(2));
    assertThat(fit(drive(LINKS, 2 * RADIUS + 3, Contact.OUTSIDE)))
        .isEqualTo(new ChainFit.SprocketMissed(2));
  }

  @Test
  void aChainTooShortLacksWhatThePathIsLonger() {
    ChainFit fit = fit(drive(LINKS - 2, guide(EDGE + 5, 200, EDGE + 1, 150, EDGE + 5, 100)));
    assertThat(((ChainFit.TooShort) fit).byMm()).isCloseTo(2 * PITCH, within(EXACT));
  }

  @Test
  void aChainLongerThanThePathWithoutATensionerIsSlack() {
    assertThat(((ChainFit.Solved) fit(drive(LINKS + 1))).slackMm()).isCloseTo(PITCH, within(EXACT));
  }

  /** A shoe at the right strand, pushed to the left. */
  private static Shoe shoe(double x, double low, double high, double travel) {
    FaceCurve face = Drives.face(x, high, x, (low + high) / 2, x, low);
    Plunger plunger = new Plunger(new Bearing(270), travel, OptionalDouble.empty());
    return new Shoe("shoe", Contact.OUTSIDE, face, plunger, Seen.COVER_OFF);
  }

  @Test
  void outOfTravelLeavesWhatTheChainIsLongerThanThePathAtFullTravel() {
    ChainFit never = fit(drive(LINKS + 2, shoe(EDGE + 5, 100, 200, 4)));
    assertThat(((ChainFit.OutOfTravel) never).slackLeftMm()).isCloseTo(2 * PITCH, within(EXACT));

    ChainFit full = fit(drive(LINKS + 2, shoe(EDGE, 100, 200, 4)));
    Lean either = Lean.to(EDGE - 4, 100, STAND_OFF);
    double round = 2 * STAND_OFF * either.angle() / PITCH;
    assertThat(((ChainFit.OutOfTravel) full).slackLeftMm())
        .isCloseTo((LINKS + 2 - pitches(either, either, 100, round)) * PITCH, within(1e-8));
  }

  @Test
  void aPathThatIsTooLongAtZeroIsTooShortByThat() {
    ChainFit fit = fit(drive(LINKS, shoe(EDGE - 2, 100, 200, 4)));
    Lean either = Lean.to(EDGE - 2, 100, STAND_OFF);
    double round = 2 * STAND_OFF * either.angle() / PITCH;
    assertThat(((ChainFit.TooShort) fit).byMm())
        .isCloseTo((pitches(either, either, 100, round) - LINKS) * PITCH, within(1e-8));
  }
}
