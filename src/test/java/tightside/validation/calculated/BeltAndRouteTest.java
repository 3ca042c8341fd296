package tightside.validation.calculated;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.params.ParameterizedTest;
import tightside.drive.TautPath;
import tightside.geometry.StringPiece;
import tightside.validation.Loop;
import tightside.validation.Printed;
import tightside.validation.Route;
import tightside.validation.Row;
import tightside.validation.Rows;

/**
 * Belts and routes against calculations made apart from the program. Tolerance: half of the last
 * digit kept, and 1e-9 for doubles.
 */
class BeltAndRouteTest {

  @ParameterizedTest
  @Rows("calculated/belts-two-pulleys.csv")
  void lengthAndLapsOfABelt(Row row) {
    Loop loop =
        Loop.ofTwo(
            row.text("kind"), row.number("radius1"), row.number("radius2"), row.number("centre"));
    check(row, "length", loop.length());
    check(row, "lap1_rad", loop.lap(0));
    check(row, "lap2_rad", loop.lap(1));
  }

  @ParameterizedTest
  @Rows("calculated/belt-routes.csv")
  void beltRoundSeveralPulleys(Row row) {
    Loop loop = Route.parse(row.text("route")).belt();
    check(row, "length", loop.length());
    if (row.has("spans")) {
      double[] spans = row.numbers("spans");
      double[] laps = row.numbers("laps_rad");
      for (int i = 0; i < spans.length; i++) {
        assertThat(loop.spans().get(i).lengthMm()).isCloseTo(spans[i], within(5.1e-7));
        assertThat(loop.lap(i)).isCloseTo(laps[i], within(5.1e-7));
      }
    }
  }

  /** The two lengths of one path: true arcs, and arcs in teeth. */
  @ParameterizedTest
  @Rows("calculated/chain-routes.csv")
  void chainRoundSeveralSprockets(Row row) {
    TautPath path = Route.parse(row.text("route")).chain(row.number("pitch_mm"));
    check(row, "circle_mm", path.lengthMm());
    check(row, "circle_pitches", path.lengthMm() / path.pitchMm());
    check(row, "teeth_pitches", path.pitches());
  }

  @ParameterizedTest
  @Rows("calculated/five-sprocket-contacts.csv")
  void contactsOfTheFiveSprocketRoute(Row row) {
    Row route = Row.of("calculated/chain-routes.csv").get(0);
    TautPath path = Route.parse(route.text("route")).chain(route.number("pitch_mm"));
    int place = row.whole("place");
    StringPiece.Turn wrap = path.wrap(place);
    check(row, "wrap_degrees", wrap.degrees());
    check(row, "span_mm", path.legs().get(2 * place + 1).piece().lengthMm());
    checkPoint(row, "entry", wrap.start());
    checkPoint(row, "exit", wrap.end());
  }

  private static void checkPoint(Row row, String name, Vector2D found) {
    check(row, name + "_x", found.getX());
    check(row, name + "_y", found.getY());
  }

  private static void check(Row row, String column, double found) {
    if (row.has(column)) {
      Printed kept = row.printed(column);
      assertThat(found).as(column).isCloseTo(kept.value(), within(kept.halfDigit() + 1e-9));
    }
  }
}
