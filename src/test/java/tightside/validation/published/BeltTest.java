package tightside.validation.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import tightside.geometry.Bearing;
import tightside.geometry.OrientedCircle;
import tightside.geometry.Rotation;
import tightside.validation.Loop;
import tightside.validation.Printed;
import tightside.validation.Row;
import tightside.validation.Rows;
import tightside.validation.Series;

/** Belts round two and three pulleys, where books print lengths of true arcs. */
class BeltTest {

  /** Rounding of the print, and of pi where the source says that it took it short. */
  @ParameterizedTest
  @Rows("published/belts-exact.csv")
  void lengthPrintedFromTheExactRelation(Row row) {
    double half = row.text("sizes_are").equals("diameters") ? 0.5 : 1;
    double r1 = half * row.number("size1");
    double r2 = half * row.number("size2");
    Printed printed = row.printed("printed");
    double allowed = printed.halfDigit() + piError(row) * (r1 + r2) + row.number("allowance");
    assertThat(Loop.ofTwo(row.text("kind"), r1, r2, row.number("centre")).length())
        .isCloseTo(printed.value(), within(allowed));
  }

  /**
   * Books print L = pi/2 (d1 + d2) + 2c + (d1 -/+ d2)^2 / 4c. The true length may exceed it by what
   * its series leaves out, bounded in {@link Series}; rounding of the print and of pi as above.
   */
  @ParameterizedTest
  @Rows("published/belts-textbook.csv")
  void lengthPrintedFromTheTextbookFormula(Row row) {
    double r1 = row.number("diameter1") / 2;
    double r2 = row.number("diameter2") / 2;
    double c = row.number("centre");
    Printed printed = row.printed("printed");
    double rounding = printed.halfDigit() + piError(row) * (r1 + r2);
    double apart = row.text("kind").equals("crossed") ? r1 + r2 : Math.abs(r1 - r2);
    assertThat(Loop.ofTwo(row.text("kind"), r1, r2, c).length() - printed.value())
        .isBetween(-rounding, Series.mostLeftOut(c, apart) + rounding);
  }

  /**
   * At the printed centre distance the belt is as long as the one bought: to the formula's error as
   * above, and twice the rounding of the centre distance, since a belt has two strands.
   */
  @ParameterizedTest
  @Rows("published/belts-centres.csv")
  void centreDistancePrintedForABelt(Row row) {
    double r1 = row.number("diameter1") / 2;
    double r2 = row.number("diameter2") / 2;
    Printed centre = row.printed("printed_centre");
    double rounding = 2 * centre.halfDigit();
    assertThat(Loop.ofTwo(row.text("kind"), r1, r2, centre.value()).length() - row.number("length"))
        .isBetween(-rounding, Series.mostLeftOut(centre.value(), r2 - r1) + rounding);
  }

  private static double piError(Row row) {
    return row.has("pi_taken") ? Math.PI - row.number("pi_taken") : 0;
  }

  /** Rounding of the print: six decimals of a radian. */
  @ParameterizedTest
  @Rows("published/belt-laps.csv")
  void lapOfABelt(Row row) {
    Printed printed = row.printed("printed_rad");
    Loop loop =
        Loop.ofTwo(
            row.text("kind"),
            row.number("diameter1") / 2,
            row.number("diameter2") / 2,
            row.number("centre"));
    assertThat(loop.lap(row.whole("pulley") - 1))
        .isCloseTo(printed.value(), within(printed.halfDigit()));
  }

  /** Rounding of the printed centre distance: the tangent grows by c/t of it. */
  @ParameterizedTest
  @Rows("published/tangents.csv")
  void tangentOfTwoCircles(Row row) {
    Printed centre = row.printed("printed_centre");
    double tangent = row.number("tangent");
    Loop loop = Loop.ofTwo("open", row.number("radius1"), row.number("radius2"), centre.value());
    double allowed = 1.01 * centre.halfDigit() * centre.value() / tangent;
    assertThat(loop.spans().get(0).lengthMm()).isCloseTo(tangent, within(allowed));
  }

  /** 1e-12: printed in closed form, so that only doubles round. */
  @ParameterizedTest
  @Rows("published/belts-three-pulleys.csv")
  void beltRoundThreeEqualPulleys(Row row) {
    double ab = row.number("ab");
    double ca = row.number("ca");
    double x = (ab * ab + ca * ca - Math.pow(row.number("bc"), 2)) / (2 * ab);
    List<Vector2D> corners =
        List.of(Vector2D.ZERO, Vector2D.of(x, Math.sqrt(ca * ca - x * x)), Vector2D.of(ab, 0));
    assertThat(round(corners, row.number("radius")).length())
        .isCloseTo(
            row.number("straight") + row.number("times_pi") * Math.PI, within(1e-12 * ab * ab));
  }

  /**
   * Round equal circles in convex position a belt is as long as the polygon of their centres and
   * one circle (https://math.stackexchange.com/questions/197756). 1e-10 mm: doubles round.
   */
  @Test
  void beltRoundEqualCirclesIsTheirPolygonAndOneCircle() {
    for (int count = 3; count <= 12; count++) {
      int corners = count;
      List<Vector2D> ring =
          IntStream.range(0, count)
              .mapToObj(i -> new Bearing(360.0 * i / corners).direction())
              .map(v -> Vector2D.of(170 * v.getX(), 90 * v.getY()))
              .toList();
      double polygon = 0;
      for (int i = 0; i < count; i++) {
        polygon += ring.get(i).distance(ring.get((i + 1) % count));
      }
      assertThat(round(ring, 7).length())
          .as("%d circles", count)
          .isCloseTo(polygon + 2 * Math.PI * 7, within(1e-10));
    }
  }

  private static Loop round(List<Vector2D> clockwise, double radius) {
    return Loop.round(
        clockwise.stream().map(at -> new OrientedCircle(at, radius, Rotation.CLOCKWISE)).toList());
  }
}
