package tightside.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import tightside.timing.Drives;

class TimedEngineTest {

  /**
   * By hand, at 224 degrees: 36.5 cos = -26.2559, 36.5 sin = -25.3550, the rod stands 125.4636
   * along the cylinder, so the drop is 164.5 - 99.2077 = 65.2923 mm and the compression 1 + 9.5 x
   * 65.2923 / 73 = 9.4969.
   */
  @Test
  void compressionFromWhereTheIntakeValveCloses() {
    Squeeze squeeze = TimedEngine.right(Engines.described()).squeeze();
    assertThat(squeeze.nominal()).isEqualTo(10.5);
    assertThat(squeeze.closed().getAsDouble()).isCloseTo(9.4969, within(1e-4));
  }

  @Test
  void closingAtBottomDeadCentreLosesNothing() {
    TimedEngine early = new TimedEngine(Engines.described(), Map.of("intake", 44.0));
    assertThat(early.squeeze().closed().getAsDouble()).isCloseTo(10.5, within(1e-12));
  }

  @Test
  void theLastIntakeValveToCloseCounts() {
    Valve longer = new Valve("intake", 9, 252, 108, LiftLaw.CYCLOIDAL, 17, 6);
    TimedEngine two =
        TimedEngine.right(new Engine(78, 73, 128, 10.5, List.of(longer, Engines.intake())));
    TimedEngine one = TimedEngine.right(new Engine(78, 73, 128, 10.5, List.of(longer)));
    assertThat(two.squeeze()).isEqualTo(one.squeeze());
  }

  @Test
  void withoutAnIntakeValveNothingIsKnownOfIt() {
    Engine engine = new Engine(78, 73, 128, 10.5, List.of(Engines.exhaust()));
    assertThat(TimedEngine.right(engine).squeeze().closed()).isEmpty();
    assertThat(TimedEngine.right(engine).squeeze().crankingGaugeBar(1.3)).isEmpty();
    assertThat(TimedEngine.right(engine).overlapDegrees()).isEmpty();
  }

  /** Intake opens at -8, exhaust closes at 4. */
  @Test
  void overlapGrowsWithTheAdvanceOfTheIntake() {
    TimedEngine right = TimedEngine.right(Engines.described());
    assertThat(right.overlapDegrees()).hasValue(12);
    assertThat(right.advanced("intake", 20).overlapDegrees()).hasValue(32);
    assertThat(right.advanced("exhaust", 20).overlapDegrees()).hasValue(-8);
  }

  @Test
  void advancesAddUp() {
    TimedEngine twice = TimedEngine.right(Engines.described()).advanced("intake", 5);
    assertThat(twice.advanced("intake", 15).advancedDegrees()).isEqualTo(Map.of("intake", 20.0));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> twice.advanced("intake", Double.NaN))
        .withMessageContaining("finite");
  }

  /** 36 teeth on a shaft at half speed: 2 x 360 / 36 = 20 crank degrees a tooth. */
  @Test
  void eachToothIsARow() {
    TimedEngine right = TimedEngine.right(Engines.described());
    ToothTable table = ToothTable.of(Drives.answered(), right, "exhaust").orElseThrow();
    assertThat(table.degreesPerTooth()).isCloseTo(20, within(1e-12));
    assertThat(table.rows())
        .extracting(ToothTable.Row::teeth)
        .containsExactly(-4, -3, -2, -1, 0, 1, 2, 3, 4);
    TimedEngine late = right.advanced("exhaust", -60);
    assertThat(table.rows().get(1).nearest().clearanceMm())
        .isCloseTo(late.least("exhaust").clearanceMm(), within(1e-12));
    assertThat(table.rows().get(1).overlapDegrees()).isEqualTo(late.overlapDegrees());
    assertThat(ToothTable.of(Drives.answered(), right, "crank")).isEmpty();
  }

  /** By trying every standing of the phaser, 0.05 crank degrees apart. */
  @Test
  void aPhaserIsTriedOverItsWholeTravel() {
    for (long seed = 0; seed < 20; seed++) {
      Random random = new Random(seed);
      TimedEngine timed = TimedEngine.right(Engines.any(random));
      Phaser.Rest rest = Phaser.Rest.values()[random.nextInt(3)];
      Phaser phaser = new Phaser(20 + 60 * random.nextDouble(), rest);
      PhaserTravel travel = PhaserTravel.of(timed, "intake", phaser, 2);
      double least = Double.POSITIVE_INFINITY;
      for (double turn = 0; turn <= 2 * phaser.travelDegrees(); turn += 0.05) {
        double standing = 2 * phaser.leastDegrees() + turn;
        least = Math.min(least, timed.advanced("intake", standing).least("intake").clearanceMm());
      }
      assertThat(travel.nearest().clearanceMm())
          .as("seed %d", seed)
          .isLessThanOrEqualTo(least + 1e-12)
          .isCloseTo(least, within(0.02));
      assertThat(timed.advanced("intake", travel.advancedDegrees()).least("intake"))
          .isEqualTo(travel.nearest());
    }
  }

  @Test
  void aPhaserRestsAtAnEndOrInTheMiddle() {
    assertThat(new Phaser(30, Phaser.Rest.RETARDED).leastDegrees()).isZero();
    assertThat(new Phaser(30, Phaser.Rest.ADVANCED).leastDegrees()).isEqualTo(-30);
    assertThat(new Phaser(30, Phaser.Rest.MIDDLE).leastDegrees()).isEqualTo(-15);
  }
}
