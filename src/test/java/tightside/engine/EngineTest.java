package tightside.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Engines, valves and phasers refuse what can't be meant. */
class EngineTest {

  private static final Valve VALVE =
      new Valve("intake", 9, 232, 108, LiftLaw.POLYNOMIAL_345, 17, 6);

  @Test
  void anEngineOfUsualSizeIsTaken() {
    assertThat(new Engine(78, 73, 128, 10.5, List.of(VALVE)).valves()).containsExactly(VALVE);
  }

  @ParameterizedTest
  @CsvSource({
    "0, 73, 128, 10.5",
    "78, -73, 128, 10.5",
    "78, 73, 36.5, 10.5",
    "78, 73, 128, 1",
    "NaN, 73, 128, 10.5"
  })
  void anEngineThatCannotTurnIsRefused(double bore, double stroke, double rod, double ratio) {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Engine(bore, stroke, rod, ratio, List.of(VALVE)));
  }

  @Test
  void anEngineWithoutValvesIsRefused() {
    assertThatIllegalArgumentException().isThrownBy(() -> new Engine(78, 73, 128, 10.5, List.of()));
  }

  @ParameterizedTest
  @CsvSource({
    "0, 232, 108, 17, 6",
    "9, 2320, 108, 17, 6",
    "9, 232, 1080, 17, 6",
    "9, 232, 108, 170, 6",
    "9, 232, 108, 17, -6"
  })
  void aValveOutOfRangeIsRefused(
      double lift, double duration, double centreline, double tilt, double gap) {
    assertThatIllegalArgumentException()
        .isThrownBy(
            () -> new Valve("intake", lift, duration, centreline, LiftLaw.CYCLOIDAL, tilt, gap));
  }

  @ParameterizedTest
  @CsvSource({"10, 0", "0, 1000", "0, NaN"})
  void phasesCountFromTheFirstCylinder(double first, double second) {
    assertThatIllegalArgumentException()
        .isThrownBy(
            () ->
                new Engine(
                    78,
                    73,
                    128,
                    10.5,
                    List.of(VALVE),
                    List.of(first, second),
                    OptionalDouble.empty()));
  }

  @Test
  void aSpringThatPullsIsRefused() {
    assertThatIllegalArgumentException().isThrownBy(() -> new Spring(-1, 20));
    assertThatIllegalArgumentException().isThrownBy(() -> new Spring(200, -1));
  }

  @Test
  void aPhaserOfNoTravelIsRefused() {
    assertThatIllegalArgumentException().isThrownBy(() -> new Phaser(0, Phaser.Rest.RETARDED));
  }
}
