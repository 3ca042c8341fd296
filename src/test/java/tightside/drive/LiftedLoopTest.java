package tightside.drive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tightside.drive.LiftedLoop.Lifted;
import tightside.geometry.Bearing;
import tightside.geometry.Rotation;
import tightside.timing.Drives;

class LiftedLoopTest {

  private static final double P = 8;
  private static final double APART = 300;

  private static ChainInPlace twoSprockets() {
    Drive drive =
        new Drive(
            "two sprockets",
            "Invented for a test.",
            Rotation.CLOCKWISE,
            List.of(
                new Shaft("crank", Role.CRANKSHAFT, Vector2D.of(0, 0)),
                new Shaft("cam", Role.CAMSHAFT, Vector2D.of(0, APART))),
            List.of(
                new Chain(
                    "main",
                    ChainKind.BUSH,
                    P,
                    106,
                    7.2,
                    5,
                    List.of(
                        Sprocket.inside("crank", 20, new Bearing(180)),
                        Sprocket.inside("cam", 40, new Bearing(0))))));
    return drive.inPlace(drive.chains().get(0));
  }

  /**
   * The open two-sprocket formula with arcs in teeth (handbooks: L = 2 C cos a + (z1 + z2) / 2 + a
   * (z2 - z1) / pi in pitches), the upper arc counted in chords of the larger circle.
   */
  private static double handbook(double apart, double lift) {
    double small = P / (2 * Math.sin(Math.PI / 20));
    double large = P / (2 * Math.sin(Math.PI / 40)) + lift;
    double a = Math.asin((large - small) / apart);
    double chord = 2 * Math.asin(P / (2 * large));
    return 2 * apart * Math.cos(a) / P
        + 20 * (Math.PI - 2 * a) / (2 * Math.PI)
        + (Math.PI + 2 * a) / chord;
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, 7, 20})
  void nothingLiftedIsTheTautPath(double extension) {
    Drive drive = Drives.answered();
    ChainInPlace chain = drive.inPlace(Drives.chain(drive));
    Routing.Routed routed = (Routing.Routed) Routing.of(chain, P, extension);
    assertThat(LiftedLoop.seated(chain, P, extension).pitches().orElseThrow())
        .isCloseTo(routed.path().pitches(), within(1e-9));
  }

  @ParameterizedTest
  @CsvSource({"0, 0", "0, 4.4", "6, 4.4", "-3, 2"})
  void aSprocketMovedAndLifted(double towardCrank, double lift) {
    Lifted lifted = new Lifted(Vector2D.of(0, -towardCrank), lift);
    assertThat(
            LiftedLoop.seated(twoSprockets(), P, 0)
                .lifting(Map.of(1, lifted))
                .pitches()
                .orElseThrow())
        .isCloseTo(handbook(APART - towardCrank, lift), within(1e-9));
  }

  @Test
  void aFaceThatIsLeftOutBendsNothing() {
    Drive drive = Drives.answered();
    ChainInPlace chain = drive.inPlace(Drives.chain(drive));
    double all = LiftedLoop.seated(chain, P, 20).pitches().orElseThrow();
    double withoutGuide =
        LiftedLoop.seated(chain, P, 20).leavingOut(Set.of(4)).pitches().orElseThrow();
    assertThat(withoutGuide).isLessThan(all - 0.01);
  }

  /** Two cams and a crank: pulled down between the other two, a cam holds no chain any more. */
  @Test
  void aSprocketThatHasLetGoTakesNoChain() {
    Drive drive = Drives.answered();
    ChainInPlace chain = drive.inPlace(Drives.chain(drive));
    LiftedLoop loop = LiftedLoop.seated(chain, P, 0).leavingOut(Set.of(1, 4));
    Lifted gone = new Lifted(Vector2D.of(110, -180), 4);
    assertThat(loop.lifting(Map.of(2, gone)).pitches().orElseThrow())
        .isCloseTo(loop.leavingOut(Set.of(1, 2, 4)).pitches().orElseThrow(), within(1e-9));
  }
}
