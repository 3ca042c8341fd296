package tightside.validation.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.params.ParameterizedTest;
import tightside.drive.TautPath;
import tightside.geometry.Bearing;
import tightside.geometry.OrientedCircle;
import tightside.geometry.StringPiece;
import tightside.validation.Loop;
import tightside.validation.Route;
import tightside.validation.Row;
import tightside.validation.Rows;

/**
 * Routes over several wheels, some touched on the back of the chain, against what other programs
 * publish in their tests.
 */
class RouteTest {

  private static final Row FIVE = Row.of("published/chain-routes.csv").get(0);
  private static final double PITCH_MM = FIVE.number("pitch_mm");
  private static final TautPath FIVE_SPROCKETS = Route.parse(FIVE.text("route")).chain(PITCH_MM);

  private static final Loop BELT =
      Loop.round(
          Row.of("published/belt-arrival-angles.csv").stream().map(RouteTest::pulley).toList());

  private static OrientedCircle pulley(Row row) {
    return new OrientedCircle(
        Vector2D.of(row.number("x"), row.number("y")),
        row.number("radius"),
        Route.sense(row.text("sense")));
  }

  /**
   * 1e-9 mm: the rows have twelve decimals, the sums of doubles along a metre of chain about eleven
   * good ones. Rollers there are laid a pitch apart along the pitch line, arcs included.
   */
  @ParameterizedTest
  @Rows("published/five-sprocket-rollers.csv")
  void rollerStandsOnThePitchLine(Row row) {
    Vector2D printed = Vector2D.of(row.number("x_mm"), row.number("y_mm"));
    Vector2D found = along(FIVE_SPROCKETS, row.whole("roller") * PITCH_MM);
    assertThat(found.distance(printed)).isLessThan(1e-9);
  }

  /** The point of the pitch line so far from its beginning. */
  private static Vector2D along(TautPath path, double lengthMm) {
    double rest = lengthMm;
    for (TautPath.Leg leg : path.legs()) {
      StringPiece piece = leg.piece();
      if (rest > piece.lengthMm()) {
        rest -= piece.lengthMm();
      } else if (piece instanceof StringPiece.Turn turn) {
        double degrees = turn.degrees() * rest / turn.lengthMm();
        Bearing heading = turn.in().plus(degrees, turn.circle().sense());
        return turn.circle().touchAt(heading);
      } else {
        return piece.start().lerp(piece.end(), rest / piece.lengthMm());
      }
    }
    throw new IllegalArgumentException("past the end of the path");
  }

  /** No tolerance: whole rollers, and a link that is missing or not. */
  @ParameterizedTest
  @Rows("published/chain-routes.csv")
  void wholeRollersAndMissingLink(Row row) {
    TautPath path = Route.parse(row.text("route")).chain(row.number("pitch_mm"));
    double pitches = path.lengthMm() / path.pitchMm();
    if (row.has("rollers")) {
      assertThat((int) pitches).isEqualTo(row.whole("rollers"));
    }
    if (row.has("missing_link")) {
      assertThat(pitches - Math.floor(pitches)).isGreaterThan(0.5);
    }
  }

  /** 1e-3 rad: what the publishing test itself allows, since it cuts its angles short. */
  @ParameterizedTest
  @Rows("published/belt-arrival-angles.csv")
  void beltArrivesWherePublished(Row row) {
    List<String> names = List.of("A", "B", "C", "D", "E");
    StringPiece.Turn wrap = BELT.wraps().get(names.indexOf(row.text("pulley")));
    double clockwiseFromUp = wrap.circle().bearingAt(wrap.in()).degrees();
    double fromXAxis = Math.toRadians(new Bearing(90 - clockwiseFromUp).degrees());
    assertThat(fromXAxis).isCloseTo(row.number("arrival_rad"), within(1e-3));
  }
}
