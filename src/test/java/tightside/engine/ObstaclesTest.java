package tightside.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** First contact on the way of a turning crankshaft, against walking that way in small steps. */
class ObstaclesTest {

  private static final double STEP_DEGREES = 0.01;

  private static Clearance any(Random random) {
    Engine engine = Engines.any(random);
    Valve valve = engine.valves().get(random.nextInt(2));
    return new Clearance(engine.crankGear(), valve, 300 * random.nextDouble() - 150);
  }

  /** The first step of a walk that would take room from a valve that has none. */
  private static double walk(Clearance clearance, double from, double to) {
    double step = to > from ? STEP_DEGREES : -STEP_DEGREES;
    long steps = (long) Math.floor((to - from) / step);
    for (long i = 0; i < steps; i++) {
      double next = from + (i + 1) * step;
      if (clearance.mmAt(next) <= 0 && clearance.mmAt(next) < clearance.mmAt(next - step)) {
        return next;
      }
    }
    return to;
  }

  @Test
  void turningEndsWhereAWalkEnds() {
    int touched = 0;
    for (long seed = 0; seed < 60; seed++) {
      Random random = new Random(seed);
      Clearance clearance = any(random);
      Obstacles obstacles = Obstacles.of(clearance);
      double from = 1440 * random.nextDouble() - 720;
      double to = from + 1600 * random.nextDouble() - 800;
      double reached = obstacles.reach(from, to);
      assertThat(reached)
          .as("seed %d from %s to %s", seed, from, to)
          .isCloseTo(walk(clearance, from, to), within(2 * STEP_DEGREES));
      touched += reached == to ? 0 : 1;
    }
    assertThat(touched).isBetween(8, 50);
  }

  /** Room falls by up to a millimetre in ten degrees: 1e-11 degrees are well under 1e-9 mm. */
  @Test
  void thereIsNoRoomLeftAtFirstTouchAndNoneTaken() {
    for (long seed = 0; seed < 60; seed++) {
      Random random = new Random(seed);
      Clearance clearance = any(random);
      Obstacles obstacles = Obstacles.of(clearance);
      if (obstacles.firstTouchDegrees().isPresent()) {
        double touch = obstacles.firstTouchDegrees().getAsDouble();
        assertThat(clearance.mmAt(touch)).isCloseTo(0, within(1e-9));
        assertThat(clearance.least().contact()).isTrue();
        assertThat(obstacles.reach(touch - 300, touch + 300)).isLessThanOrEqualTo(touch);
      } else {
        assertThat(clearance.least().contact()).isFalse();
      }
    }
  }

  /** A turn of any size meets what lies on its way: nothing is stepped over. */
  @Test
  void manyTurnsAtOnceAreStoppedInTheFirst() {
    Clearance late = new Clearance(new CrankGear(73, 128), Engines.exhaust(), -80);
    Obstacles obstacles = Obstacles.of(late);
    double touch = obstacles.firstTouchDegrees().getAsDouble();
    assertThat(obstacles.reach(touch - 700, 3_600_000)).isCloseTo(touch, within(1e-9));
    assertThat(obstacles.reach(touch + 720_000 - 700, 3_600_000))
        .isCloseTo(touch + 720_000, within(1e-9));
    assertThat(obstacles.reach(touch, touch + 1)).isEqualTo(touch);
    assertThat(obstacles.reach(touch, touch - 1)).isEqualTo(touch - 1);
  }

  @Test
  void outOfThePistonItTurnsEitherWayButNotFurtherIn() {
    Clearance late = new Clearance(new CrankGear(73, 128), Engines.exhaust(), -80);
    Nearest deepest = late.least();
    Obstacles obstacles = Obstacles.of(late);
    double before = deepest.atDegrees() - 1;
    double after = deepest.atDegrees() + 1;
    assertThat(obstacles.reach(before, before + 0.5)).isEqualTo(before);
    assertThat(obstacles.reach(before, before - 50)).isEqualTo(before - 50);
    assertThat(obstacles.reach(after, after - 0.5)).isEqualTo(after);
    assertThat(obstacles.reach(after, after + 50)).isEqualTo(after + 50);
    assertThat(obstacles.reach(deepest.atDegrees(), deepest.atDegrees() + 50))
        .isEqualTo(deepest.atDegrees() + 50);
  }

  @Test
  void aValveWithRoomIsNeverInTheWay() {
    Obstacles none = Obstacles.of(new Clearance(new CrankGear(73, 128), Engines.intake(), 0));
    assertThat(none.pieces()).isEqualTo(List.of());
    assertThat(none.reach(-5000, 5000)).isEqualTo(5000);
  }
}
