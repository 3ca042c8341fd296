package tightside.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class ToothFormTest {

  /** The worked example prints six decimals. */
  private static final Offset<Double> SIX_DECIMALS = within(1e-6);

  /** Geometry closes to a millionth of a millimetre: far above double rounding at these sizes. */
  private static final Offset<Double> CLOSED = within(1e-6);

  /** V. B. Bhandari, Design of Machine Elements, example 14.5: 12B chain on 17 teeth. */
  private final PitchCircle bhandari = new PitchCircle(17, 19.05);

  private final double roller12B = 12.07;

  @Test
  void bhandari_14_5_meanTip_root_flank() {
    ToothForm mean = ToothForm.mean(bhandari, roller12B);
    assertThat(mean.tipDiameterMm()).isCloseTo(112.138521, SIX_DECIMALS);
    assertThat(mean.flankRadiusMm()).isCloseTo(36.403120, SIX_DECIMALS);
    // Bhandari takes the root as d - 2 ri; ISO 606 takes d - d1, where the roller touches.
    assertThat(bhandari.diameterMm() - 2 * mean.seatRadiusMm()).isCloseTo(91.324764, SIX_DECIMALS);
    assertThat(2 * mean.rootRadiusMm()).isCloseTo(bhandari.diameterMm() - 12.07, SIX_DECIMALS);
  }

  /** The parts of the same example, worked out by hand from its formulas, to the digits shown. */
  @Test
  void bhandari_14_5_smallestAndLargestGap() {
    ToothForm least = ToothForm.smallestGap(bhandari, roller12B);
    ToothForm most = ToothForm.largestGap(bhandari, roller12B);
    assertThat(least.seatRadiusMm()).isCloseTo(6.095350, SIX_DECIMALS);
    assertThat(most.seatRadiusMm()).isCloseTo(6.253627, SIX_DECIMALS);
    assertThat(least.flankRadiusMm()).isCloseTo(27.5196, within(5e-5));
    assertThat(most.flankRadiusMm()).isCloseTo(45.28664, within(5e-6));
    assertThat(most.seatDegrees()).isCloseTo(114.7059, within(5e-5));
    assertThat(least.seatDegrees()).isCloseTo(134.7059, within(5e-5));
    assertThat(ToothForm.leastTipDiameterMm(bhandari, roller12B))
        .isCloseTo(108.860800, SIX_DECIMALS);
    assertThat(ToothForm.largestTipDiameterMm(bhandari, roller12B))
        .isCloseTo(115.416241, SIX_DECIMALS);
  }

  /**
   * ISO 606, 5.5: tooth height above the pitch polygon, ha = 0.5 (p - d1) at least, 0.625 p - 0.5
   * d1 + 0.8 p/z at most. The tip diameters are printed apart from it; d/2 cos(180/z) is the
   * polygon's inner radius, and the standard's heights round p/z terms, so they agree to a few
   * hundredths of a pitch.
   */
  @ParameterizedTest
  @MethodSource("forms")
  void tipStandsAsHighAboveThePolygonAsTheStandardsToothHeights(ToothForm form) {
    PitchCircle circle = form.circle();
    double p = circle.pitchMm();
    double polygon = circle.radiusMm() * Math.cos(Math.PI / circle.teeth());
    double d1 = form.rollerDiameterMm();
    assertThat(ToothForm.leastTipDiameterMm(circle, d1) / 2 - polygon)
        .isCloseTo(0.5 * (p - d1), within(0.02 * p));
    assertThat(ToothForm.largestTipDiameterMm(circle, d1) / 2 - polygon)
        .isCloseTo(0.625 * p - 0.5 * d1 + 0.8 * p / circle.teeth(), within(0.02 * p));
  }

  /** Pitch, roller and bush diameters of ISO 606 chains 04C, 05B, 06B, 06C, 08B, 12B, 16A, 48B. */
  static Stream<ToothForm> forms() {
    double[][] chains = {
      {6.35, 3.30},
      {8, 5},
      {9.525, 6.35},
      {9.525, 5.08},
      {12.7, 8.51},
      {19.05, 12.07},
      {25.4, 15.88},
      {76.2, 48.26}
    };
    return Stream.of(chains)
        .flatMap(
            chain ->
                IntStream.of(9, 11, 17, 18, 21, 36, 42, 60, 150)
                    .mapToObj(z -> new PitchCircle(z, chain[0]))
                    .flatMap(
                        circle ->
                            Stream.of(
                                ToothForm.smallestGap(circle, chain[1]),
                                ToothForm.mean(circle, chain[1]),
                                ToothForm.largestGap(circle, chain[1]))));
  }

  @ParameterizedTest
  @MethodSource("forms")
  void theGapHoldsTheRoller_whichTouchesItsSeat(ToothForm form) {
    double half = form.circle().toothDegrees() / 2;
    Vector2D roller = new Bearing(-half).direction().multiply(form.circle().radiusMm());
    double nearest = points(form.leftHalf()).mapToDouble(roller::distance).min().orElseThrow();
    assertThat(nearest).isCloseTo(form.rollerDiameterMm() / 2, CLOSED);
  }

  @ParameterizedTest
  @MethodSource("profiles")
  void theOutlineRunsWithoutAGap_fromToothToTooth(ToothProfile profile) {
    List<Curve> tooth = profile.tooth();
    for (int i = 1; i < tooth.size(); i++) {
      assertThat(tooth.get(i).from().distance(tooth.get(i - 1).to())).isCloseTo(0, CLOSED);
    }
    Pose next = new Pose(Vector2D.ZERO, new Bearing(360.0 / profile.teeth()));
    assertThat(tooth.get(0).placed(next).from().distance(tooth.get(tooth.size() - 1).to()))
        .isCloseTo(0, CLOSED);
  }

  @ParameterizedTest
  @MethodSource("profiles")
  void theToothIsSymmetric(ToothProfile profile) {
    List<Curve> tooth = profile.tooth();
    for (int i = 0; i < tooth.size(); i++) {
      Curve twin = tooth.get(tooth.size() - 1 - i);
      assertThat(tooth.get(i).from().getX()).isCloseTo(-twin.to().getX(), CLOSED);
      assertThat(tooth.get(i).from().getY()).isCloseTo(twin.to().getY(), CLOSED);
    }
  }

  @ParameterizedTest
  @MethodSource("profiles")
  void everyPointLiesFromRootToTip_insideItsOwnTooth(ToothProfile profile) {
    double half = 180.0 / profile.teeth() + 1e-6;
    double corner = profile.tipRadiusMm() / Math.cos(Math.toRadians(half));
    points(profile.leftHalf())
        .forEach(
            point -> {
              assertThat(point.norm()).isBetween(profile.rootRadiusMm() - 1e-6, corner + 1e-6);
              double bearing = new Bearing(0).signedTurnTo(Bearing.of(point), Rotation.CLOCKWISE);
              assertThat(bearing).isBetween(-half, 1e-6);
            });
  }

  /** Seat and flank share their tangent where they meet: the gap has no corner. */
  @ParameterizedTest
  @MethodSource("forms")
  void flankRunsOnFromTheSeatWithoutACorner(ToothForm form) {
    Curve.Arc seat = (Curve.Arc) form.leftHalf().get(0);
    Curve.Arc flank = (Curve.Arc) form.leftHalf().get(1);
    assertThat(seat.centre().distance(flank.centre()))
        .isCloseTo(form.seatRadiusMm() + form.flankRadiusMm(), CLOSED);
    assertThat(flank.sweepDegrees()).isBetween(0.0, 90.0);
  }

  /** Every tooth that can be asked for is a tooth: 6 to 300 teeth, 0.4 to 0.7 of the pitch. */
  @Test
  void everyFormAllowedReachesItsTip() {
    for (int z = 6; z <= 300; z++) {
      for (double fraction : DoubleStream.of(0.4, 0.5, 0.6, 0.7).toArray()) {
        for (double p : new double[] {2, 8, 120}) {
          ToothForm form = ToothForm.mean(new PitchCircle(z, p), fraction * p);
          Curve flank = form.leftHalf().get(1);
          assertThat(flank.to().norm()).isCloseTo(form.tipRadiusMm(), CLOSED);
          assertThat(form.tipRadiusMm()).isGreaterThan(form.circle().radiusMm());
        }
      }
    }
  }

  @Test
  void aRollerOutOfProportionIsRefused() {
    assertThatThrownBy(() -> ToothForm.mean(bhandari, 19.0)).hasMessageContaining("0.4 to 0.7");
    assertThatThrownBy(() -> ToothForm.mean(bhandari, 2.0)).hasMessageContaining("0.4 to 0.7");
  }

  static Stream<Arguments> profiles() {
    return Stream.concat(
        forms().map(Arguments::of),
        IntStream.of(18, 21, 36, 42, 60)
            .mapToObj(z -> Arguments.of(new StraightTooth(new PitchCircle(z, 8), 4.4))));
  }

  private static Stream<Vector2D> points(List<Curve> curves) {
    return curves.stream()
        .flatMap(c -> IntStream.rangeClosed(0, 200).mapToObj(i -> pointOf(c, i / 200.0)));
  }

  private static Vector2D pointOf(Curve curve, double fraction) {
    if (curve instanceof Curve.Arc arc) {
      return new Curve.Arc(arc.centre(), arc.radiusMm(), arc.start(), fraction * arc.sweepDegrees())
          .to();
    }
    return curve.from().lerp(curve.to(), fraction);
  }
}
