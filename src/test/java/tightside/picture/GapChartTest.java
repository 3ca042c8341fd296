package tightside.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import tightside.engine.Clearance;
import tightside.engine.CrankGear;
import tightside.engine.LiftLaw;
import tightside.engine.Valve;

/** The chart of room against crank angle, read back from its shapes. */
class GapChartTest {

  private static final CrankGear GEAR = new CrankGear(88, 140);
  private static final Valve EXHAUST =
      new Valve("exhaust", 9.8, 248, -108, LiftLaw.POLYNOMIAL_345, 17, 1.5);
  private static final Clearance RIGHT = new Clearance(GEAR, EXHAUST, 0);
  private static final Clearance LATE = new Clearance(GEAR, EXHAUST, -20);

  private static GapChart chart(Clearance now, Clearance before) {
    return GapChart.of(
        new GapScene(
            now, Optional.of(new GapScene.Before(before, "right")), List.of(), false, 160, 90, 4));
  }

  private static List<Shape> of(GapChart chart, Ink ink) {
    return chart.picture().shapes().stream().filter(s -> s.tag().ink() == ink).toList();
  }

  private static List<String> words(GapChart chart, Ink ink) {
    return of(chart, ink).stream().map(s -> ((Shape.Text) s).words()).toList();
  }

  private static double noughtY(GapChart chart) {
    return of(chart, Ink.NOUGHT).get(0).bounds().bottom();
  }

  /** Millimetres of the chart for a millimetre of room, from its scale of 2 mm a line. */
  private static double perMm(GapChart chart) {
    double two =
        of(chart, Ink.SCALE).stream()
            .map(Shape::bounds)
            .filter(b -> b.height() == 0)
            .mapToDouble(Bounds::bottom)
            .min()
            .orElseThrow();
    return (two - noughtY(chart)) / 2;
  }

  @Test
  void theCurveGoesDownToTheLeastRoomAndTheGhostToItsOwn() {
    GapChart chart = chart(LATE, RIGHT);
    double low = of(chart, Ink.CURVE).get(0).bounds().bottom() - noughtY(chart);
    double ghost = of(chart, Ink.CURVE_BEFORE).get(0).bounds().bottom() - noughtY(chart);
    assertThat(low / perMm(chart)).isCloseTo(LATE.least().clearanceMm(), within(0.01));
    assertThat(ghost / perMm(chart)).isCloseTo(RIGHT.least().clearanceMm(), within(0.01));
  }

  @Test
  void theLeastRoomIsNamedAndTheFirstTouch() {
    assertThat(words(chart(RIGHT, LATE), Ink.COUNT))
        .containsExactly("least 1.3 mm", "at 2.0 before");
    assertThat(words(chart(LATE, RIGHT), Ink.WARNING))
        .containsExactly("touches by 0.2 mm", "at 6.6 before", "stops there", "at 12.1 before");
  }

  @Test
  void theMarkerStandsOnTheCurve() {
    GapChart chart = chart(RIGHT, LATE);
    Shape.Circle dot =
        (Shape.Circle)
            chart.marker(10).stream()
                .filter(Shape.Circle.class::isInstance)
                .findFirst()
                .orElseThrow();
    assertThat(dot.centre().getX()).isEqualTo(chart.markerX(10));
    assertThat((dot.centre().getY() - noughtY(chart)) / perMm(chart))
        .isCloseTo(RIGHT.mmAt(10), within(1e-9));
    assertThat(chart.marker(200)).as("an arrow at the edge").hasSize(1);
    assertThat(chart.markerX(200)).isEqualTo(chart.markerX(120));
  }

  /** Colour is told from grey by weight and dash, and no touch by its hatch. */
  @Test
  void greyPaperSaysTheSame() {
    Style now = Styles.of(Ink.CURVE, Plane.FRONT);
    Style before = Styles.of(Ink.CURVE_BEFORE, Plane.FRONT);
    assertThat(now.dash()).isEmpty();
    assertThat(before.dash()).isNotEmpty();
    assertThat(now.weight()).isGreaterThan(2 * Styles.of(Ink.CURVE_BESIDE, Plane.FRONT).weight());
    assertThat(of(chart(RIGHT, LATE), Ink.BEYOND)).hasSizeGreaterThan(5);
  }

  @Test
  void nothingLiesOutsideTheChart() {
    for (double width : new double[] {96, 110, 180}) {
      GapScene scene = new GapScene(LATE, Optional.empty(), List.of(RIGHT), true, width, 80, 4);
      Picture picture = GapChart.of(scene).picture();
      assertThat(picture.shapes())
          .as("%s wide", width)
          .allMatch(s -> picture.bounds().grown(0.3).holds(s.bounds()));
    }
  }
}
