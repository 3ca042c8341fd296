package tightside.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;

class ClearanceTest {

  /** What the search and the scan may differ by: a scan of so small steps misses less, mm. */
  private static final double SCANNED_MM = 1e-6;

  private static final double SCAN_DEGREES = 2e-3;

  @Test
  void opensAndClosesEarlierByTheAdvance() {
    Clearance clearance = new Clearance(new CrankGear(73, 128), Engines.intake(), 20);
    assertThat(clearance.opensDegrees()).isEqualTo(-28);
    assertThat(clearance.closesDegrees()).isEqualTo(204);
  }

  /** At its centreline a valve stands fully open: drop and lift by hand. */
  @Test
  void atFullLift() {
    CrankGear gear = new CrankGear(73, 128);
    double cos = Math.cos(Math.toRadians(17));
    Clearance clearance = new Clearance(gear, Engines.intake(), 20);
    assertThat(clearance.mmAt(88)).isCloseTo(6 + gear.dropMm(88) - 9 * cos, within(1e-12));
    assertThat(clearance.mmAt(-40)).isCloseTo(6 + gear.dropMm(40), within(1e-12));
  }

  /** A turn of the camshaft later the valve does the same again. */
  @Test
  void differencesOfAnglesAreTakenWithinATurnOfTheCamshaft() {
    Valve valve = Engines.exhaust();
    for (double degrees = -360; degrees <= 360; degrees += 3.5) {
      assertThat(valve.liftMm(degrees + 720)).isCloseTo(valve.liftMm(degrees), within(1e-12));
    }
    assertThat(valve.liftMm(610)).isEqualTo(8.6);
  }

  /** By scanning every 0.002 degrees, the formula written out again for the scan. */
  @Test
  void leastIsWhatAScanFinds() {
    for (long seed = 0; seed < 30; seed++) {
      Random random = new Random(seed);
      Engine engine = Engines.any(random);
      for (Valve valve : engine.valves()) {
        double advance = 120 * (2 * random.nextDouble() - 1);
        Clearance clearance = new Clearance(engine.crankGear(), valve, advance);
        Nearest least = clearance.least();
        double scanned = scan(engine, valve, advance);
        assertThat(least.clearanceMm())
            .as("seed %d, %s", seed, valve)
            .isLessThanOrEqualTo(scanned + 1e-12)
            .isCloseTo(scanned, within(SCANNED_MM));
        assertThat(least.atDegrees())
            .isBetween(clearance.opensDegrees(), clearance.closesDegrees());
        assertThat(clearance.mmAt(least.atDegrees())).isEqualTo(least.clearanceMm());
      }
    }
  }

  private static double scan(Engine engine, Valve valve, double advance) {
    double least = Double.POSITIVE_INFINITY;
    double half = valve.durationDegrees() / 2;
    int steps = (int) Math.ceil(2 * half / SCAN_DEGREES);
    for (int i = 0; i <= steps; i++) {
      double from = half * (2.0 * i / steps - 1);
      double lift = valve.liftMm() * valve.law().share(1 - Math.abs(from) / half);
      double theta = Math.toRadians(valve.centrelineDegrees() + from - advance);
      double r = engine.strokeMm() / 2;
      double l = engine.rodMm();
      double across = r * Math.sin(theta);
      double drop = r + l - (r * Math.cos(theta) + Math.sqrt(l * l - across * across));
      double room = valve.gapMm() + drop - lift * Math.cos(Math.toRadians(valve.tiltDegrees()));
      least = Math.min(least, room);
    }
    return least;
  }

  @Test
  void theyTouchAtZeroAndBelow() {
    assertThat(new Nearest(0, 3).contact()).isTrue();
    assertThat(new Nearest(-0.1, 3).contact()).isTrue();
    assertThat(new Nearest(1e-9, 3).contact()).isFalse();
  }
}
