package tightside.models;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import tightside.engine.Engine;
import tightside.engine.Nearest;
import tightside.engine.TimedEngine;
import tightside.engine.Valve;
import tightside.files.ModelReader;

/** The answers that models/README.md gives about valves; one tooth is 20 crank degrees there. */
class ValveAnswersTest {

  private static TimedEngine engine(String file) {
    return TimedEngine.right(
        ModelReader.read(PrintedChain.FOLDER.resolve(file))
            .model()
            .orElseThrow()
            .engine()
            .orElseThrow());
  }

  @Test
  void oneToothTouchesOneWayOnly() {
    TimedEngine right = engine("one-tooth-touches.yaml");
    for (String shaft : right.engine().camshafts()) {
      double harmful = shaft.equals("intake") ? 20 : -20;
      assertThat(right.least(shaft).clearanceMm()).as(shaft).isGreaterThan(1);
      assertThat(right.advanced(shaft, harmful).least(shaft).contact()).as(shaft).isTrue();
      assertThat(right.advanced(shaft, -harmful).least(shaft).contact()).as(shaft).isFalse();
    }
    Nearest behind = right.advanced("exhaust", -20).least("exhaust");
    assertThat(behind.clearanceMm()).isCloseTo(-0.2, within(0.05));
    assertThat(behind.atDegrees()).isCloseTo(-6.6, within(0.05));
    assertThat(right.advanced("exhaust", 20).least("exhaust").clearanceMm())
        .isCloseTo(1.6, within(0.05));
  }

  @Test
  void deepPocketsForgiveWhereverTheCamshaftStands() {
    TimedEngine right = engine("one-tooth-forgives.yaml");
    Engine engine = right.engine();
    for (Valve valve : engine.valves()) {
      double tilt = Math.toRadians(valve.tiltDegrees());
      assertThat(valve.gapMm() - valve.liftMm() * Math.cos(tilt)).isGreaterThan(1);
    }
    double closed = right.squeeze().closed().getAsDouble();
    double late = right.advanced("intake", -20).squeeze().closed().getAsDouble();
    assertThat(closed).isCloseTo(8.6, within(0.05));
    assertThat(late).isCloseTo(7.7, within(0.05));
    assertThat(Math.pow(late / closed, 1.3)).isCloseTo(6.0 / 7, within(0.02));
  }

  /**
   * By hand, at 204 degrees: 36.5 cos = -33.3444, 36.5 sin = -14.8459, the rod stands 127.1361
   * along the cylinder, so the drop is 70.7083 mm and the compression 1 + 9.5 x 70.7083 / 73 =
   * 10.2018; right, at 224 degrees, it is 9.4969.
   */
  @Test
  void anEarlyIntakeCamGainsCompression() {
    TimedEngine right = engine("two-cams-arm.yaml");
    assertThat(right.squeeze().closed().getAsDouble()).isCloseTo(9.4969, within(1e-4));
    assertThat(right.advanced("intake", 20).squeeze().closed().getAsDouble())
        .isCloseTo(10.2018, within(1e-4));
  }
}
