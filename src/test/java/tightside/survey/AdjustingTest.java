package tightside.survey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import tightside.drive.Drive;
import tightside.drive.Shaft;

/** A measured drive: the true one is known, so that what comes out can be held against it. */
class AdjustingTest {

  private static final Drive TRUTH = MeasuredDrives.model("two-cams-arm");
  private static final Drive SKETCH = MeasuredDrives.sketched(TRUTH, 4, 3);

  private static Adjustment adjusted(List<Measurement> measurements) {
    return Adjustment.of(SKETCH, Survey.of(measurements)).orElseThrow();
  }

  private static SureCount count(Adjustment a, String from) {
    return a.counts().stream()
        .filter(c -> c.strand().from().equals(from))
        .findFirst()
        .orElseThrow();
  }

  /** All that a rigid drive keeps: distances. The sketch's first camshaft bearing is its own. */
  @Test
  void exactMeasurementsGiveTheTrueDrive() {
    Adjustment a = adjusted(Measured.thorough(TRUTH).exact());
    for (Shaft s : a.drive().orElseThrow().shafts()) {
      for (Shaft t : a.drive().orElseThrow().shafts()) {
        double is = s.at().distance(t.at());
        double was =
            TRUTH
                .shaft(s.name())
                .orElseThrow()
                .at()
                .distance(TRUTH.shaft(t.name()).orElseThrow().at());
        assertThat(is).isCloseTo(was, within(0.01));
      }
    }
    assertThat(a.global().passed()).isTrue();
    assertThat(a.suspect()).isEmpty();
    assertThat(count(a, "exhaust").links()).isEqualTo(50);
    assertThat(count(a, "intake").links()).isEqualTo(17);
    assertThat(count(a, "crank").links()).isEqualTo(51);
    assertThat(a.counts()).allMatch(SureCount::sure);
  }

  @Test
  void drawnErrorsAreWithinTheirUncertainty() {
    List<Measurement> drawn = Measured.thorough(TRUTH).drawn(Measured.seeded(7));
    Adjustment a = adjusted(drawn);
    double is = a.drive().orElseThrow().shaft("intake").orElseThrow().at().norm();
    assertThat(is).isCloseTo(TRUTH.shaft("intake").orElseThrow().at().norm(), within(1.0));
    assertThat(a.measurements()).hasSameSizeAs(drawn);
    double sum = a.measurements().stream().mapToDouble(Checked::redundancy).sum();
    assertThat(sum).isGreaterThan(8).isLessThan(drawn.size());
  }

  @Test
  void aBlunderIsNamed() {
    List<Measurement> drawn = new ArrayList<>(Measured.thorough(TRUTH).exact());
    drawn.set(0, Measured.moved(drawn.get(0), 5));
    Adjustment a = adjusted(drawn);
    assertThat(a.suspect().map(Checked::place)).contains(0);
    assertThat(a.suspect().orElseThrow().normalised()).isGreaterThan(Detection.CRITICAL);
    assertThat(a.suspect().orElseThrow().residual()).isBetween(2.0, 5.0);
    assertThat(a.proved()).isFalse();
  }

  @Test
  void withoutAnAngleTheMarkIsAskedFor() {
    List<Measurement> some =
        Measured.thorough(TRUTH).exact().stream()
            .filter(m -> !(m instanceof Measurement.Mark mark && mark.shaft().equals("exhaust")))
            .toList();
    Adjustment a = adjusted(some);
    assertThat(count(a, "exhaust").sure()).isFalse();
    assertThat(count(a, "exhaust").determined()).isFalse();
    Measurement next = a.next().orElseThrow().proposal().orElseThrow().measurement();
    assertThat(next).isInstanceOf(Measurement.Mark.class);
    assertThat(((Measurement.Mark) next).shaft()).isEqualTo("exhaust");
  }

  /** The exhaust hangs on nothing but the angle of its own mark. */
  @Test
  void withoutADistanceTheShaftIsAskedFor() {
    List<Measurement> some =
        Measured.thorough(TRUTH).exact().stream()
            .filter(m -> !(m instanceof Measurement.Extension))
            .filter(
                m ->
                    !m.points().contains(SurveyPoint.shaft("exhaust"))
                        || m instanceof Measurement.Mark mark && mark.shaft().equals("exhaust"))
            .toList();
    Adjustment a = adjusted(some);
    assertThat(count(a, "exhaust").sure()).isFalse();
    Measurement next = a.next().orElseThrow().proposal().orElseThrow().measurement();
    assertThat(next.points()).contains(SurveyPoint.shaft("exhaust"));
  }

  @Test
  void nothingChecksALoneMeasurement() {
    Adjustment a = adjusted(Measured.sparing(TRUTH).exact());
    List<Checked> alone = a.measurements().stream().filter(Checked::unchecked).toList();
    assertThat(alone).isNotEmpty();
    assertThat(alone).allMatch(c -> c.smallestFound() > 10 * c.measurement().reading().sigma());
  }

  @Test
  void countsProveIt() {
    Survey measured = Survey.of(Measured.thorough(TRUTH).exact());
    Survey counted =
        measured.withCounted(
            List.of(
                new CountedLinks("main", "crank", "intake", 51),
                new CountedLinks("main", "intake", "exhaust", 17),
                new CountedLinks("main", "exhaust", "crank", 50)));
    assertThat(Adjustment.of(SKETCH, measured).orElseThrow().proved()).isFalse();
    assertThat(Adjustment.of(SKETCH, counted).orElseThrow().proved()).isTrue();
    Survey wrong = measured.withCounted(List.of(new CountedLinks("main", "exhaust", "crank", 51)));
    Adjustment a = Adjustment.of(SKETCH, wrong).orElseThrow();
    assertThat(count(a, "exhaust").contradicted()).isTrue();
    assertThat(a.proved()).isFalse();
  }

  @Test
  void strangersAreRefused() {
    Measurement m =
        Measurement.Distance.centres(
            SurveyPoint.shaft("crank"), SurveyPoint.shaft("nobody"), Reading.by(Tool.RULER, 100));
    assertThatThrownBy(() -> Adjustment.of(SKETCH, Survey.of(List.of(m))))
        .hasMessageContaining("nobody");
  }

  /** Over two noses the centres are nearer by both radii, between them farther. */
  @Test
  void spansCountTheRadii() {
    Reading r = new Reading(100, Tool.CALLIPER, OptionalDouble.empty());
    SurveyPoint a = SurveyPoint.shaft("crank");
    SurveyPoint b = SurveyPoint.shaft("intake");
    assertThat(new Measurement.Distance(a, b, Measurement.Span.OVER, 40, 20, r).readAt(70))
        .isEqualTo(100);
    assertThat(new Measurement.Distance(a, b, Measurement.Span.BETWEEN, 40, 20, r).readAt(130))
        .isEqualTo(100);
  }

  @Test
  void pointsHaveNames() {
    assertThat(SurveyPoint.parse("left/fixed.start"))
        .contains(new SurveyPoint(Optional.of("left"), "fixed", Spot.START));
    assertThat(SurveyPoint.parse("crank")).contains(SurveyPoint.shaft("crank"));
    assertThat(SurveyPoint.parse("fixed.top")).isEmpty();
    assertThat(SurveyPoint.parse("fixed.start").orElseThrow()).hasToString("fixed.start");
  }
}
