package tightside.timing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tightside.drive.Arm;
import tightside.drive.Chain;
import tightside.drive.ChainFit;
import tightside.drive.Drive;
import tightside.drive.Plunger;
import tightside.drive.RouteEntry;
import tightside.drive.Tensioner;

class StretchLimitTest {

  /** Percent either side of the limit: thousandfold what the root is found to. */
  private static final double BESIDE = 1e-7;

  @ParameterizedTest
  @ValueSource(doubles = {15, 18, 22, 28, 35})
  void justUnderTheLimitIsTaut_justOverIsOutOfTravel(double travelMm) {
    Drive drive = answeredWithTravel(travelMm);
    double limit = StretchLimit.of(drive, Drives.chain(drive)).orElseThrow();
    assertThat(fitAt(drive, limit - BESIDE)).isInstanceOf(ChainFit.Solved.class);
    assertThat(fitAt(drive, limit + BESIDE)).isInstanceOf(ChainFit.OutOfTravel.class);
  }

  /** From the model format's description: 17.96 mm at 0.2 %, 22.45 mm at 0.5 %. */
  @Test
  void travelOfTheAnsweredExtensionRunsOutAtTheAnsweredStretch() {
    assertThat(limit(answeredWithTravel(17.96))).isCloseTo(0.2, within(0.001));
    assertThat(limit(answeredWithTravel(22.45))).isCloseTo(0.5, within(0.001));
  }

  @Test
  void withoutTensioner_nothing() {
    Drive drive = changed(route -> route.stream().filter(e -> !(e instanceof Tensioner)).toList());
    assertThat(StretchLimit.of(drive, Drives.chain(drive))).isEqualTo(OptionalDouble.empty());
  }

  @Test
  void newChainAlreadyOutOfTravel_nothing() {
    Drive drive = answeredWithTravel(10);
    assertThat(fitAt(drive, 0)).isInstanceOf(ChainFit.OutOfTravel.class);
    assertThat(StretchLimit.of(drive, Drives.chain(drive))).isEqualTo(OptionalDouble.empty());
  }

  @Test
  void tensionerLongerThanAnyWear_nothing() {
    Drive drive = answeredWithTravel(turningPointMm() - 0.001);
    assertThat(fitAt(drive, 10)).isInstanceOf(ChainFit.Solved.class);
    assertThat(StretchLimit.of(drive, Drives.chain(drive))).isEqualTo(OptionalDouble.empty());
  }

  private static double turningPointMm() {
    return ((Arm) Drives.chain(Drives.answered()).tensioner().orElseThrow()).turningPointMm();
  }

  private static double limit(Drive drive) {
    return StretchLimit.of(drive, Drives.chain(drive)).orElseThrow();
  }

  private static ChainFit fitAt(Drive drive, double percent) {
    return Solver.solve(drive, State.reference().stretched("main", percent)).chains().get(0).fit();
  }

  private static Drive answeredWithTravel(double travelMm) {
    return changed(
        route ->
            route.stream().map(e -> e instanceof Arm arm ? travelling(arm, travelMm) : e).toList());
  }

  private static RouteEntry travelling(Arm arm, double travelMm) {
    Plunger plunger = new Plunger(arm.plunger().bearing(), travelMm, arm.plunger().stepMm());
    return new Arm(
        arm.name(), arm.contact(), arm.pivot(), arm.curve(), arm.pad(), plunger, arm.seen());
  }

  private static Drive changed(UnaryOperator<List<RouteEntry>> change) {
    Drive drive = Drives.answered();
    Chain chain = Drives.chain(drive);
    return new Drive(
        drive.name(),
        drive.about(),
        drive.rotation(),
        drive.shafts(),
        List.of(chain.withRoute(change.apply(chain.route()))));
  }
}
