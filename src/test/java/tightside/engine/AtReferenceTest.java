package tightside.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import tightside.drive.Drive;
import tightside.timing.Drives;
import tightside.timing.Kick;
import tightside.timing.Lag;
import tightside.timing.PressBack;

class AtReferenceTest {

  private static final List<Integer> PHASES = List.of(0, 540, 180, 360);

  private static final List<Valve> SPRUNG =
      List.of(
          Engines.sprung(Engines.intake(), 210, 28), Engines.sprung(Engines.exhaust(), 180, 25));

  /**
   * By hand. One cylinder, its intake valve half way in degrees down from full lift (108 + 58 =
   * 166): u = 1/2, lift 4.5 mm, ds/du = 30/16 = 1.875, so the lift falls by 9 x 1.875 x 2 / (232 pi
   * / 180) = 8.33505 mm a radian of the crank, 16.67011 of the camshaft; the spring pushes with 210
   * + 28 x 4.5 = 336 N; torque 336 x 16.67011 / 1000 = 5.60116 Nm ahead.
   */
  @Test
  void aClosingValveDrivesItsCamshaftAhead() {
    Engine single =
        new Engine(78, 73, 128, 10.5, SPRUNG, Engine.ONE_CYLINDER, OptionalDouble.of(166));
    Kick.Known kick = (Kick.Known) AtReference.kick(single, "intake", 2);
    assertThat(kick.torqueNm()).isCloseTo(5.60116, within(1e-5));
    assertThat(kick.way()).isEqualTo(Lag.ADVANCED);
    assertThat(((Kick.Known) AtReference.kick(single, "exhaust", 2)).torqueNm()).isZero();
  }

  /**
   * By the energy in the springs of all four cylinders, turned 1e-5 camshaft degrees either way: a
   * freed camshaft springs the way in which it falls. 1e-6 Nm is the error of the differences.
   */
  @Test
  void theTorqueIsTheFallOfTheSpringsEnergy() {
    Random random = new Random(5);
    for (int i = 0; i < 50; i++) {
      double at = 720 * random.nextDouble();
      Engine four = Engines.four(at, SPRUNG);
      for (Valve valve : SPRUNG) {
        double turn = 1e-5;
        double fall = energy(valve, at, -turn) - energy(valve, at, turn);
        double torque = fall / (2 * Math.toRadians(turn)) / 1000;
        Kick.Known kick = (Kick.Known) AtReference.kick(four, valve.shaft(), 2);
        assertThat(kick.torqueNm())
            .as("%s at %s", valve.shaft(), at)
            .isCloseTo(torque, within(1e-6));
      }
    }
  }

  /** Energy in the springs of one camshaft, N mm, with it turned ahead by camshaft degrees. */
  private static double energy(Valve valve, double at, double turn) {
    Spring spring = valve.spring().orElseThrow();
    double energy = 0;
    for (int phase : PHASES) {
      double lift = valve.liftMm(at - phase + 2 * turn);
      energy += spring.preloadN() * lift + spring.rateNPerMm() * lift * lift / 2;
    }
    return energy;
  }

  @Test
  void withoutSpringsOrAPlaceNobodyKnows() {
    List<Valve> unsprung = List.of(Engines.intake(), SPRUNG.get(1));
    assertThat(AtReference.kick(Engines.four(0, unsprung), "intake", 2))
        .isEqualTo(new Kick.Unknown());
    assertThat(AtReference.kick(Engines.four(0, unsprung), "exhaust", 2))
        .isInstanceOf(Kick.Known.class);
    assertThat(AtReference.kick(Engines.four(0, SPRUNG), "pump", 2)).isEqualTo(new Kick.Unknown());
    Engine nowhere = new Engine(78, 73, 128, 10.5, SPRUNG);
    assertThat(AtReference.kick(nowhere, "intake", 2)).isEqualTo(new Kick.Unknown());
    assertThat(AtReference.clearance(nowhere, "intake", 2)).isEmpty();
    assertThat(AtReference.clearance(Engines.four(0, SPRUNG), "pump", 2)).isEmpty();
  }

  /** By the formula written out for every cylinder, over turns of the camshaft both ways. */
  @Test
  void theRoomIsTheLeastOfAllCylinders() {
    Random random = new Random(6);
    for (int i = 0; i < 20; i++) {
      double at = 720 * random.nextDouble();
      DoubleUnaryOperator room =
          AtReference.clearance(Engines.four(at, SPRUNG), "intake", 2).orElseThrow();
      for (double turn = -60; turn <= 60; turn += 1.3) {
        double least = Double.POSITIVE_INFINITY;
        for (int phase : PHASES) {
          double theta = at - phase;
          double from = Math.abs(Math.IEEEremainder(theta + 2 * turn - 108, 720)) / 116;
          double u = Math.max(0, 1 - from);
          double lift = 9 * (10 * Math.pow(u, 3) - 15 * Math.pow(u, 4) + 6 * Math.pow(u, 5));
          double drop = new CrankGear(73, 128).dropMm(theta);
          least = Math.min(least, 6 + drop - lift * Math.cos(Math.toRadians(17)));
        }
        assertThat(room.applyAsDouble(turn))
            .as("at %s, turned %s", at, turn)
            .isCloseTo(least, within(1e-12));
      }
    }
  }

  /**
   * Pistons of cylinders 1 and 4 at top dead centre: turning the intake camshaft ahead to press the
   * plunger in lifts the valve of the cylinder at gas exchange; the room only shrinks.
   */
  @Test
  void pressingThePlungerInByTheCamshaftKeepsItsRoom() {
    Drive drive = Drives.answered();
    Optional<DoubleUnaryOperator> room =
        AtReference.clearance(Engines.four(360, SPRUNG), "intake", 2);
    PressBack.Nearest nearest =
        PressBack.of(drive, Drives.chain(drive), "intake", 0, room)
            .orElseThrow()
            .nearest()
            .orElseThrow();
    assertThat(nearest.atDegrees()).isCloseTo(3.094, within(0.001));
    assertThat(nearest.clearanceMm())
        .isCloseTo(6 - Engines.intake().liftMm(2 * nearest.atDegrees()) * 0.9563048, within(1e-6));
  }
}
